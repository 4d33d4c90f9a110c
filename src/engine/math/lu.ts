/**
 * Complex LU with partial pivoting: factor once, solve many right-hand sides. Rows are pivoted by |re| + |im|; ties take
 * the first row, so equal input gives equal bits. The elimination runs on a full square, in which a zero costs a look
 * and no more; the factors keep their entries only.
 */
import { invariant } from '../units/invariant'
import { complex, divide, multiply, subtract, ZERO } from './complex'
import type { Factors, Triangle } from './luSolve'
import { solveFactored } from './luSolve'
import { estimateCondition, largestIndex } from './reciprocalCondition'
import type { SplitMatrix, SplitVector } from './splitMatrix'
import { splitVector } from './splitMatrix'

export interface Lu {
  readonly size: number
  /** First column without a usable pivot, or -1. With one, solve must not be called. */
  readonly singularColumn: number
  /** Where a singular or nearly singular matrix is weakest: the unknown that can change most and be noticed least. */
  readonly weakestColumn: number
  /** Estimate of 1 / (‖A‖₁ ‖A⁻¹‖₁); 0 when singular. */
  readonly reciprocalCondition: number
  solve(right: SplitVector): SplitVector
}

export function factorLu(matrix: SplitMatrix): Lu {
  const { size } = matrix
  const square = spreadOut(matrix)
  const pattern: Pattern = { upperStart: new Int32Array(size + 1), upperColumn: [], lowerRow: [], lowerColumn: [] }
  const singularColumn = eliminate(square, pattern)
  const factors = singularColumn >= 0 ? undefined : gathered(square, pattern)
  const condition = factors && estimateCondition(matrix, factors)
  return {
    size,
    singularColumn,
    weakestColumn: condition?.weakestColumn ?? largestIndex(sentToNothing(square, pattern, singularColumn)),
    reciprocalCondition: condition?.reciprocal ?? 0,
    solve: (right) => {
      invariant(factors !== undefined, 'a matrix that was factored', `singular column ${singularColumn}`)
      invariant(right.re.length === size, `a right-hand side of ${size}`, right.re.length)
      return solveFactored(factors, right)
    },
  }
}

/** All places of a matrix, the rows where they were and `order` telling in which order they are taken. */
interface Square {
  readonly size: number
  readonly re: Float64Array
  readonly im: Float64Array
  readonly order: Int32Array
}

/** Where the factors have anything, noted in the order in which it is met. */
interface Pattern {
  /** Of U by row, its diagonal left out. */
  readonly upperStart: Int32Array
  readonly upperColumn: number[]
  /** Of L by column: the row of A, and the column. */
  readonly lowerRow: number[]
  readonly lowerColumn: number[]
}

function spreadOut({ size, rowStart, column, re, im }: SplitMatrix): Square {
  const square = {
    size,
    re: new Float64Array(size * size),
    im: new Float64Array(size * size),
    order: Int32Array.from({ length: size }, (_, row) => row),
  }
  for (let row = 0; row < size; row++) {
    for (let at = rowStart[row]!; at < rowStart[row + 1]!; at++) {
      square.re[row * size + column[at]!] = re[at]!
      square.im[row * size + column[at]!] = im[at]!
    }
  }
  return square
}

/** What a matrix without a pivot in column `k` turns into nothing, by back substitution above it. */
function sentToNothing({ size, re, im, order }: Square, pattern: Pattern, k: number): SplitVector {
  const x = splitVector(size)
  x.re[k] = 1
  for (let row = k - 1; row >= 0; row--) {
    const start = order[row]! * size
    let sum = ZERO
    for (let at = pattern.upperStart[row]!; at < pattern.upperStart[row + 1]!; at++) {
      const column = pattern.upperColumn[at]!
      const entry = complex(re[start + column]!, im[start + column]!)
      sum = subtract(sum, multiply(entry, complex(x.re[column]!, x.im[column]!)))
    }
    const part = divide(sum, complex(re[start + row]!, im[start + row]!))
    x.re[row] = part.re
    x.im[row] = part.im
  }
  return x
}

/** @returns the first column without a usable pivot, or -1 */
function eliminate(square: Square, pattern: Pattern): number {
  const { size, re, im, order } = square
  for (let k = 0; k < size; k++) {
    const best = largestInColumn(square, k)
    const pivotRow = order[best]!
    const pivotAt = pivotRow * size + k
    if (!(Math.abs(re[pivotAt]!) + Math.abs(im[pivotAt]!) > 0)) return k
    order[best] = order[k]!
    order[k] = pivotRow
    noteUpper(square, k, pattern)
    eliminateBelow(square, k, pattern)
  }
  return -1
}

