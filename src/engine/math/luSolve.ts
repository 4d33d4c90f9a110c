/** Forward and back substitution with the factors of a complex LU, for A and for its conjugate transpose. */
import type { SplitVector } from './splitMatrix'
import { splitVector } from './splitMatrix'

/** L below the diagonal (ones on it), U on and above, rows of A in `order`. */
export interface Factors {
  readonly size: number
  readonly re: Float64Array
  readonly im: Float64Array
  readonly order: Int32Array
}

/** Solves A x = right. */
export function solveFactored(factors: Factors, right: SplitVector): SplitVector {
  const { size, re, im, order } = factors
  const x = splitVector(size)
  for (let row = 0; row < size; row++) {
    let sumRe = right.re[order[row]!]!
    let sumIm = right.im[order[row]!]!
    const start = row * size
    for (let column = 0; column < row; column++) {
      const aRe = re[start + column]!
      const aIm = im[start + column]!
      if (aRe === 0 && aIm === 0) continue
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
      if (aRe === 0 && aIm === 0) continue
      sumRe -= aRe * x.re[column]! - aIm * x.im[column]!
      sumIm -= aRe * x.im[column]! + aIm * x.re[column]!
    }
    divideInto(x, row, sumRe, sumIm, re[start + row]!, im[start + row]!)
  }
  return x
}

/** Solves Aᴴ x = right. */
export function solveAdjoint(factors: Factors, right: SplitVector): SplitVector {
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
