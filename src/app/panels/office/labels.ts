/** How a field is called, from its key: the unit at its end becomes the unit of the label, the rest the words. */
import type { FormNode, Leaf } from '../../../files/form/formNode'
import { findFieldWord, say } from '../../../text/office'

/** Endings of the keys in files, longest first where one ends with another. */
const units: readonly (readonly [ending: string, unit: string])[] = [
  ['OhmPerM', 'Ω/m'],
  ['OhmM', 'Ωm'],
  ['Ohm', 'Ω'],
  ['MPerS', 'm/s'],
  ['Mm2', 'mm²'],
  ['M2', 'm²'],
  ['PerUnit', 'per unit'],
  ['VA', 'VA'],
  ['Hz', 'Hz'],
  ['Kg', 'kg'],
  ['M', 'm'],
  ['V', 'V'],
  ['A', 'A'],
  ['S', 's'],
  ['F', 'F'],
]

/** Only what holds a figure has a unit. */
function hasFigure(node: FormNode): boolean {
  if (node.kind === 'list') return hasFigure(node.item)
  if (node.kind === 'oneOf') return node.of.some((it) => hasFigure(it.node))
  return node.kind === 'number' || (node.kind === 'choice' && typeof node.of[0] === 'number')
}

export function labelOf(key: string, node: FormNode): string {
  const ending = hasFigure(node) || key.endsWith('PerUnit') ? units.find(([it]) => endsIn(key, it)) : undefined
  const name = ending ? key.slice(0, -ending[0].length) : key
  return ending ? `${nameOf(name)}, ${ending[1]}` : nameOf(name)
}

const endsIn = (key: string, ending: string): boolean =>
  key.endsWith(ending) && /[a-z]$/.test(key.slice(0, -ending.length))

const nameOf = (name: string): string => findFieldWord(name) ?? inWords(name)

function inWords(name: string): string {
  const words = name.replace(/([a-z\d])([A-Z])/g, '$1 $2').toLowerCase()
  return words.charAt(0).toUpperCase() + words.slice(1)
}

/** What may stand in a field, where it is a matter of size. */
export function rangeOf(leaf: Leaf): string {
  if (leaf.kind !== 'number') return ''
  const { low, high, isWhole } = leaf
  if (low > -Infinity && high < Infinity) return say(isWhole ? 'office.whole' : 'office.range', { low, high })
  return low > -Infinity ? say('office.from', { low }) : high < Infinity ? say('office.upTo', { high }) : ''
}

/** An entry of a list by what tells it from the others. */
export function entryName(value: unknown, index: number): string {
  const number = say('office.entry', { number: index + 1 })
  if (typeof value !== 'object' || value === null) return number
  const entry = value as Readonly<Record<string, unknown>>
  const known = ['id', 'item', 'trigger', 'of', 'do', 'is', 'switch', 'seed', 'number'].flatMap((key) =>
    ['string', 'number'].includes(typeof entry[key]) ? [String(entry[key])] : [],
  )
  const [first] = known
  const also = ['type', 'role', 'defect', 'on', 'with'].flatMap((key) =>
    typeof entry[key] === 'string' && entry[key] !== first ? [String(entry[key])] : [],
  )
  const kind = typeof entry.kind === 'string' ? [entry.kind] : []
  if (first === undefined && kind.length === 0) {
    const figures = Object.values(entry).filter((it) => typeof it === 'number')
    return [number, ...figures].join(', ')
  }
  return [...(first === undefined ? kind : [first]), ...also, ...(first === undefined ? [] : kind)].join(', ')
}
