/** The open job as a run file: what was ordered, on which scenario, under which pack; nothing derived. */
import { type Part, actions, engineVersion } from '../../engine'
import { digestOf } from '../../files/digest'
import type { Run } from '../../files/run/run'
import { writeRun } from '../../files/run/write'
import { packText, scenarioText } from '../storage/library'
import { requireHeld } from './held'
import { jobStore } from './jobStore'

export function exportRun(): string {
  return writeRun(currentRun(), actions)
}

export function currentRun(): Run {
  const { head, ordered } = jobStore.getState()
  if (!head) throw new Error('expected an open job, got none')
  const shown = head.isShowing ? ordered : (head.shown ?? 0)
  return {
    scenario: head.scenario,
    scenarioDigest: digestOf(JSON.parse(scenarioText(head.scenario))),
    pack: head.pack,
    packDigest: digestOf(JSON.parse(packText(head.pack))),
    engine: engineVersion,
    seed: head.seed,
    purpose: head.purpose,
    startsAt: head.startsAt as Part,
    ...(shown > 0 && { shown }),
    orders: requireHeld().timeline.entries.map((entry) => entry.order),
  }
}
