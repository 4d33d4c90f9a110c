/** Reciprocal condition in the 1-norm, estimated by Higham 1988 (algorithm 4.1 in a plain form) from a few solves. */
import type { Factors } from './luSolve'
import { solveAdjoint, solveFactored } from './luSolve'
import type { SplitMatrix, SplitVector } from './splitMatrix'
import { splitVector } from './splitMatrix'

/** An estimate of 1 / (‖A‖₁ ‖A⁻¹‖₁), never below it; 0 when it leaves the range of numbers. */
export function estimateReciprocalCondition(matrix: SplitMatrix, factors: Factors): number {
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
