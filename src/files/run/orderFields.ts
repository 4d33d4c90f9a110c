/**
 * The values of an order in a file, with the unit in the key: `depthM`, `areaMm2`, `toPoint: { xM, yM }`. Which values an
 * action takes, and of which kind, the engine's registry of actions says.
 */
import * as v from 'valibot'
import type { Action, Order, Value, ValueSpec } from '../../engine'
import { choice, list, oneOf, optional, point, shape, text, unknownKind, whole, type Field } from '../shape'

type Fields = Readonly<Record<string, Field<unknown>>>

const idText = (): v.GenericSchema<unknown, string> => {
  const allowed = 'an id of 1 to 80 letters, digits, hyphens, slashes'
  return v.pipe(v.string(allowed), v.regex(/^[A-Za-z0-9][A-Za-z0-9/-]{0,79}$/, allowed))
}

/** A thing may be of the next pole. */
const thingText = (): v.GenericSchema<unknown, string> => {
  const allowed = 'an id of 1 to 80 letters, digits, hyphens, slashes, with @next at its end for the next pole'
  return v.pipe(v.string(allowed), v.regex(/^[A-Za-z0-9][A-Za-z0-9/-]{0,79}(?:@next)?$/, allowed))
}

const lastSecond = 1_000_000

function finite(): v.GenericSchema<unknown, number> {
  return v.pipe(v.number('a number'), v.finite('a number'))
}

/** Kind and unit of a value; whether its size makes sense is the world's answer, a refusal, not the file's. */
function fieldOf(spec: ValueSpec): Field<unknown> {
  switch (spec.kind) {
    case 'number':
      return { suffix: unitSuffix[spec.unit], schema: finite() }
    case 'choice':
      return { suffix: '', schema: spec.many ? list(text(80), 0, 100) : text(80) }
    case 'point':
      return { suffix: 'Point', schema: point() }
    case 'outline':
      return { suffix: '', schema: list(point(), 0, 200) }
    case 'text':
      return { suffix: '', schema: text(2000) }
    case 'cards':
      return { suffix: '', schema: list(text(200), 0, 200) }
  }
}

const unitSuffix = { metre: 'M', millimetre2: 'Mm2', turn: '', none: '' } as const

/** Schema of one line of a run, given the actions there are. */
export function orderSchema(actions: ReadonlyMap<string, Action>): v.GenericSchema<unknown, Order> {
  const byAction = new Map([...actions].map(([id, action]) => [id, lineSchema(id, valueFields(action))]))
  byAction.set(
    'withdraw',
    lineSchema('withdraw', { [`${valueName}index`]: { suffix: '', key: 'index', schema: whole(0, lastSecond) } }),
  )
  const anyAction = unknownKind('do', [...byAction.keys()])
  return oneOf([...byAction.values()], (input) => {
    const id = (input as { readonly do?: unknown } | null)?.do
    return (typeof id === 'string' ? byAction.get(id) : undefined) ?? anyAction
  })
}

const valueName = 'value '

function valueFields(action: Action): Fields {
  const entries = Object.entries(action.values ?? {}).map(([name, spec]) => {
    const field = { ...fieldOf(spec), key: valueKey(name, spec) }
    return [valueName + name, action.optional?.includes(name) ? optional(field) : field] as const
  })
  return Object.fromEntries(entries)
}

function valueKey(name: string, spec: ValueSpec): string {
  return name + fieldOf(spec).suffix
}

function lineSchema(id: string, values: Fields): v.GenericSchema<unknown, Order> {
  return v.pipe(
    shape({
      at: whole(0, lastSecond),
      who: idText(),
      do: choice(id),
      with: optional(idText()),
      on: optional(thingText()),
      ...values,
    }),
    v.transform((line) => orderOf(line as Readonly<Record<string, unknown>>)),
  ) as v.GenericSchema<unknown, Order>
}

function orderOf(line: Readonly<Record<string, unknown>>): Order {
  const entries = Object.entries(line)
  const values = entries
    .filter(([name]) => name.startsWith(valueName))
    .map(([name, value]) => [name.slice(valueName.length), value])
  const head = entries.filter(([name]) => !name.startsWith(valueName))
  return { ...Object.fromEntries(head), values: Object.fromEntries(values) as Order['values'] } as Order
}

/** The line of a file for an order; the reverse of reading it. */
export function orderLine(order: Order, actions: ReadonlyMap<string, Action>): Readonly<Record<string, unknown>> {
  const { values, ...head } = order
  const specs: Readonly<Record<string, ValueSpec>> = actions.get(order.do)?.values ?? {}
  const written = Object.entries(values).map(([name, value]) => {
    const spec = specs[name]
    return [spec ? valueKey(name, spec) : name, writtenValue(value)]
  })
  return { ...head, ...Object.fromEntries(written) }
}

function writtenValue(value: Value): unknown {
  if (Array.isArray(value))
    return (value as readonly (string | { readonly x: number; readonly y: number })[]).map(writtenPoint)
  return typeof value === 'object' ? writtenPoint(value as { readonly x: number; readonly y: number }) : value
}

function writtenPoint(value: string | { readonly x: number; readonly y: number }): unknown {
  return typeof value === 'string' ? value : { xM: value.x, yM: value.y }
}
