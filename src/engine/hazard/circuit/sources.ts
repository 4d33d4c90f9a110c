/** Which feeders reach the section: by the switches as they stand and, if its cause stands, by the livening. */
import type { Livening, Scenario, ThingId } from '../../site/scenario'
import type { Site } from '../../site/site'
import { fittedOf, type Fitted } from './fitted'
import { liveningFeeder, whyNotLinked } from './livening'

/** @param livening already known to have its cause, or `none` */
export function feedersReaching(scenario: Scenario, fitted: Fitted, livening: Livening | 'none'): readonly ThingId[] {
  const closed = scenario.switches
    .filter((at) => (fitted.switches.find((it) => it.id === at.id)?.closed.length ?? 0) > 0)
    .map((at) => at.feeder)
  const reaching = livening === 'none' ? closed : [...closed, liveningFeeder(scenario, livening)]
  return [...new Set(reaching)].filter((id) => !fitted.feedersOut.includes(id)).sort()
}

export type Cause = { readonly stands: true } | { readonly stands: false; readonly why: string }

/** Whether a livening can happen on the site as it is; when not, why: `source-out`, `locked-open`, `already-closed`. */
export function causeOf(site: Site, livening: Livening): Cause {
  if (fittedOf(site).feedersOut.includes(liveningFeeder(site.scenario, livening))) return { stands: false, why: 'source-out' }
  const why = whyNotLinked(site, livening)
  return why === undefined ? { stands: true } : { stands: false, why }
}
