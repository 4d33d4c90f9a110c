/**
 * What the public can lay a hand on: rods and the lead on them, the lower stay, the pole, fences, pipes, the truck, and
 * the end of a lead that hangs down the pole. Reach is from the walk to the thing's surface. A switch handle is locked or far up: not touched.
 */
import { distanceToElectrode, type Electrode } from '../physics/soil'
import { distance, type GroundPoint } from '../site/place'
import { poleFoot } from '../site/nextPole'
import type { Scenario } from '../site/scenario'
import { findSectionNeutral } from '../site/findSectionNeutral'
import type { Fitted } from './circuit/fitted'
import { conductorAtPole, groundThingNode, leadNode, rodNode, stayLowerNode, truckNode } from './circuit/nodes'
import { poleNode, spreadingResistance } from './circuit/pole'

/** IEEE 80 takes one metre for a reach. */
const reach = 1
/** Where a hand lies on a pole, metres above ground; half the width of a truck; a pipe (common practice, no source). */
export const handHeight = 1.4
export const truckRadius = 1.2
const pipeRadius = 0.03

export interface Touchable {
  readonly node: string
  readonly at: GroundPoint
  readonly radius: number
  /** How it stands in plan where it is more than round: a fence, a vehicle. */
  readonly shape?: Electrode
  /** Ohm from the node to the surface. */
  readonly series: number
}

export function touchables(scenario: Scenario, fitted: Fitted): readonly Touchable[] {
  const { pole, stay, contact } = scenario
  const foot = { at: { x: 0, y: 0 }, radius: pole.diameter / 2 }
  const series = spreadingResistance(pole, contact.area.hand)
  return [
    ...fitted.rods.map(({ item, at, radius }): Touchable => ({ node: rodNode(item), at, radius, series: 0 })),
    ...(stay ? [{ node: stayLowerNode, at: stay.anchor, radius: stay.anchorRadius, series: 0 }] : []),
    { node: poleNode(scenario, handHeight), ...foot, series },
    ...(scenario.nextPole
      ? [{ ...foot, node: poleNode(scenario, handHeight, 3), at: poleFoot(scenario, 'next'), series }]
      : []),
    ...(pole.secondLeg ? [{ ...foot, node: poleNode(scenario, handHeight, 2), at: pole.secondLeg.at, series }] : []),
    ...fitted.leads
      .filter(({ pieces, clamps }) => pieces[0]?.from === 'earth' && !clamps.some((it) => it.end === 'earth'))
      .map(({ item }): Touchable => ({ node: leadNode(item, 'earth'), ...foot, series: 0 })),
    ...poleEarthTouched(scenario),
    ...groundThingsTouched(scenario),
    ...truckTouched(scenario, fitted),
  ]
}

/** The lead of the neutral wire where it comes down the pole to its earth. */
function poleEarthTouched(scenario: Scenario): readonly Touchable[] {
  const wire = findSectionNeutral(scenario)
  if (wire === undefined) return []
  const { at, radius } = wire.poleEarth
  return [{ node: conductorAtPole(wire.id), at, radius, series: 0 }]
}

/** A fence at its posts, a pipe where it comes out of the ground, somebody else's earth at its rod. */
function groundThingsTouched({ grounds = [] }: Scenario): readonly Touchable[] {
  return grounds.flatMap((it): readonly Touchable[] => {
    const node = groundThingNode(it.id)
    if (it.kind === 'fence') return it.posts.map((at) => ({ node, at, radius: it.postRadius, series: 0 }))
    if (it.kind === 'pipe') return it.points.map((at) => ({ node, at, radius: pipeRadius, series: 0 }))
    return [{ node, at: it.at, radius: 0, series: 0 }]
  })
}

/** From each pad, and all round its body. */
function truckTouched({ truck }: Scenario, { truck: stands }: Fitted): readonly Touchable[] {
  if (truck === undefined || stands === undefined) return []
  const { at } = stands
  return [
    { node: truckNode, at, radius: truckRadius, series: 0 },
    ...(stands.isOnPads ? truck.outriggers : []).map(({ x, y, radius }) => {
      return { node: truckNode, at: { x: at.x + x, y: at.y + y }, radius, series: 0 }
    }),
  ]
}

/** At exactly an arm's length it reaches. */
export function isInReach(thing: Touchable, from: GroundPoint): boolean {
  const apart = thing.shape ? distanceToElectrode(thing.shape, from) : distance(thing.at, from) - thing.radius
  return apart <= reach + 1e-6
}

/** In plan: for going round it. */
export function shapeOf({ node, at, radius, shape }: Touchable): Electrode {
  return shape ?? { id: node, kind: 'disc', at, radius }
}
