/** Text of a qualification file to its cases, or all of its issues. */
import { checkHead } from '../head'
import { foundText, jsonPath, type Issue, type Read } from '../issue'
import { readJson } from '../json/readJson'
import { parse } from '../parse'
import {
  isForAll,
  qualificationFormat,
  qualificationSchema,
  qualificationVersion,
  type QualificationFile,
} from './schema'

export function readQualification(text: string): Read<QualificationFile> {
  const json = readJson(text)
  if (!json.ok) return json
  const head = checkHead(json.value, { format: qualificationFormat, version: qualificationVersion })
  if (!head.ok) return head
  const read = parse(qualificationSchema, head.value)
  const issues = [...(read.ok ? [] : read.issues), ...crossIssues(head.value)]
  return issues.length > 0 ? { ok: false, issues } : read
}

/** Ids used twice, and tolerances for a path that is not expected: looked for even where the shape is wrong elsewhere. */
function crossIssues({ cases }: Readonly<Record<string, unknown>>): readonly Issue[] {
  if (!Array.isArray(cases)) return []
  const firstById = new Map<unknown, number>()
  return cases.flatMap((item: unknown, index) => {
    if (!isRecord(item)) return []
    const first = firstById.get(item.id)
    if (first === undefined) firstById.set(item.id, index)
    return [...(first === undefined ? [] : [usedTwice(item.id, index, first)]), ...toleranceIssues(item, index)]
  })
}

function usedTwice(id: unknown, index: number, first: number): Issue {
  return {
    path: jsonPath(['cases', index, 'id']),
    found: foundText(id),
    allowed: `each id once; ${jsonPath(['cases', first])} has it`,
  }
}

function toleranceIssues({ tolerance, expected }: Readonly<Record<string, unknown>>, index: number): readonly Issue[] {
  if (isForAll(tolerance) || !isRecord(tolerance) || !isRecord(expected)) return []
  return Object.keys(tolerance)
    .filter((path) => !Object.hasOwn(expected, path))
    .map((path) => ({
      path: jsonPath(['cases', index, 'tolerance', path]),
      found: `the key "${path}"`,
      allowed: `a path that is expected: ${Object.keys(expected).join(', ')}`,
    }))
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}
