/** Text of a scenario file to the engine's scenario before the draw, or all of its issues. */
import type { ScenarioBase } from '../../engine'
import { checkHead } from '../head'
import type { Read } from '../issue'
import { readJson } from '../json/readJson'
import { parse } from '../parse'
import { consistencyIssues } from './consistency'
import { referenceIssues } from './references'
import { scenarioFormat, scenarioSchema, scenarioVersion } from './schema'

export function readScenario(text: string): Read<ScenarioBase> {
  const json = readJson(text)
  if (!json.ok) return json
  const head = checkHead(json.value, { format: scenarioFormat, version: scenarioVersion })
  if (!head.ok) return head
  const read = parse(scenarioSchema, head.value)
  const issues = [...(read.ok ? [] : read.issues), ...referenceIssues(head.value), ...consistencyIssues(head.value)]
  return issues.length > 0 ? { ok: false, issues } : read
}
