/** What is written into the fields of an act so far, and the value that each field makes of it. */
import type { Value } from '../../engine'
import type { Spot } from './aimStore'
import type { Field } from './affords'

/** As written so far: a figure or words, the choices, the points. */
export interface Entry {
  readonly text?: string
  readonly chosen?: readonly string[]
  readonly points?: readonly Spot[]
}

export type Entries = Readonly<Record<string, Entry>>

export function figureOf(text: string | undefined): number | undefined {
  if (text === undefined || text.trim() === '') return undefined
  const value = Number(text.replace(',', '.').replace('½', '.5'))
  return Number.isFinite(value) ? value : undefined
}

/** The value that goes into the order; undefined while something is missing. */
export function valueOf(field: Field, entry: Entry): Value | undefined {
  const { text, chosen, points } = entry
  if (field.kind === 'one') return chosen?.[0]
  if (field.kind === 'many') return chosen && field.choices.filter((choice) => chosen.includes(choice))
  if (field.kind === 'text') return text === '' ? undefined : text
  if (field.kind === 'point') return points?.[0]
  if (field.kind === 'outline') return points && points.length >= 3 ? points : undefined
  return figureOf(text)
}

/** From the south-west corner round by the east. */
export function rectangle(a: Spot, b: Spot): readonly Spot[] {
  const [west, east] = [Math.min(a.x, b.x), Math.max(a.x, b.x)]
  const [south, north] = [Math.min(a.y, b.y), Math.max(a.y, b.y)]
  return [
    { x: west, y: south },
    { x: east, y: south },
    { x: east, y: north },
    { x: west, y: north },
  ]
}

/** A figure as its field writes it: on the field's own steps, so that a hand and a key write the same. */
export function figureText({ low, high, step }: Pick<Field, 'low' | 'high' | 'step'>, figure: number): string {
  const onStep = Math.round(figure / step) * step
  return String(Number(Math.min(high, Math.max(low, onStep)).toFixed(3)))
}
