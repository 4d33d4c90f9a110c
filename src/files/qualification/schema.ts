/**
 * `earths-on/qualification`, version 1: check cases for the physics, each with a figure from outside the program.
 * What a model's inputs must be is the model's own affair and is reported per case, not per file.
 */
import * as v from 'valibot'

export const qualificationFormat = 'earths-on/qualification'
export const qualificationVersion = 1

const bases = ['published', 'reference-program', 'closed-form', 'common-practice', 'memory'] as const

/** Valibot's strictObject stops at the first unknown key; every one is an issue of its own. */
const exactly = <const Entries extends v.ObjectEntries>(entries: Entries) =>
  v.objectWithRest(entries, v.never('an unknown key is not allowed'))

const text = v.pipe(v.string('must be text'), v.nonEmpty('must not be empty'))
const finite = v.pipe(v.number('must be a number'), v.finite('must be finite'))

/** 1 and more would let anything of the right sign pass. */
const relativeTolerance = v.pipe(finite, v.minValue(0, 'must be 0 or more'), v.ltValue(1, 'must be below 1'))
const absoluteTolerance = v.pipe(finite, v.minValue(0, 'must be 0 or more'))
const tolerance = v.pipe(
  exactly({ relative: v.optional(relativeTolerance), absolute: v.optional(absoluteTolerance) }),
  v.check(
    ({ relative, absolute }) => relative !== undefined || absolute !== undefined,
    'must have relative or absolute',
  ),
)

const isForAll = (value: unknown): boolean =>
  typeof value !== 'object' ||
  value === null ||
  'relative' in value ||
  'absolute' in value ||
  Object.keys(value).length === 0

const qualificationCase = exactly({
  id: v.pipe(v.string('must be text'), v.regex(/^[a-z0-9]+(?:[-.][a-z0-9]+)*$/, 'must be kebab-case')),
  model: text,
  basis: v.picklist(bases, `must be one of ${bases.join(', ')}`),
  source: text,
  inputs: v.record(v.string(), v.unknown(), 'must be an object'),
  expected: v.pipe(
    v.record(v.string(), v.union([finite, text], 'must be a finite number or text'), 'must be an object'),
    v.minEntries(1, 'must expect at least one value'),
  ),
  tolerance: v.optional(
    v.lazy((value) => (isForAll(value) ? tolerance : v.record(v.string(), tolerance, 'must be an object'))),
  ),
})

export const qualificationSchema = exactly({
  format: v.literal(qualificationFormat, `must be ${qualificationFormat}`),
  version: v.literal(qualificationVersion, `must be ${qualificationVersion}`),
  cases: v.pipe(v.array(qualificationCase, 'must be a list'), v.minLength(1, 'must hold at least one case')),
})

export type QualificationFile = v.InferOutput<typeof qualificationSchema>
