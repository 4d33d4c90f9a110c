/** Opens a run from a file, or says everything that is wrong with it. */
import { actions } from '../../engine'
import type { Issue } from '../../files/issue'
import { readRun } from '../../files/run/read'
import { requireScenario, scenarioIds, packIds } from '../storage/library'
import { headFor } from './headFor'
import { openRun } from './openJob'

/** Larger files are no runs, bytes. */
const most = 5_000_000

export async function importRun(file: File): Promise<readonly Issue[]> {
  if (file.size > most) return [{ path: '$', found: `${file.size} bytes`, allowed: `at most ${most} bytes` }]
  const text = await file.text()
  const first = readRun(text, actions)
  if (!first.ok) return first.issues
  const { scenario, pack, seed, purpose, startsAt, shown } = first.value
  if (!scenarioIds.includes(scenario)) return [{ path: '$.scenario', found: scenario, allowed: scenarioIds.join(', ') }]
  if (!packIds.includes(pack)) return [{ path: '$.pack', found: pack, allowed: packIds.join(', ') }]
  const read = readRun(text, actions, requireScenario(scenario))
  if (!read.ok) return read.issues
  openRun(headFor(scenario, seed, purpose, { pack, startsAt, ...(shown && { shown }) }), read.value.orders)
  return []
}
