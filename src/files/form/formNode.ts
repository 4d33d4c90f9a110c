/**
 * What a form is made from: a format told as fields, lists, choices and entries, with ranges and whether a field may be
 * left out. Made from the schema that reads the file (`formOf.ts`) or from what a kind of rule takes (`ruleForm.ts`), so
 * that no format is described twice.
 */
export type FormNode =
  | { readonly kind: 'group'; readonly fields: readonly FormField[] }
  /** `canStandAlone`: one entry may be written without the brackets of a list. */
  | {
      readonly kind: 'list'
      readonly item: FormNode
      readonly least: number
      readonly most: number
      readonly canStandAlone?: true
    }
  /** A list of fixed length. */
  | { readonly kind: 'row'; readonly items: readonly FormNode[] }
  /** Keys that the file chooses itself. */
  | { readonly kind: 'keyed'; readonly value: FormNode }
  | {
      readonly kind: 'oneOf'
      readonly of: readonly Alternative[]
      /** Index of the one that a value is meant as; below 0: none. */
      readonly which: (value: unknown) => number
    }
  | Leaf

export type Leaf =
  | { readonly kind: 'number'; readonly low: number; readonly high: number; readonly isWhole: boolean }
  /** `names`: which names can be chosen from; others may be written too. */
  | { readonly kind: 'text'; readonly most: number; readonly allowed: string; readonly names?: NameSource }
  | { readonly kind: 'flag' }
  | { readonly kind: 'choice'; readonly of: readonly (string | number | boolean | null)[] }

export interface NameSource {
  readonly of: string
}

export interface FormField {
  readonly key: string
  readonly node: FormNode
  readonly isOptional: boolean
  /** What it is for, where its key alone does not say. */
  readonly says?: string
}

export interface Alternative {
  readonly name: string
  readonly node: FormNode
}

type Json = Readonly<Record<string, unknown>>

export const isObject = (value: unknown): value is Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/** A choice of one: nothing to fill in. */
export const isFixed = (node: FormNode): boolean => node.kind === 'choice' && node.of.length === 1

/** What stands in a new field: the least that has the right shape. A text starts empty, which its reader refuses. */
export function blankOf(node: FormNode): unknown {
  switch (node.kind) {
    case 'group':
      return Object.fromEntries(
        node.fields.filter((it) => !it.isOptional).map(({ key, node: field }) => [key, blankOf(field)]),
      )
    case 'list':
      return Array.from({ length: node.least }, () => blankOf(node.item))
    case 'row':
      return node.items.map(blankOf)
    case 'keyed':
      return {}
    case 'oneOf':
      return node.of[0] ? blankOf(node.of[0].node) : null
    case 'number':
      return Math.min(Math.max(0, node.low), node.high)
    case 'text':
      return ''
    case 'flag':
      return true
    case 'choice':
      return node.of[0] ?? ''
  }
}

/** Another alternative in its place: what both have stays. */
export function turnInto(node: FormNode, value: unknown): unknown {
  const blank = blankOf(node)
  if (node.kind !== 'group' || !isObject(value) || !isObject(blank)) return blank
  const kept = node.fields.filter(({ key, node: field }) => !isFixed(field) && key in value && fits(field, value[key]))
  return { ...blank, ...Object.fromEntries(kept.map(({ key }) => [key, value[key]])) }
}

/** Not whether it is allowed: whether its form could show it. Parameters of another kind of rule are no group of this one. */
function fits(node: FormNode, value: unknown): boolean {
  if (node.kind === 'group')
    return isObject(value) && Object.keys(value).every((key) => node.fields.some((it) => it.key === key))
  if (node.kind === 'list') return Array.isArray(value) || node.canStandAlone === true
  if (node.kind === 'oneOf') return node.which(value) >= 0
  return true
}
