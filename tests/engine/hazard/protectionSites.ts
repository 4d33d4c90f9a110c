/** Marrow-bend with other protection, and its lines as the circuit alone lives them. */
import { declaredCorner } from '../../../src/engine/hazard/corner'
import { lineOf } from '../../../src/engine/hazard/liven'
import type { LineStory } from '../../../src/engine/hazard/lineStory'
import { isUnsolvable } from '../../../src/engine/physics/network'
import type { Feeder } from '../../../src/engine/site/scenario'
import type { Site } from '../../../src/engine/site/site'
import { inScenario, sharedCache, soundScenario, type Change } from './sites'

export const crossingFeeder = soundScenario().feeders.find((it) => it.id === 'fx')!
export const phaseVoltage = 11_000 / Math.sqrt(3)

/** Seconds of IEC 60255-151 standard inverse. */
export function inverse(pickup: number, multiplier: number, current: number): number {
  return (multiplier * 0.14) / ((current / pickup) ** 0.02 - 1)
}

/** @throws when there is none */
export function line(site: Site, livening = 'clash-b'): LineStory {
  const answer = lineOf(site, livening, declaredCorner, sharedCache)
  if (isUnsolvable(answer)) throw new Error(`${answer.reason} at ${answer.node}`)
  return answer
}

export function feedersWith(change: Partial<Feeder>): Change {
  return inScenario(({ feeders }) => ({ feeders: feeders.map((it) => ({ ...it, ...change })) }))
}

export const reclosing: Change = (site) => ({ ...site, paper: { ...site.paper, recloseBlocked: {} } })
