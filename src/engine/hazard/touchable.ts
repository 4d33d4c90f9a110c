/**
 * What the public can lay a hand on: rods and the lead on them, the lower stay, the pole, and the end of a lead that
 * hangs down the pole. Reach is from the walk to the thing's surface. A switch handle is locked or far up: not touched.
 */
import { distance, type GroundPoint } from '../site/place'
import type { Scenario } from '../site/scenario'
import type { Fitted } from './circuit/fitted'
import { cageNode, leadNode, rodNode, stayLowerNode } from './circuit/nodes'
import { spreadingResistance } from './circuit/pole'

/** IEEE 80 takes one metre for a reach. */
const reach = 1

export interface Touchable {
  readonly node: string
  readonly at: GroundPoint
  readonly radius: number
  /** Ohm from the node to the surface. */
  readonly series: number
}

export function touchables(scenario: Scenario, fitted: Fitted): readonly Touchable[] {
  const { pole, stay, contact } = scenario
  const foot = { at: { x: 0, y: 0 }, radius: pole.diameter / 2 }
  return [
    ...fitted.rods.map(({ item, at, radius }): Touchable => ({ node: rodNode(item), at, radius, series: 0 })),
    { node: stayLowerNode, at: stay.anchor, radius: stay.anchorRadius, series: 0 },
    { node: cageNode, ...foot, series: spreadingResistance(pole, contact.area.hand) },
    ...fitted.leads
      .filter(({ pieces, clamps }) => pieces[0]?.from === 'earth' && !clamps.some((it) => it.end === 'earth'))
      .map(({ item }): Touchable => ({ node: leadNode(item, 'earth'), ...foot, series: 0 })),
  ]
}

/** At exactly an arm's length it reaches. */
export function isInReach(thing: Touchable, from: GroundPoint): boolean {
  return distance(thing.at, from) - thing.radius <= reach + 1e-6
}
