/** What is in the soil already, so that nothing else is driven into it or set down on it. */
import { distance, type GroundPoint } from './place'
import { poleFoot } from './nextPole'
import { findSectionNeutral } from './findSectionNeutral'
import type { Site } from './site'
import { isOnPads } from './truckState'

/** From the axis of one to the edge of the other, metres (own choice). */
const room = 0.1

interface Taken {
  readonly at: GroundPoint
  readonly radius: number
}

/** @param radius of what is to come there, metres */
export function isGroundTaken(site: Site, at: GroundPoint, radius = 0): boolean {
  return [...buried(site), ...standsOn(site)].some((it) => distance(at, it.at) < it.radius + radius + room)
}

/** The truck would stand on something. */
export function isTruckPlaceTaken(site: Site, at: GroundPoint): boolean {
  const inSoil = buried(site)
  return padsOf(site, at).some((pad) => inSoil.some((it) => distance(pad.at, it.at) < it.radius + pad.radius + room))
}

function buried({ scenario, rods }: Site): readonly Taken[] {
  const { pole, stay, lv, grounds = [], switches, transformers = [] } = scenario
  const legs = [{ x: 0, y: 0 }, ...(pole.secondLeg ? [pole.secondLeg.at] : [])]
  if (scenario.nextPole) legs.push(poleFoot(scenario, 'next'))
  const neutral = findSectionNeutral(scenario)?.poleEarth.at
  const earths = [
    ...(stay ? [stay.anchor] : []),
    ...(lv.wires.length > 0 ? [lv.neutralEarth.at] : []),
    ...(lv.houseEarths ?? []).flatMap((it) => it.at ?? []),
    ...transformers.flatMap((it) => it.neutralEarth.at ?? []),
    ...(neutral ? [neutral] : []),
    ...grounds.flatMap((it) => (it.kind === 'fence' ? it.posts : it.kind === 'earth' ? [it.at] : it.points)),
    ...switches.flatMap((it) => (it.handleEarth === undefined ? [] : [{ x: it.along, y: 0 }])),
    ...rods.map((it) => it.at),
  ]
  return [...legs.map((at) => ({ at, radius: pole.diameter / 2 })), ...earths.map((at) => ({ at, radius: 0 }))]
}

/** Pads that are down, or wheels. */
function standsOn(site: Site): readonly Taken[] {
  if (site.scenario.truck === undefined) return []
  return isOnPads(site) ? padsOf(site, site.truck) : [{ at: site.truck, radius: wheelsRadius }]
}

/** What a truck that conducts stands on once it is set up. */
function padsOf({ scenario: { truck } }: Site, at: GroundPoint): readonly Taken[] {
  if (truck === undefined) return []
  const pads = truck.outriggers.map(({ x, y, radius }) => ({ at: { x: at.x + x, y: at.y + y }, radius }))
  return pads.length > 0 ? pads : [{ at, radius: wheelsRadius }]
}

/** What four wheels have together on the ground, as one disc, metres (own choice). */
export const wheelsRadius = 0.3
