/** The neutral wire of the section: that of a feeder which one of its switches joins to it. */
import type { NeutralWire, Scenario } from './scenario'

export function findSectionNeutral(scenario: Pick<Scenario, 'feeders' | 'switches'>): NeutralWire | undefined {
  const joined = scenario.feeders.filter((feeder) => scenario.switches.some((at) => at.feeder === feeder.id))
  return joined.find((it) => it.neutralWire !== undefined)?.neutralWire
}
