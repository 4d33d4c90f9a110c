/**
 * `earths-on/qualification`, version 1: check cases for the physics, each with a figure from outside the program.
 * What a model's inputs must be is the model's own affair and is reported per case, not per file.
 */
import * as v from 'valibot'
import { choice, list, optional, shape, text, whole } from '../shape'

export const qualificationFormat = 'earths-on/qualification'
export const qualificationVersion = 1

const most = 5000

/** 1 and more would let anything of the right sign pass. */
const relativeTolerance = v.pipe(v.number('a number'), v.minValue(0, 'at least 0'), v.ltValue(1, 'below 1'))
const absoluteTolerance = v.pipe(v.number('a number'), v.minValue(0, 'at least 0'))
const tolerance = v.pipe(
  shape({ relative: optional(relativeTolerance), absolute: optional(absoluteTolerance) }),
  v.check(
    ({ relative, absolute }) => relative !== undefined || absolute !== undefined,
    'relative or absolute, or both',
  ),
)

/** `{ relative, absolute }` speaks for all values; with other keys it is one such object per path. */
export function isForAll(value: unknown): boolean {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return true
  const keys = Object.keys(value)
  return keys.length === 0 || keys.includes('relative') || keys.includes('absolute')
}

const tolerances = v.lazy((value) => (isForAll(value) ? tolerance : v.record(v.string(), tolerance, 'an object')))

const expectedValue = v.union([v.pipe(v.number(), v.finite()), text()], 'a finite number or a text')

const qualificationCase = shape({
  id: v.pipe(v.string('a text'), v.regex(/^[a-z0-9]+(?:[-.][a-z0-9]+)*$/, 'a kebab-case id')),
  model: text(),
  basis: choice('published', 'reference-program', 'closed-form', 'common-practice', 'memory'),
  source: text(4000),
  inputs: v.record(v.string(), v.unknown(), 'an object'),
  expected: v.pipe(v.record(v.string(), expectedValue, 'an object'), v.minEntries(1, 'at least one value')),
  tolerance: optional(tolerances),
})

export const qualificationSchema = shape({
  format: choice(qualificationFormat),
  version: whole(qualificationVersion, qualificationVersion),
  cases: list(qualificationCase, 1, most),
})

export type QualificationFile = v.InferOutput<typeof qualificationSchema>
