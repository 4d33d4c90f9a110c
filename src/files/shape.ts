/**
 * The building blocks of the formats: a shape says once which keys a file has, with the unit in the key, and gives the
 * engine's object without it: `lengthM` in the file is `length` in metres inside.
 */
import * as v from 'valibot'

/** A value and the unit that its key carries. */
export interface Field<Out> {
  readonly suffix: string
  /** The whole key, where it is not the name and the unit. */
  readonly key?: string
  readonly schema: v.GenericSchema<unknown, Out>
  readonly isOptional?: boolean
}

type Fields = Readonly<Record<string, Field<unknown> | v.GenericSchema<unknown, unknown>>>
type OutOf<F> = F extends v.GenericSchema<unknown, infer Out> ? Out : F extends Field<infer Out> ? Out : never
type OptionalKeys<F extends Fields> = {
  [K in keyof F]: F[K] extends { readonly isOptional: true } ? K : never
}[keyof F]
type ShapeOut<F extends Fields> = { readonly [K in Exclude<keyof F, OptionalKeys<F>>]: OutOf<F[K]> } & {
  readonly [K in OptionalKeys<F>]?: OutOf<F[K]>
}

const isField = (field: Field<unknown> | v.GenericSchema<unknown, unknown>): field is Field<unknown> =>
  'suffix' in field

/** Keys of the file for the fields of a shape: name and unit. */
export function shape<F extends Fields>(fields: F): v.GenericSchema<unknown, ShapeOut<F>> {
  const names = Object.entries(fields).map(([name, field]) => {
    if (!isField(field)) return { name, key: name, schema: field }
    const { suffix, schema, isOptional, key = name + suffix } = field
    return { name, key, schema: isOptional ? v.exactOptional(schema) : schema }
  })
  const keys = names.map((it) => it.key)
  const entries = Object.fromEntries(names.map((it) => [it.key, it.schema]))
  const built = v.pipe(
    v.looseObject(entries, (issue) => (issue.expected === 'Object' ? 'an object' : 'this key, once')),
    v.rawCheck(({ dataset, addIssue }) => {
      const input = dataset.value as Readonly<Record<string, unknown>> | null
      if (typeof input !== 'object' || input === null) return
      for (const key of Object.keys(input).filter((it) => !keys.includes(it))) {
        addIssue({
          message: allowedKeys(key, keys),
          path: [{ type: 'object', origin: 'key', input, key, value: input[key] }],
        })
      }
    }),
    v.transform((value) => {
      const read = value as Readonly<Record<string, unknown>>
      return Object.fromEntries(names.filter((it) => it.key in read).map((it) => [it.name, read[it.key]]))
    }),
  )
  // A list would pass as an object whose keys are numbers.
  const noList = v.custom<never>(() => false, 'an object')
  return oneOf([built], (input) => (Array.isArray(input) ? noList : built)) as v.GenericSchema<
    unknown,
    unknown
  > as v.GenericSchema<unknown, ShapeOut<F>>
}

/** `lengthKm` is told of `lengthM`: a wrong unit is an unknown key with a near name. */
function allowedKeys(key: string, keys: readonly string[]): string {
  const near = keys.filter((it) => nearness(it, key) >= 4 || it.toLowerCase() === key.toLowerCase())
  const best = near.sort((a, b) => nearness(b, key) - nearness(a, key))[0]
  return best === undefined ? `no such key here; the keys are ${keys.join(', ')}` : `no such key here; near: ${best}`
}

function nearness(a: string, b: string): number {
  let same = 0
  while (same < a.length && a[same]?.toLowerCase() === b[same]?.toLowerCase()) same++
  return same
}

/** A finite number within a range, both ends allowed. */
export function number(low: number, high: number): v.GenericSchema<unknown, number> {
  const allowed = `a number from ${low} to ${high}`
  return v.pipe(v.number(allowed), v.minValue(low, allowed), v.maxValue(high, allowed))
}

export function whole(low: number, high: number): v.GenericSchema<unknown, number> {
  const allowed = `a whole number from ${low} to ${high}`
  return v.pipe(v.number(allowed), v.integer(allowed), v.minValue(low, allowed), v.maxValue(high, allowed))
}

const unit =
  (suffix: string) =>
  (low: number, high: number): Field<number> => ({ suffix, schema: number(low, high) })

export const metres = unit('M')
export const volts = unit('V')
export const amperes = unit('A')
export const ohms = unit('Ohm')
export const ohmMetres = unit('OhmM')
export const ohmsPerMetre = unit('OhmPerM')
export const seconds = unit('S')
export const hertz = unit('Hz')
export const kilograms = unit('Kg')
export const squareMetres = unit('M2')
export const squareMillimetres = unit('Mm2')
export const metresPerSecond = unit('MPerS')

