/** Which feeders reach the section: by the switches as they stand and, if its cause stands, by the livening. */
import type { Livening, Scenario, ThingId } from '../../site/scenario'
import type { Fitted } from './fitted'
import { feedersOf } from '../../site/liveningTraits'

/** @param livening already known to have its cause, or `none` */
export function feedersReaching(scenario: Scenario, fitted: Fitted, livening: Livening | 'none'): readonly ThingId[] {
  const closed = scenario.switches
    .filter((at) => (fitted.switches.find((it) => it.id === at.id)?.closed.length ?? 0) > 0)
    .map((at) => at.feeder)
  const reaching = livening === 'none' ? closed : [...closed, ...feedersOf(scenario, livening)]
  return [...new Set(reaching)].filter((id) => !fitted.feedersOut.includes(id)).sort()
}
