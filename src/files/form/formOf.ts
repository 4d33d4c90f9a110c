/** A format as a form, made from the same schema that reads the file. */
import type * as v from 'valibot'
import { alternativesOf } from '../shape'
import { isFixed, type FormField, type FormNode } from './formNode'

type AnySchema = v.GenericSchema<unknown, unknown>

/** The parts of a schema that are looked at here; which of them it has, its type says. */
interface Inside {
  readonly type: string
  readonly pipe?: readonly (Inside & { readonly kind: string; readonly requirement?: unknown })[]
  readonly wrapped?: Inside
  readonly entries?: Readonly<Record<string, Inside>>
  readonly item?: Inside
  readonly items?: readonly Inside[]
  readonly options?: readonly (string | number)[]
  readonly value?: Inside
  readonly getter?: (input: unknown) => Inside
  readonly message?: unknown
}

const known = new WeakMap<object, FormNode>()

/** @throws for a schema of a type that no form can be made from: our own mistake */
export function formOf(schema: AnySchema): FormNode {
  return nodeOf(schema as unknown as Inside)
}

function nodeOf(schema: Inside): FormNode {
  const node = known.get(schema) ?? makeNode(schema)
  known.set(schema, node)
  return node
}

function makeNode(schema: Inside): FormNode {
  const { base, checks } = unpiped(schema)
  const alternatives = alternativesOf(base) as readonly Inside[] | undefined
  if (alternatives) return alternativesNode(base, alternatives)
  const limit = (name: string, otherwise: number): number => {
    const { requirement } = checks.find((it) => it.type === name) ?? {}
    return typeof requirement === 'number' ? requirement : otherwise
  }
  switch (base.type) {
    case 'loose_object':
      return { kind: 'group', fields: Object.entries(base.entries ?? {}).map(fieldOf) }
    case 'array':
      return { kind: 'list', item: nodeOf(base.item!), least: limit('min_length', 0), most: limit('max_length', 1000) }
    case 'strict_tuple':
      return { kind: 'row', items: (base.items ?? []).map(nodeOf) }
    case 'record':
      return { kind: 'keyed', value: nodeOf(base.value!) }
    case 'nullable':
      return nullableNode(nodeOf(base.wrapped!))
    case 'number':
      return {
        kind: 'number',
        low: limit('min_value', -Infinity),
        high: limit('max_value', Infinity),
        isWhole: checks.some((it) => it.type === 'integer'),
      }
    case 'string':
      return { kind: 'text', most: limit('max_length', 80), allowed: String(base.message) }
    case 'boolean':
      return { kind: 'flag' }
    case 'picklist':
      return { kind: 'choice', of: base.options ?? [] }
    case 'unknown':
      return { kind: 'keyed', value: { kind: 'text', most: 200, allowed: '' } }
    default:
      throw new Error(`expected a schema that a form can be made from, got ${base.type}`)
  }
}

/** A pipe starts with the schema that says what is there; the rest narrows it. */
function unpiped(schema: Inside): { readonly base: Inside; readonly checks: NonNullable<Inside['pipe']> } {
  const [first, ...rest] = schema.pipe ?? []
  if (!first) return { base: schema, checks: [] }
  const { base, checks } = unpiped(first)
  return { base, checks: [...checks, ...rest] }
}

function fieldOf([key, schema]: readonly [string, Inside]): FormField {
  const isOptional = schema.type === 'exact_optional'
  return { key, node: nodeOf(isOptional ? schema.wrapped! : schema), isOptional }
}

function alternativesNode(base: Inside, alternatives: readonly Inside[]): FormNode {
  const [only, ...others] = alternatives
  if (only && others.length === 0) return nodeOf(only)
  return {
    kind: 'oneOf',
    of: alternatives.map((it) => ({ name: nameOf(nodeOf(it)), node: nodeOf(it) })),
    which: (value) => alternatives.indexOf(base.getter?.(value) as Inside),
  }
}

const nullableNode = (node: FormNode): FormNode => ({
  kind: 'oneOf',
  of: [
    { name: 'none', node: { kind: 'choice', of: [null] } },
    { name: 'some', node },
  ],
  which: (value) => (value === null ? 0 : 1),
})

/** By the one value that tells it from the others, or by what has to be filled in. */
function nameOf(node: FormNode): string {
  if (node.kind === 'choice') return node.of.join(', ')
  if (node.kind !== 'group') return node.kind
  const fixed = node.fields.find((it) => isFixed(it.node))
  if (fixed?.node.kind === 'choice') return String(fixed.node.of[0])
  return node.fields.map((it) => it.key).join(', ')
}
