/** Text of a run to the engine's orders, or all of its issues. */
import type { Action, ScenarioBase } from '../../engine'
import { checkHead } from '../head'
import { foundText, type Issue, type Read } from '../issue'
import { readJson } from '../json/readJson'
import { parse } from '../parse'
import { runFormat, runVersion, type Run } from './run'
import { runSchema } from './schema'

/** @param scenario when given, the people and items that the run names must be its own */
export function readRun(text: string, actions: ReadonlyMap<string, Action>, scenario?: ScenarioBase): Read<Run> {
  const json = readJson(text)
  if (!json.ok) return json
  const head = checkHead(json.value, { format: runFormat, version: runVersion })
  if (!head.ok) return head
  const read = parse(runSchema(actions), head.value)
  const issues = [
    ...(read.ok ? [] : read.issues),
    ...timeIssues(head.value),
    ...(scenario ? strangerIssues(head.value, scenario) : []),
  ]
  return issues.length > 0 ? { ok: false, issues } : read
}

/** Orders come in order of time: the job clock does not go back. */
function timeIssues(file: Readonly<Record<string, unknown>>): readonly Issue[] {
  const lines = Array.isArray(file.actions) ? (file.actions as readonly ({ readonly at?: unknown } | null)[]) : []
  return lines.flatMap((line, i) => {
    const before = lines[i - 1]?.at
    const isBack = typeof before === 'number' && typeof line?.at === 'number' && line.at < before
    return isBack ? [{ path: `$.actions[${i}].at`, found: foundText(line.at), allowed: `${before} or later` }] : []
  })
}

function strangerIssues(file: Readonly<Record<string, unknown>>, scenario: ScenarioBase): readonly Issue[] {
  const lines = Array.isArray(file.actions) ? (file.actions as readonly unknown[]) : []
  const crew = scenario.crew.map((it) => it.id)
  const items = scenario.items.map((it) => it.id)
  const other: readonly Issue[] =
    typeof file.scenario === 'string' && file.scenario !== scenario.id
      ? [{ path: '$.scenario', found: foundText(file.scenario), allowed: `"${scenario.id}"` }]
      : []
  return lines.reduce<readonly Issue[]>((issues, line, i) => {
    if (typeof line !== 'object' || line === null) return issues
    const { who, with: item } = line as { readonly who?: unknown; readonly with?: unknown }
    const found: Issue[] = []
    if (typeof who === 'string' && !crew.includes(who)) {
      found.push({ path: `$.actions[${i}].who`, found: foundText(who), allowed: `one of the crew: ${crew.join(', ')}` })
    }
    if (typeof item === 'string' && !items.includes(item)) {
      found.push({ path: `$.actions[${i}].with`, found: foundText(item), allowed: 'the id of an item of the scenario' })
    }
    return found.length > 0 ? [...issues, ...found] : issues
  }, other)
}
