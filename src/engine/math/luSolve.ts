/** Forward and back substitution with the factors of a complex LU, for A and for its conjugate transpose. */
import type { SplitVector } from './splitMatrix'
import { splitVector } from './splitMatrix'

/** Part of a factor, row after row. */
export interface Triangle {
  readonly rowStart: Int32Array
  readonly column: Int32Array
  readonly re: Float64Array
  readonly im: Float64Array
}

/** P A = L U: rows of A in `order`, the ones on the diagonal of L left out. */
export interface Factors {
  readonly size: number
  readonly lower: Triangle
  /** Above the diagonal. */
  readonly upper: Triangle
  /** Diagonal of U. */
  readonly pivot: SplitVector
  readonly order: Int32Array
}

/** Solves A x = right. */
export function solveFactored({ size, lower, upper, pivot, order }: Factors, right: SplitVector): SplitVector {
  const x = splitVector(size)
  for (let row = 0; row < size; row++) {
    x.re[row] = right.re[order[row]!]!
    x.im[row] = right.im[order[row]!]!
    takeRow(lower, row, x)
  }
  for (let row = size - 1; row >= 0; row--) {
    takeRow(upper, row, x)
    divideInto(x, row, x.re[row]!, x.im[row]!, pivot.re[row]!, pivot.im[row]!)
  }
  return x
}

/** Takes what the row's entries bring from one element of x. */
function takeRow({ rowStart, column, re, im }: Triangle, row: number, x: SplitVector): void {
  const { re: xRes, im: xIms } = x
  const end = rowStart[row + 1]!
  let sumRe = xRes[row]!
  let sumIm = xIms[row]!
  for (let at = rowStart[row]!; at < end; at++) {
    const aRe = re[at]!
    const aIm = im[at]!
    const from = column[at]!
    const xRe = xRes[from]!
    const xIm = xIms[from]!
    sumRe -= aRe * xRe - aIm * xIm
    sumIm -= aRe * xIm + aIm * xRe
  }
  xRes[row] = sumRe
  xIms[row] = sumIm
}

/** Solves Aᴴ x = right. */
export function solveAdjoint({ size, lower, upper, pivot, order }: Factors, right: SplitVector): SplitVector {
  const y = { re: right.re.slice(), im: right.im.slice() }
  for (let row = 0; row < size; row++) {
    divideInto(y, row, y.re[row]!, y.im[row]!, pivot.re[row]!, -pivot.im[row]!)
    spreadRow(upper, row, y)
  }
  const x = splitVector(size)
  for (let row = size - 1; row >= 0; row--) {
    spreadRow(lower, row, y)
    x.re[order[row]!] = y.re[row]!
    x.im[order[row]!] = y.im[row]!
  }
  return x
}

/** Takes one element of y, by the conjugates of its row's entries, from those that they stand under. */
function spreadRow({ rowStart, column, re, im }: Triangle, row: number, y: SplitVector): void {
  const yRe = y.re[row]!
  const yIm = y.im[row]!
  for (let at = rowStart[row]!; at < rowStart[row + 1]!; at++) {
    const aRe = re[at]!
    const aIm = -im[at]!
    const to = column[at]!
    y.re[to] = y.re[to]! - (aRe * yRe - aIm * yIm)
    y.im[to] = y.im[to]! - (aRe * yIm + aIm * yRe)
  }
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
