/**
 * Row and column scaling by powers of two (exact in floating point), so that 2000 S, 1 and 5 nS in one matrix say
 * nothing about its condition. Two passes of dividing each row, then each column, by its largest entry.
 */
import type { SplitMatrix } from '../../math/splitMatrix'

export interface Equilibrated {
  readonly matrix: SplitMatrix
  readonly rowFactor: Float64Array
  readonly columnFactor: Float64Array
}

export function equilibrate(matrix: SplitMatrix): Equilibrated {
  const { size } = matrix
  const scaled = { size, re: matrix.re.slice(), im: matrix.im.slice() }
  const rowFactor = new Float64Array(size).fill(1)
  const columnFactor = new Float64Array(size).fill(1)
  for (let pass = 0; pass < 2; pass++) {
    for (let row = 0; row < size; row++) scaleLine(scaled, row * size, 1, rowFactor, row)
    for (let column = 0; column < size; column++) scaleLine(scaled, column, size, columnFactor, column)
  }
  return { matrix: scaled, rowFactor, columnFactor }
}

function scaleLine(matrix: SplitMatrix, start: number, stride: number, factors: Float64Array, line: number): void {
  const { size, re, im } = matrix
  let largest = 0
  for (let i = 0, at = start; i < size; i++, at += stride) {
    largest = Math.max(largest, Math.abs(re[at]!), Math.abs(im[at]!))
  }
  if (largest === 0) return
  const factor = 1 / powerOfTwoBelow(largest)
  if (factor === 1) return
  for (let i = 0, at = start; i < size; i++, at += stride) {
    re[at] = re[at]! * factor
    im[at] = im[at]! * factor
  }
  factors[line] = factors[line]! * factor
}

/** Largest power of two not above a positive finite value. */
function powerOfTwoBelow(value: number): number {
  let power = 1
  while (power > value) power *= 0.5
  while (power * 2 <= value) power *= 2
  return power
}
