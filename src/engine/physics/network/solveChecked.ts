/**
 * One right-hand side through the factored circuit, improved once, then checked: componentwise backward error of
 * Oettli and Prager, max |b - A x| / (|A||x| + |b|). That measure does not care about units or scales.
 */
import type { Lu, SplitMatrix, SplitVector } from '../../math/lu'
import { splitVector } from '../../math/lu'
import type { Equilibrated } from './equilibrate'

export interface Checked {
  readonly x: SplitVector
  readonly residual: number
  /** Row with the largest residual. */
  readonly worstRow: number
}

export function solveChecked(matrix: SplitMatrix, equilibrated: Equilibrated, lu: Lu, right: SplitVector): Checked {
  const x = solveScaled(equilibrated, lu, right)
  const first = residualOf(matrix, x, right)
  const correction = solveScaled(equilibrated, lu, first.difference)
  const improved = splitVector(x.re.length)
  for (let i = 0; i < x.re.length; i++) {
    improved.re[i] = x.re[i]! + correction.re[i]!
    improved.im[i] = x.im[i]! + correction.im[i]!
  }
  const second = residualOf(matrix, improved, right)
  const isBetter = second.residual <= first.residual
  const kept = isBetter ? second : first
  return { x: isBetter ? improved : x, residual: kept.residual, worstRow: kept.worstRow }
}

function solveScaled(equilibrated: Equilibrated, lu: Lu, right: SplitVector): SplitVector {
  const { rowFactor, columnFactor } = equilibrated
  const scaled = splitVector(right.re.length)
  for (let i = 0; i < right.re.length; i++) {
    scaled.re[i] = right.re[i]! * rowFactor[i]!
    scaled.im[i] = right.im[i]! * rowFactor[i]!
  }
  const x = lu.solve(scaled)
  for (let i = 0; i < x.re.length; i++) {
    x.re[i] = x.re[i]! * columnFactor[i]!
    x.im[i] = x.im[i]! * columnFactor[i]!
  }
  return x
}

interface Residual {
  readonly difference: SplitVector
  readonly residual: number
  readonly worstRow: number
}

function residualOf(matrix: SplitMatrix, x: SplitVector, right: SplitVector): Residual {
  const { size, re, im } = matrix
  const difference = splitVector(size)
  let residual = 0
  let worstRow = 0
  for (let row = 0; row < size; row++) {
    let leftRe = right.re[row]!
    let leftIm = right.im[row]!
    let reach = Math.abs(leftRe) + Math.abs(leftIm)
    for (let column = 0, at = row * size; column < size; column++, at++) {
      const aRe = re[at]!
      const aIm = im[at]!
      if (aRe === 0 && aIm === 0) continue
      const xRe = x.re[column]!
      const xIm = x.im[column]!
      leftRe -= aRe * xRe - aIm * xIm
      leftIm -= aRe * xIm + aIm * xRe
      reach += (Math.abs(aRe) + Math.abs(aIm)) * (Math.abs(xRe) + Math.abs(xIm))
    }
    difference.re[row] = leftRe
    difference.im[row] = leftIm
    const error = reach === 0 ? 0 : (Math.abs(leftRe) + Math.abs(leftIm)) / reach
    if (!(error <= residual)) {
      residual = error
      worstRow = row
    }
  }
  return { difference, residual, worstRow }
}