function largestInColumn({ size, re, im, order }: Square, k: number): number {
  let best = k
  let bestSize = -1
  for (let i = k; i < size; i++) {
    const at = order[i]! * size + k
    const entry = Math.abs(re[at]!) + Math.abs(im[at]!)
    if (entry > bestSize) {
      best = i
      bestSize = entry
    }
  }
  return best
}

/** The columns right of `k` in which the pivot row has anything. */
function noteUpper({ size, re, im, order }: Square, k: number, { upperStart, upperColumn }: Pattern): void {
  const start = order[k]! * size
  for (let column = k + 1; column < size; column++) {
    if (re[start + column] !== 0 || im[start + column] !== 0) upperColumn.push(column)
  }
  upperStart[k + 1] = upperColumn.length
}

function eliminateBelow({ size, re, im, order }: Square, k: number, pattern: Pattern): void {
  const { upperStart, upperColumn, lowerRow, lowerColumn } = pattern
  const pivotStart = order[k]! * size
  const inverse = inverseOf(re[pivotStart + k]!, im[pivotStart + k]!)
  const from = upperStart[k]!
  const to = upperStart[k + 1]!
  // a full row needs no list of its columns
  const isFull = to - from === size - k - 1
  for (let i = k + 1; i < size; i++) {
    const start = order[i]! * size
    const entryRe = re[start + k]!
    const entryIm = im[start + k]!
    if (entryRe === 0 && entryIm === 0) continue
    const factorRe = entryRe * inverse.re - entryIm * inverse.im
    const factorIm = entryRe * inverse.im + entryIm * inverse.re
    re[start + k] = factorRe
    im[start + k] = factorIm
    lowerRow.push(order[i]!)
    lowerColumn.push(k)
    for (let at = from; at < to; at++) {
      const column = isFull ? k + 1 + at - from : upperColumn[at]!
      const aboveRe = re[pivotStart + column]!
      const aboveIm = im[pivotStart + column]!
      re[start + column] = re[start + column]! - (factorRe * aboveRe - factorIm * aboveIm)
      im[start + column] = im[start + column]! - (factorRe * aboveIm + factorIm * aboveRe)
    }
  }
}

function inverseOf(re: number, im: number): { readonly re: number; readonly im: number } {
  const largest = Math.max(Math.abs(re), Math.abs(im))
  const scaledRe = re / largest
  const scaledIm = im / largest
  const square = (scaledRe * scaledRe + scaledIm * scaledIm) * largest
  return { re: scaledRe / square, im: -scaledIm / square }
}

function gathered(square: Square, pattern: Pattern): Factors {
  const { size, re, im, order } = square
  const pivot = splitVector(size)
  for (let k = 0; k < size; k++) {
    pivot.re[k] = re[order[k]! * size + k]!
    pivot.im[k] = im[order[k]! * size + k]!
  }
  return { size, order, pivot, lower: gatherLower(square, pattern), upper: gatherUpper(square, pattern) }
}

function gatherUpper({ size, re, im, order }: Square, { upperStart, upperColumn }: Pattern): Triangle {
  const upper = emptyTriangle(upperStart, upperColumn.length)
  for (let row = 0; row < size; row++) {
    for (let at = upperStart[row]!; at < upperStart[row + 1]!; at++) {
      const column = upperColumn[at]!
      upper.column[at] = column
      upper.re[at] = re[order[row]! * size + column]!
      upper.im[at] = im[order[row]! * size + column]!
    }
  }
  return upper
}

/** From columns to rows: those of one row stay in the order of their columns. */
function gatherLower({ size, re, im, order }: Square, { lowerRow, lowerColumn }: Pattern): Triangle {
  const placeOfRow = new Int32Array(size)
  for (let place = 0; place < size; place++) placeOfRow[order[place]!] = place
  const rowStart = new Int32Array(size + 1)
  for (const row of lowerRow) {
    const place = placeOfRow[row]!
    rowStart[place + 1] = rowStart[place + 1]! + 1
  }
  for (let place = 0; place < size; place++) rowStart[place + 1] = rowStart[place + 1]! + rowStart[place]!
  const lower = emptyTriangle(rowStart, lowerRow.length)
  const next = rowStart.slice()
  for (let i = 0; i < lowerRow.length; i++) {
    const row = lowerRow[i]!
    const column = lowerColumn[i]!
    const at = next[placeOfRow[row]!]!
    next[placeOfRow[row]!] = at + 1
    lower.column[at] = column
    lower.re[at] = re[row * size + column]!
    lower.im[at] = im[row * size + column]!
  }
  return lower
}

function emptyTriangle(rowStart: Int32Array, count: number): Triangle {
  return { rowStart, column: new Int32Array(count), re: new Float64Array(count), im: new Float64Array(count) }
}
