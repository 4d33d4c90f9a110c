/** Text of a rule pack to the engine's pack, or all of its issues. */
import type { Pack } from '../../engine'
import { checkHead } from '../head'
import { foundText, type Issue, type Read } from '../issue'
import { readJson } from '../json/readJson'
import { parse } from '../parse'
import { packFormat, packSchema, packVersion } from './schema'

export function readPack(text: string): Read<Pack> {
  const json = readJson(text)
  if (!json.ok) return json
  const head = checkHead(json.value, { format: packFormat, version: packVersion })
  if (!head.ok) return head
  const read = parse(packSchema, head.value)
  const issues = [...(read.ok ? [] : read.issues), ...ruleIssues(head.value)]
  return issues.length > 0 ? { ok: false, issues } : read
}

function ruleIssues(file: Readonly<Record<string, unknown>>): readonly Issue[] {
  const rules = Array.isArray(file.rules) ? (file.rules as readonly ({ readonly id?: unknown; readonly element?: unknown } | null)[]) : []
  const elements = Array.isArray(file.elements) ? (file.elements as readonly unknown[]) : []
  const seen = new Set<unknown>()
  return rules.flatMap((rule, i) => {
    const found: Issue[] = []
    if (typeof rule?.id === 'string' && seen.has(rule.id)) {
      found.push({ path: `$.rules[${i}].id`, found: foundText(rule.id), allowed: 'an id that no other rule has' })
    }
    seen.add(rule?.id)
    if (typeof rule?.element === 'string' && !elements.includes(rule.element)) {
      found.push({ path: `$.rules[${i}].element`, found: foundText(rule.element), allowed: `one of ${elements.map(String).join(', ')}` })
    }
    return found
  })
}
