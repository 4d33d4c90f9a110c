/**
 * One right-hand side through the factored, equilibrated circuit, improved once if need be, checked by its backward error:
 * componentwise, |b - A x| / (|A||x| + |b|), of Oettli and Prager; in rows where everything is rounding noise (a dead
 * source seen from a port) the row's size times the largest unknown stands below instead (Arioli, Demmel and Duff 1989).
 */
import type { Lu } from '../../math/lu'
import type { SplitMatrix, SplitVector } from '../../math/splitMatrix'
import { splitVector } from '../../math/splitMatrix'
import type { Equilibrated } from './equilibrate'

/** A backward error of so few roundings cannot be improved; two solves out of three are there at once. */
const ROUNDING = 4e-15

export interface Checked {
  readonly x: SplitVector
  readonly residual: number
  /** Row with the largest residual. */
  readonly worstRow: number
}

export function solveChecked(equilibrated: Equilibrated, lu: Lu, right: SplitVector): Checked {
  const scaledRight = product(right, equilibrated.rowFactor)
  const x = lu.solve(scaledRight)
  const difference = splitVector(x.re.length)
  const first = residualOf(equilibrated.matrix, x, scaledRight, difference)
  if (first.residual <= ROUNDING) return { ...first, x: product(x, equilibrated.columnFactor, x) }
  const correction = lu.solve(difference)
  const improved = splitVector(x.re.length)
  for (let i = 0; i < x.re.length; i++) {
    improved.re[i] = x.re[i]! + correction.re[i]!
    improved.im[i] = x.im[i]! + correction.im[i]!
  }
  const second = residualOf(equilibrated.matrix, improved, scaledRight, difference)
  const isBetter = second.residual <= first.residual
  const { residual, worstRow } = isBetter ? second : first
  return { x: product(isBetter ? improved : x, equilibrated.columnFactor), residual, worstRow }
}

/** @param scaled where it is written; may be the vector itself */
function product(vector: SplitVector, factors: Float64Array, scaled = splitVector(factors.length)): SplitVector {
  for (let i = 0; i < factors.length; i++) {
    scaled.re[i] = vector.re[i]! * factors[i]!
    scaled.im[i] = vector.im[i]! * factors[i]!
  }
  return scaled
}

interface Residual {
  readonly residual: number
  readonly worstRow: number
}

/** @param difference where b - A x is written */
function residualOf(matrix: SplitMatrix, x: SplitVector, right: SplitVector, difference: SplitVector): Residual {
  const { size, rowStart, column, re, im } = matrix
  const largest = largestEntry(x)
  let residual = 0
  let worstRow = 0
  for (let row = 0; row < size; row++) {
    let leftRe = right.re[row]!
    let leftIm = right.im[row]!
    let reach = Math.abs(leftRe) + Math.abs(leftIm)
    let rowSize = 0
    for (let at = rowStart[row]!; at < rowStart[row + 1]!; at++) {
      const aRe = re[at]!
      const aIm = im[at]!
      const xRe = x.re[column[at]!]!
      const xIm = x.im[column[at]!]!
      leftRe -= aRe * xRe - aIm * xIm
      leftIm -= aRe * xIm + aIm * xRe
      const entry = Math.abs(aRe) + Math.abs(aIm)
      rowSize += entry
      reach += entry * (Math.abs(xRe) + Math.abs(xIm))
    }
    difference.re[row] = leftRe
    difference.im[row] = leftIm
    const isNoise = reach < NOISE * size * (rowSize * largest)
    const error = errorOf(Math.abs(leftRe) + Math.abs(leftIm), isNoise ? reach + rowSize * largest : reach)
    // once not a number, it stays so
    if (error > residual || Number.isNaN(error)) {
      residual = error
      worstRow = row
    }
  }
  return { residual, worstRow }
}

/** A thousand roundings per unknown. */
const NOISE = 1000 * 2.220446049250313e-16

function errorOf(left: number, below: number): number {
  return below === 0 ? 0 : left / below
}

function largestEntry(x: SplitVector): number {
  let largest = 0
  for (let i = 0; i < x.re.length; i++) largest = Math.max(largest, Math.abs(x.re[i]!) + Math.abs(x.im[i]!))
  return largest
}
