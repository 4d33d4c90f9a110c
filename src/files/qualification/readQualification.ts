/** Text of a qualification file → its cases, or everything that is wrong with it at once. */
import * as v from 'valibot'
import { qualificationFormat, qualificationSchema, qualificationVersion, type QualificationFile } from './schema'

export interface Issue {
  /** Dotted path into the file, empty for the file as a whole. */
  readonly path: string
  readonly message: string
}

export type QualificationReading =
  | { readonly kind: 'read'; readonly file: QualificationFile }
  | { readonly kind: 'refused'; readonly issues: readonly Issue[] }

export function readQualification(text: string): QualificationReading {
  const parsed = parse(text)
  if (parsed.kind === 'refused') return parsed
  const newer = newerVersion(parsed.value)
  if (newer !== undefined) return { kind: 'refused', issues: [{ path: 'version', message: newer }] }
  const result = v.safeParse(qualificationSchema, parsed.value)
  const shapeIssues = (result.issues ?? []).map((issue) => ({
    path: v.getDotPath(issue) ?? '',
    message: spoken(issue),
  }))
  const issues = [...shapeIssues, ...crossIssues(parsed.value)]
  if (!result.success || issues.length > 0) return { kind: 'refused', issues }
  return { kind: 'read', file: result.output }
}

function parse(text: string): { kind: 'parsed'; value: unknown } | { kind: 'refused'; issues: readonly Issue[] } {
  try {
    return { kind: 'parsed', value: JSON.parse(text) as unknown }
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error)
    return { kind: 'refused', issues: [{ path: '', message: `is not JSON: ${message}` }] }
  }
}

function newerVersion(value: unknown): string | undefined {
  if (!isRecord(value) || value['format'] !== qualificationFormat) return undefined
  const version = value['version']
  const isNewer = typeof version === 'number' && Number.isInteger(version) && version > qualificationVersion
  return isNewer
    ? `${qualificationFormat} version ${version} is newer than ${qualificationVersion}, the newest known here`
    : undefined
}

/** Ids used twice, and tolerances for a path that is not expected: looked for even where the shape is wrong elsewhere. */
function crossIssues(value: unknown): readonly Issue[] {
  const cases = isRecord(value) && Array.isArray(value['cases']) ? (value['cases'] as readonly unknown[]) : []
  const firstById = new Map<string, number>()
  return cases.flatMap((item, index) => {
    if (!isRecord(item)) return []
    const issues: Issue[] = []
    const id = item['id']
    if (typeof id === 'string') {
      const first = firstById.get(id)
      if (first === undefined) firstById.set(id, index)
      else
        issues.push({
          path: `cases.${index}.id`,
          message: `must not be used twice, but ${id} is already cases.${first}`,
        })
    }
    return [...issues, ...toleranceIssues(item, index)]
  })
}

function toleranceIssues(item: Readonly<Record<string, unknown>>, index: number): readonly Issue[] {
  const { tolerance, expected } = item
  if (!isRecord(tolerance) || !isRecord(expected)) return []
  return Object.keys(tolerance)
    .filter((path) => isRecord(tolerance[path]) && !Object.hasOwn(expected, path))
    .map((path) => ({
      path: `cases.${index}.tolerance.${path}`,
      message: 'is a tolerance for a value that is not expected',
    }))
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

function spoken(issue: v.BaseIssue<unknown>): string {
  return `${issue.message}, found ${issue.received}`
}
