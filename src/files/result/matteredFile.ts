/** What each thing mattered and the chance of it, with the unit in each key. */
import type { Chance, Shares } from '../../engine'
import { bystander } from './exposureFile'

type File = Readonly<Record<string, unknown>>

const unitOf = (person: string): 'A' | 'V' => (person === bystander ? 'V' : 'A')

export function sharesFile({ kind: _, withAll, withNone, shares, undivided, ...whom }: Shares): File {
  const unit = unitOf(whom.person)
  return {
    ...whom,
    [`withAll${unit}`]: withAll,
    [`withNone${unit}`]: withNone,
    shares: shares.map(({ thing, share }) => ({ kind: thing.kind, item: thing.item, [`share${unit}`]: share })),
    undivided: undivided.map(({ kind, item }) => ({ kind, item })),
  }
}

export function chanceFile({ kind: _, judged, ...rest }: Chance): File {
  return { ...rest, [`judged${unitOf(rest.person)}`]: judged }
}
