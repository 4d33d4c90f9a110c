/**
 * Row and column scaling by powers of two (exact in floating point), so that 2000 S, 1 and 5 nS in one matrix say
 * nothing about its condition: each row, then each column, divided by its largest entry. No second pass is needed: what
 * is largest in its row stays so, because no column is made smaller.
 */
import type { SplitMatrix } from '../../math/splitMatrix'

export interface Equilibrated {
  readonly matrix: SplitMatrix
  readonly rowFactor: Float64Array
  readonly columnFactor: Float64Array
}

export function equilibrate(matrix: SplitMatrix): Equilibrated {
  const { size, rowStart, column } = matrix
  const re = matrix.re.slice()
  const im = matrix.im.slice()
  const count = rowStart[size]!
  const rowFactor = scaleLines(count, rowsOf(matrix), re, im, size)
  const columnFactor = scaleLines(count, column, re, im, size)
  return { matrix: { size, rowStart, column, re, im }, rowFactor, columnFactor }
}

function rowsOf({ size, rowStart, column }: SplitMatrix): Int32Array {
  const rowOf = new Int32Array(column.length)
  for (let row = 0; row < size; row++) rowOf.fill(row, rowStart[row]!, rowStart[row + 1]!)
  return rowOf
}

/**
 * @param lineOf the row, or the column, of each entry
 * @returns the factor of each line
 */
function scaleLines(count: number, lineOf: Int32Array, re: Float64Array, im: Float64Array, size: number): Float64Array {
  const factors = new Float64Array(size)
  for (let at = 0; at < count; at++) {
    const line = lineOf[at]!
    factors[line] = Math.max(factors[line]!, Math.abs(re[at]!), Math.abs(im[at]!))
  }
  for (let line = 0; line < size; line++) {
    factors[line] = factors[line] === 0 ? 1 : 1 / powerOfTwoBelow(factors[line]!)
  }
  for (let at = 0; at < count; at++) {
    const factor = factors[lineOf[at]!]!
    re[at] = re[at]! * factor
    im[at] = im[at]! * factor
  }
  return factors
}

/** Beyond it the reciprocal leaves the range of numbers. */
const SMALLEST_POWER = 2.2250738585072014e-308

/** Largest power of two not above a positive value, as long as it has a reciprocal; no value here comes near the largest. */
function powerOfTwoBelow(value: number): number {
  let power = 1
  while (power > value && power > SMALLEST_POWER) power *= 0.5
  while (power * 2 <= value) power *= 2
  return power
}
