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
  const { size, rowStart, column } = matrix
  const re = matrix.re.slice()
  const im = matrix.im.slice()
  const rowFactor = new Float64Array(size).fill(1)
  const columnFactor = new Float64Array(size).fill(1)
  const rowOf = rowsOf(matrix)
  for (let pass = 0; pass < 2; pass++) {
    scaleLines(rowStart[size]!, rowOf, re, im, rowFactor)
    scaleLines(rowStart[size]!, column, re, im, columnFactor)
  }
  return { matrix: { size, rowStart, column, re, im }, rowFactor, columnFactor }
}

function rowsOf({ size, rowStart, column }: SplitMatrix): Int32Array {
  const rowOf = new Int32Array(column.length)
  for (let row = 0; row < size; row++) rowOf.fill(row, rowStart[row]!, rowStart[row + 1]!)
  return rowOf
}

/** @param lineOf the row, or the column, of each entry */
function scaleLines(
  count: number,
  lineOf: Int32Array,
  re: Float64Array,
  im: Float64Array,
  factors: Float64Array,
): void {
  const scale = new Float64Array(factors.length)
  for (let at = 0; at < count; at++) {
    const line = lineOf[at]!
    scale[line] = Math.max(scale[line]!, Math.abs(re[at]!), Math.abs(im[at]!))
  }
  for (let line = 0; line < scale.length; line++) {
    scale[line] = scale[line] === 0 ? 1 : 1 / powerOfTwoBelow(scale[line]!)
    factors[line] = factors[line]! * scale[line]!
  }
  for (let at = 0; at < count; at++) {
    const factor = scale[lineOf[at]!]!
    re[at] = re[at]! * factor
    im[at] = im[at]! * factor
  }
}

/** Beyond these the reciprocal leaves the range of numbers. */
const SMALLEST_POWER = 2.2250738585072014e-308
const LARGEST_POWER = 8.98846567431158e307

/** Largest power of two not above a positive value, as long as it has a reciprocal. */
function powerOfTwoBelow(value: number): number {
  let power = 1
  while (power > value && power > SMALLEST_POWER) power *= 0.5
  while (power * 2 <= value && power < LARGEST_POWER) power *= 2
  return power
}
