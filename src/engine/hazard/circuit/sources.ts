/**
 * Which feeders reach the section: by the switches as they stand and, if its cause stands, by the livening. And which are
 * alive beside it.
 */
import type { Livening, Scenario, ThingId } from '../../site/scenario'
import type { Fitted } from './fitted'
import { feedersOf } from '../../site/liveningTraits'
import { requireEmbedded } from './embeddedSource'
import { requireTransformer } from './transformer'

/** @param livening already known to have its cause, or `none` */
export function feedersReaching(scenario: Scenario, fitted: Fitted, livening: Livening | 'none'): readonly ThingId[] {
  const closed = scenario.switches
    .filter((at) => (fitted.switches.find((it) => it.id === at.id)?.closed.length ?? 0) > 0)
    .map((at) => at.feeder)
  const reaching = livening === 'none' ? closed : [...closed, ...feedersOf(scenario, livening)]
  return [...new Set(reaching)].filter((id) => !fitted.feedersOut.includes(id)).sort()
}

/** Feeders that go on past the section on the same poles, but for those out of service or tripped in this story. */
export function feedersBeside(
  scenario: Scenario,
  fitted: Fitted,
  livening: Livening | 'none',
  live: readonly ThingId[],
): readonly ThingId[] {
  const tripped = feedersReaching(scenario, fitted, livening).filter((id) => !live.includes(id))
  const beside = (scenario.parallels ?? []).flatMap(({ feeder }) => (feeder === undefined ? [] : [feeder]))
  return [...new Set(beside)].filter((id) => !fitted.feedersOut.includes(id) && !tripped.includes(id)).sort()
}

/**
 * A source of somebody's own behind a transformer of which feeders hold every phase already: it runs with them or its owner's
 * switch stays off, and nothing of it livens the section.
 */
export function isHeldByFeeders(scenario: Scenario, fitted: Fitted, livening: Livening): boolean {
  if (livening.kind !== 'back-feed' && livening.kind !== 'low-voltage-fed') return false
  const { id, phases } = requireTransformer(scenario, requireEmbedded(scenario, livening.source).transformer)
  const joined = fitted.transformers.some((it) => it.id === id && it.carriers && it.isClosed)
  // Cut off from the line, the wires below are nobody's but the source's.
  if (livening.kind === 'low-voltage-fed' && !joined) return false
  const inService = scenario.switches.filter((at) => !fitted.feedersOut.includes(at.feeder)).map((at) => at.id)
  const closed = fitted.switches.filter((it) => inService.includes(it.id)).flatMap((it) => it.closed)
  return phases.every((phase) => closed.includes(phase))
}
