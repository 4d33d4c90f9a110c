/** Full matrices for trying the solver: written out, multiplied and inverted here without it. */
import type { Complex } from '../../../src/engine/math/complex'
import { complex, magnitude } from '../../../src/engine/math/complex'
import type { Lu } from '../../../src/engine/math/lu'
import type { SplitMatrix, SplitVector } from '../../../src/engine/math/splitMatrix'
import { addEntry, noEntries, splitMatrix, splitVector } from '../../../src/engine/math/splitMatrix'

/** Nothing is kept of a place that is zero. */
export function complexMatrix(rows: readonly (readonly Complex[])[]): SplitMatrix {
  const entries = noEntries()
  for (const [i, row] of rows.entries()) {
    for (const [j, entry] of row.entries()) {
      if (entry.re !== 0 || entry.im !== 0) addEntry(entries, i, j, entry.re, entry.im)
    }
  }
  return splitMatrix(rows.length, entries)
}

export function realMatrix(rows: readonly (readonly number[])[]): SplitMatrix {
  return complexMatrix(rows.map((row) => row.map((entry) => complex(entry))))
}

export function times(rows: readonly (readonly Complex[])[], x: SplitVector): SplitVector {
  const product = splitVector(rows.length)
  for (const [i, row] of rows.entries()) {
    for (const [j, { re, im }] of row.entries()) {
      product.re[i] = product.re[i]! + re * x.re[j]! - im * x.im[j]!
      product.im[i] = product.im[i]! + re * x.im[j]! + im * x.re[j]!
    }
  }
  return product
}

/** ‖A‖₁ ‖A⁻¹‖₁ with every column of the inverse solved for. */
export function conditionByInverse(rows: readonly (readonly Complex[])[], lu: Lu): number {
  const columnSums = rows.map((_, j) => rows.reduce((sum, row) => sum + magnitude(row[j]!), 0))
  const inverseSums = rows.map((_, j) => {
    const unit = splitVector(rows.length)
    unit.re[j] = 1
    const { re, im } = lu.solve(unit)
    return re.reduce((sum, part, i) => sum + magnitude(complex(part, im[i]!)), 0)
  })
  return Math.max(...columnSums) * Math.max(...inverseSums)
}
