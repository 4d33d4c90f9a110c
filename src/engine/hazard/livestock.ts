/**
 * Livestock outside the barrier: fore feet and hind feet stand further apart than a pace of people (procedure E21). Told
 * as the voltage between them; no current through an animal and no harm is claimed, and the limit is the scenario's own.
 */
import { worstPace } from './bystander'
import type { LivestockPace } from './exposure'
import type { LineStory } from './lineStory'
import type { GroundPoint } from '../site/place'
import type { Scenario } from '../site/scenario'

/** The worst of the whole story; undefined where the scenario has no livestock or nothing is between their feet. */
export function livestockPaceOf(
  scenario: Scenario,
  line: LineStory,
  outline: readonly GroundPoint[] | null,
): LivestockPace | undefined {
  const { livestock } = scenario
  if (livestock === undefined) return undefined
  const phases = line.phases.filter((it) => it.isLive || line.clearedBy === 'not-live')
  const found = phases.map((phase) => worstPace(scenario, phase, outline, livestock.pace))
  const [worst] = found.sort((a, b) => b.voltage - a.voltage)
  return worst && worst.voltage > 0
    ? { path: 'livestock-pace', voltage: worst.voltage, limit: livestock.limit, feet: worst.feet }
    : undefined
}
