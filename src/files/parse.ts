/** A value against a schema: the engine's object, or all issues with path, found and allowed. */
import * as v from 'valibot'
import { foundText, jsonPath, type Issue, type Read } from './issue'

export function parse<Out>(schema: v.GenericSchema<unknown, Out>, value: unknown): Read<Out> {
  const result = v.safeParse(schema, value, { abortEarly: false })
  if (result.success) return { ok: true, value: result.output }
  return { ok: false, issues: result.issues.map(issueOf) }
}

function issueOf(issue: v.BaseIssue<unknown>): Issue {
  const path = (issue.path ?? []).map((step) => step.key as string | number)
  const last = issue.path?.at(-1)
  const isUnknownKey = issue.type === 'raw_check' && last?.origin === 'key'
  const found = isUnknownKey ? `the key "${String(last.key)}"` : foundText(issue.input)
  return { path: jsonPath(path), found, allowed: issue.message }
}
