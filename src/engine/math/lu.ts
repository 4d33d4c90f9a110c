/**
 * Dense complex LU with partial pivoting on split row-major arrays: factor once, solve many right-hand sides.
 * Rows are pivoted by |re| + |im|; ties take the first row, so equal input gives equal bits.
 * Reciprocal condition: 1-norm estimate of Higham (1988), Algorithm 4.1 in a plain form.
 */
import { invariant } from '../units/invariant'

export interface SplitMatrix {
  readonly size: number
  readonly re: Float64Array
  readonly im: Float64Array
}

export interface SplitVector {
  readonly re: Float64Array
  readonly im: Float64Array
}

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

export function splitMatrix(size: number): SplitMatrix {
  return { size, re: new Float64Array(size * size), im: new Float64Array(size * size) }
}

export function splitVector(size: number): SplitVector {
  return { re: new Float64Array(size), im: new Float64Array(size) }
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

interface Factors {
  readonly size: number
  readonly re: Float64Array
  readonly im: Float64Array
  readonly order: Int32Array
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

function solveFactored(factors: Factors, right: SplitVector): SplitVector {
  const { size, re, im, order } = factors
  const x = splitVector(size)
  for (let row = 0; row < size; row++) {
    let sumRe = right.re[order[row]!]!
    let sumIm = right.im[order[row]!]!
    const start = row * size
    for (let column = 0; column < row; column++) {
      const aRe = re[start + column]!
      const aIm = im[start + column]!
      sumRe -= aRe * x.re[column]! - aIm * x.im[column]!
      sumIm -= aRe * x.im[column]! + aIm * x.re[column]!
    }
    x.re[row] = sumRe
    x.im[row] = sumIm
  }
  for (let row = size - 1; row >= 0; row--) {
    let sumRe = x.re[row]!
    let sumIm = x.im[row]!
    const start = row * size
    for (let column = row + 1; column < size; column++) {
      const aRe = re[start + column]!
      const aIm = im[start + column]!
      sumRe -= aRe * x.re[column]! - aIm * x.im[column]!
      sumIm -= aRe * x.im[column]! + aIm * x.re[column]!
    }
    divideInto(x, row, sumRe, sumIm, re[start + row]!, im[start + row]!)
  }
  return x
}

/** Solves Aᴴ x = right, for the condition estimate only. */
function solveAdjoint(factors: Factors, right: SplitVector): SplitVector {
  const { size, re, im, order } = factors
  const y = splitVector(size)
  for (let row = 0; row < size; row++) {
    let sumRe = right.re[row]!
    let sumIm = right.im[row]!
    for (let above = 0; above < row; above++) {
      const aRe = re[above * size + row]!
      const aIm = -im[above * size + row]!
      sumRe -= aRe * y.re[above]! - aIm * y.im[above]!
      sumIm -= aRe * y.im[above]! + aIm * y.re[above]!
    }
    divideInto(y, row, sumRe, sumIm, re[row * size + row]!, -im[row * size + row]!)
  }
  const x = splitVector(size)
  for (let row = size - 1; row >= 0; row--) {
    let sumRe = y.re[row]!
    let sumIm = y.im[row]!
    for (let below = row + 1; below < size; below++) {
      const aRe = re[below * size + row]!
      const aIm = -im[below * size + row]!
      sumRe -= aRe * y.re[below]! - aIm * y.im[below]!
      sumIm -= aRe * y.im[below]! + aIm * y.re[below]!
    }
    y.re[row] = sumRe
    y.im[row] = sumIm
    x.re[order[row]!] = sumRe
    x.im[order[row]!] = sumIm
  }
  return x
}

function divideInto(x: SplitVector, at: number, aRe: number, aIm: number, bRe: number, bIm: number): void {
  if (Math.abs(bRe) >= Math.abs(bIm)) {
    const ratio = bIm / bRe
    const size = bRe + bIm * ratio
    x.re[at] = (aRe + aIm * ratio) / size
    x.im[at] = (aIm - aRe * ratio) / size
  } else {
    const ratio = bRe / bIm
    const size = bRe * ratio + bIm
    x.re[at] = (aRe * ratio + aIm) / size
    x.im[at] = (aIm * ratio - aRe) / size
  }
}

function estimateReciprocalCondition(matrix: SplitMatrix, factors: Factors): number {
  const { size } = matrix
  if (size === 0) return 1
  const norm = oneNorm(matrix)
  const start = splitVector(size)
  start.re.fill(1 / size)
  let y = solveFactored(factors, start)
  let inverseNorm = sumOfSizes(y)
  let lastIndex = -1
  for (let pass = 0; pass < 5; pass++) {
    const z = solveAdjoint(factors, unitPhases(y))
    const index = largestIndex(z)
    if (index === lastIndex) break
    lastIndex = index
    const unit = splitVector(size)
    unit.re[index] = 1
    y = solveFactored(factors, unit)
    const next = sumOfSizes(y)
    if (!(next > inverseNorm)) break
    inverseNorm = next
  }
  const product = norm * inverseNorm
  return Number.isFinite(product) && product > 0 ? 1 / product : 0
}

function oneNorm(matrix: SplitMatrix): number {
  let norm = 0
  for (let column = 0; column < matrix.size; column++) {
    let sum = 0
    for (let row = 0; row < matrix.size; row++) sum += entrySize(matrix, row * matrix.size + column)
    norm = Math.max(norm, sum)
  }
  return norm
}

function entrySize(vector: SplitVector, at: number): number {
  return Math.sqrt(vector.re[at]! * vector.re[at]! + vector.im[at]! * vector.im[at]!)
}

function sumOfSizes(vector: SplitVector): number {
  let sum = 0
  for (let i = 0; i < vector.re.length; i++) sum += entrySize(vector, i)
  return sum
}

function unitPhases(vector: SplitVector): SplitVector {
  const phases = splitVector(vector.re.length)
  for (let i = 0; i < vector.re.length; i++) {
    const size = entrySize(vector, i)
    phases.re[i] = size > 0 ? vector.re[i]! / size : 1
    phases.im[i] = size > 0 ? vector.im[i]! / size : 0
  }
  return phases
}

function largestIndex(vector: SplitVector): number {
  let best = 0
  for (let i = 1; i < vector.re.length; i++) if (entrySize(vector, i) > entrySize(vector, best)) best = i
  return best
}
