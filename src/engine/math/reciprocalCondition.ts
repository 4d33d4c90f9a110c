/**
 * Reciprocal condition in the 1-norm, estimated from a few solves by Hager 1984 as Higham 1988 finished it (algorithm
 * 4.1): climb from the mean of all columns to the largest one, then try a vector that the climb is known to miss.
 */
import type { Factors } from './luSolve'
import { solveAdjoint, solveFactored } from './luSolve'
import type { SplitMatrix, SplitVector } from './splitMatrix'
import { splitVector } from './splitMatrix'

export interface Condition {
  /** An estimate of 1 / (‖A‖₁ ‖A⁻¹‖₁), never below it; 0 when it leaves the range of numbers. */
  readonly reciprocal: number
  /** The unknown that answers most to the right-hand side to which the matrix answers most. */
  readonly weakestColumn: number
}

export function estimateCondition(matrix: SplitMatrix, factors: Factors): Condition {
  const { size } = matrix
  if (size === 0) return { reciprocal: 1, weakestColumn: 0 }
  const start = splitVector(size)
  start.re.fill(1 / size)
  let y = solveFactored(factors, start)
  let inverseNorm = sumOfSizes(y)
  let lastIndex = -1
  for (let pass = 0; pass < 5; pass++) {
    const index = largestIndex(solveAdjoint(factors, unitPhases(y)))
    if (index === lastIndex) break
    lastIndex = index
    const unit = splitVector(size)
    unit.re[index] = 1
    const answer = solveFactored(factors, unit)
    const next = sumOfSizes(answer)
    if (!(next > inverseNorm)) break
    y = answer
    inverseNorm = next
  }
  const product = oneNorm(matrix) * Math.max(inverseNorm, alternating(factors))
  const reciprocal = Number.isFinite(product) && product > 0 ? 1 / product : 0
  return { reciprocal, weakestColumn: largestIndex(y) }
}

/** Higham's second look: 2 ‖A⁻¹b‖₁ / 3n with b = 1, -(1 + 1/(n - 1)), …, ±2, itself never above ‖A⁻¹‖₁. */
function alternating(factors: Factors): number {
  const { size } = factors
  const wave = splitVector(size)
  for (let i = 0; i < size; i++) wave.re[i] = (i % 2 === 0 ? 1 : -1) * (1 + (size > 1 ? i / (size - 1) : 0))
  return (2 * sumOfSizes(solveFactored(factors, wave))) / (3 * size)
}

function oneNorm(matrix: SplitMatrix): number {
  const sums = new Float64Array(matrix.size)
  for (let at = 0; at < matrix.rowStart[matrix.size]!; at++) {
    const column = matrix.column[at]!
    sums[column] = sums[column]! + entrySize(matrix, at)
  }
  return sums.reduce((largest, sum) => Math.max(largest, sum), 0)
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

export function largestIndex(vector: SplitVector): number {
  let best = 0
  for (let i = 1; i < vector.re.length; i++) if (entrySize(vector, i) > entrySize(vector, best)) best = i
  return best
}