export function optional<Out>(
  field: Field<Out> | v.GenericSchema<unknown, Out>,
): Field<Out> & { readonly isOptional: true } {
  return 'suffix' in field ? { ...field, isOptional: true } : { suffix: '', schema: field, isOptional: true }
}

/** Ids and names: kebab or a register's number, `S-12`, `lv-a`, `P117`. */
export function id(): v.GenericSchema<unknown, string> {
  const allowed = 'an id of 1 to 40 letters, digits, hyphens'
  return v.pipe(v.string(allowed), v.regex(/^[A-Za-z0-9][A-Za-z0-9-]{0,39}$/, allowed))
}

export function text(most = 200): v.GenericSchema<unknown, string> {
  const allowed = `a text of 1 to ${most} characters`
  return v.pipe(v.string(allowed), v.minLength(1, allowed), v.maxLength(most, allowed))
}

export function date(): v.GenericSchema<unknown, string> {
  const allowed = 'a date, YYYY-MM-DD'
  return v.pipe(v.string(allowed), v.isoDate(allowed))
}

export function boolean(): v.GenericSchema<unknown, boolean> {
  return v.boolean('true or false')
}

export function choice<const T extends readonly string[]>(...of: T): v.GenericSchema<unknown, T[number]> {
  return v.picklist(of, `one of ${of.join(', ')}`)
}

/** Whole numbers that are a code, like a weight class. */
export function numberChoice<const T extends readonly number[]>(...of: T): v.GenericSchema<unknown, T[number]> {
  return v.picklist(of, `one of ${of.join(', ')}`)
}

export function list<Out>(
  item: v.GenericSchema<unknown, Out>,
  least = 0,
  most = 1000,
): v.GenericSchema<unknown, readonly Out[]> {
  const allowed = `a list of ${least} to ${most}`
  return v.pipe(v.array(item, allowed), v.minLength(least, allowed), v.maxLength(most, allowed))
}

export function nullable<Out>(schema: v.GenericSchema<unknown, Out>): v.GenericSchema<unknown, Out | null> {
  return v.nullable(schema)
}

/** Keys that the file chooses itself. */
export function record<Out>(
  value: v.GenericSchema<unknown, Out>,
  allowed: string,
): v.GenericSchema<unknown, Readonly<Record<string, Out>>> {
  return v.record(v.pipe(v.string(allowed), v.maxLength(200, 'a key of at most 200 characters')), value, allowed)
}

/** Exactly one of several shapes, told apart by `kind`. */
export function byKind<const S extends Readonly<Record<string, v.GenericSchema<unknown, unknown>>>>(
  shapes: S,
): v.GenericSchema<
  unknown,
  { [K in keyof S]: S[K] extends v.GenericSchema<unknown, infer Out> ? Out : never }[keyof S]
> {
  const other = unknownKind('kind', Object.keys(shapes))
  return oneOf(Object.values(shapes), (input) => {
    const kind = (input as { readonly kind?: unknown } | null)?.kind
    return (typeof kind === 'string' && Object.hasOwn(shapes, kind) ? shapes[kind] : undefined) ?? other
  }) as never
}

/** For a value whose kind is none of those: that is the one issue, its other keys cannot be judged. */
export function unknownKind(key: string, kinds: readonly string[]): v.GenericSchema<unknown, never> {
  return v.looseObject({ [key]: choice(...kinds) }, (issue) =>
    issue.expected === 'Object' ? 'an object' : `one of ${kinds.join(', ')}`,
  ) as never
}

const alternativesBySchema = new WeakMap<object, readonly v.GenericSchema<unknown, unknown>[]>()

/** One of several, chosen by looking at the value, so that the issues are those of the one that was meant. */
export function oneOf<Out>(
  alternatives: readonly v.GenericSchema<unknown, Out>[],
  choose: (input: unknown) => v.GenericSchema<unknown, Out>,
): v.GenericSchema<unknown, Out> {
  const schema = v.lazy(choose)
  alternativesBySchema.set(schema, alternatives)
  return schema
}

/** For the JSON Schema: what `oneOf` chooses from. */
export function alternativesOf(schema: object): readonly v.GenericSchema<unknown, unknown>[] | undefined {
  return alternativesBySchema.get(schema)
}

export const point = () => shape({ x: metres(-2000, 2000), y: metres(-2000, 2000) })
