/**
 * Dense complex LU with partial pivoting on split row-major arrays: factor once, solve many right-hand sides.
 * Rows are pivoted by |re| + |im|; ties take the first row, so equal input gives equal bits.
 */
import { invariant } from '../units/invariant'
import type { Factors } from './luSolve'
import { solveFactored } from './luSolve'
import { estimateReciprocalCondition } from './reciprocalCondition'
import type { SplitMatrix, SplitVector } from './splitMatrix'

export interface Lu {
  readonly size: number
  /** First column without a usable pivot, or -1. With one, solve must not be called. */
  readonly singularColumn: number
  /** Column with the smallest pivot: where a nearly singular matrix is weakest. */
  readonly weakestColumn: number
  /** Estimate of 1 / (‖A‖₁ ‖A⁻¹‖₁); 0 when singular. */
  readonly reciprocalCondition: number
  solve(right: SplitVector): SplitVector
}

export function factorLu(matrix: SplitMatrix): Lu {
  const { size } = matrix
  const re = matrix.re.slice()
  const im = matrix.im.slice()
  const order = Int32Array.from({ length: size }, (_, row) => row)
  const singularColumn = eliminate(size, re, im, order)
  const factors = { size, re, im, order }
  const reciprocalCondition = singularColumn >= 0 ? 0 : estimateReciprocalCondition(matrix, factors)
  return {
    size,
    singularColumn,
    weakestColumn: smallestPivot(factors),
    reciprocalCondition,
    solve: (right) => {
      invariant(singularColumn < 0, 'a matrix that was factored', `singular column ${singularColumn}`)
      invariant(right.re.length === size, `a right-hand side of ${size}`, right.re.length)
      return solveFactored(factors, right)
    },
  }
}

function smallestPivot({ size, re, im }: Factors): number {
  let best = 0
  let least = Infinity
  for (let k = 0; k < size; k++) {
    const pivot = Math.abs(re[k * size + k]!) + Math.abs(im[k * size + k]!)
    if (pivot < least) {
      best = k
      least = pivot
    }
  }
  return best
}

function eliminate(size: number, re: Float64Array, im: Float64Array, order: Int32Array): number {
  for (let k = 0; k < size; k++) {
    const pivotRow = largestInColumn(size, re, im, k)
    const pivotAt = pivotRow * size + k
    if (!(Math.abs(re[pivotAt]!) + Math.abs(im[pivotAt]!) > 0)) return k
    if (pivotRow !== k) swapRows(size, re, im, order, k, pivotRow)
    eliminateBelow(size, re, im, k)
  }
  return -1
}

function largestInColumn(size: number, re: Float64Array, im: Float64Array, k: number): number {
  let best = k
  let bestSize = -1
  for (let row = k; row < size; row++) {
    const at = row * size + k
    const entry = Math.abs(re[at]!) + Math.abs(im[at]!)
    if (entry > bestSize) {
      best = row
      bestSize = entry
    }
  }
  return best
}

function swapRows(size: number, re: Float64Array, im: Float64Array, order: Int32Array, a: number, b: number): void {
  for (let column = 0; column < size; column++) {
    const atA = a * size + column
    const atB = b * size + column
    const keptRe = re[atA]!
    const keptIm = im[atA]!
    re[atA] = re[atB]!
    im[atA] = im[atB]!
    re[atB] = keptRe
    im[atB] = keptIm
  }
  const kept = order[a]!
  order[a] = order[b]!
  order[b] = kept
}

function eliminateBelow(size: number, re: Float64Array, im: Float64Array, k: number): void {
  const pivotRe = re[k * size + k]!
  const pivotIm = im[k * size + k]!
  const largest = Math.max(Math.abs(pivotRe), Math.abs(pivotIm))
  const scaledRe = pivotRe / largest
  const scaledIm = pivotIm / largest
  const square = (scaledRe * scaledRe + scaledIm * scaledIm) * largest
  const inverseRe = scaledRe / square
  const inverseIm = -scaledIm / square
  const pivotStart = k * size
  for (let row = k + 1; row < size; row++) {
    const start = row * size
    const entryRe = re[start + k]!
    const entryIm = im[start + k]!
    if (entryRe === 0 && entryIm === 0) continue
    const factorRe = entryRe * inverseRe - entryIm * inverseIm
    const factorIm = entryRe * inverseIm + entryIm * inverseRe
    re[start + k] = factorRe
    im[start + k] = factorIm
    for (let column = k + 1; column < size; column++) {
      const aboveRe = re[pivotStart + column]!
      const aboveIm = im[pivotStart + column]!
      if (aboveRe === 0 && aboveIm === 0) continue
      re[start + column] = re[start + column]! - (factorRe * aboveRe - factorIm * aboveIm)
      im[start + column] = im[start + column]! - (factorRe * aboveIm + factorIm * aboveRe)
    }
  }
}
