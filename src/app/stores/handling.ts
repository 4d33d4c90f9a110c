/** Which fields of an open form a hand can set in the picture: a place, an outline, an extent up the pole, turns, a way. */
import { type Belief, gearCatalogue } from '../../engine'
import type { Field } from './affords'
import type { Spot } from './aimStore'
import { type Entries, type Entry, figureOf } from './entries'
import type { Forms } from './formStore'

export interface Measure extends Pick<Field, 'low' | 'high' | 'step'> {
  readonly field: string
  /** Null until it is set: nothing comes filled in. */
  readonly value: number | null
}

/** A rod as it will stand: metres of it, and of those below the ground. */
export interface RodHandling {
  readonly length: number
  readonly depth: Measure
}

export type Handled =
  | { readonly kind: 'spot'; readonly field: string; readonly at: Spot | null; readonly rod: RodHandling | null }
  | { readonly kind: 'outline'; readonly field: string; readonly points: readonly Spot[] }
  | { readonly kind: 'extent'; readonly from: Measure; readonly to: Measure }
  | { readonly kind: 'turns'; readonly on: string; readonly turns: Measure }
  | {
      readonly kind: 'ways'
      readonly item: string
      readonly ways: readonly { readonly choice: string; readonly name: string }[]
      readonly give: (choice: string) => void
    }

export interface Handling {
  readonly handled: Handled
  /** As written now: what Escape goes back to. */
  readonly entries: Entries
  readonly set: (entries: Entries) => void
}

const nothing = (): void => undefined

export function handlingOf({ form, offer }: Forms, belief: Belief): Handling | null {
  if (!form) return offer && { handled: { kind: 'ways', ...offer }, entries: {}, set: nothing }
  const { afford, change } = form
  const entries: Entries = Object.fromEntries(afford.fields.map(({ name }) => [name, form.entries[name] ?? {}]))
  const of = (name: string): Entry => entries[name] ?? {}
  const find = (name: string): Field | undefined => afford.fields.find((field) => field.name === name)
  const measure = (field: Field): Measure => ({
    field: field.name,
    value: figureOf(of(field.name).text) ?? null,
    low: field.low,
    high: field.high,
    step: field.step,
  })
  const filled = (handled: Handled): Handling => ({ handled, entries, set: change })
  const outline = afford.fields.find(({ kind }) => kind === 'outline')
  if (outline) return filled({ kind: 'outline', field: outline.name, points: of(outline.name).points ?? [] })
  const spot = afford.fields.find(({ kind }) => kind === 'point')
  const depth = find('depth')
  if (spot)
    return filled({
      kind: 'spot',
      field: spot.name,
      at: of(spot.name).points?.[0] ?? null,
      rod: depth && afford.item !== null ? { length: lengthOf(belief, afford.item), depth: measure(depth) } : null,
    })
  const [from, to, turns] = [find('from'), find('to'), find('turns')]
  if (from?.kind === 'number' && to?.kind === 'number')
    return filled({ kind: 'extent', from: measure(from), to: measure(to) })
  if (turns && afford.on !== null) return filled({ kind: 'turns', on: afford.on, turns: measure(turns) })
  return null
}

/** As its label says, when somebody has read it; else as gear of its type is. */
function lengthOf(belief: Belief, item: string): number {
  const it = belief.items.find(({ id }) => id === item)
  const length = it?.label?.length ?? gearCatalogue.get(it?.type ?? '')?.parameters.length
  return typeof length === 'number' ? length : 2
}
