/** A small matrix as the solver keeps it, from its entries. */
import type { SplitMatrix } from '../../../../src/engine/math/splitMatrix'
import { addEntry, noEntries, splitMatrix } from '../../../../src/engine/math/splitMatrix'

export type Entry = readonly [row: number, column: number, re: number, im: number]

export function square(size: number, entries: readonly Entry[]): SplitMatrix {
  const all = noEntries()
  for (const entry of entries) addEntry(all, ...entry)
  return splitMatrix(size, all)
}
