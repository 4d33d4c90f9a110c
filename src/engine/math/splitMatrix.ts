/**
 * Complex matrices and vectors as two arrays: what the solver works on. A matrix keeps only its entries, row after row
 * and by column within a row, because most of a circuit's matrix is nothing.
 */

export interface SplitMatrix {
  readonly size: number
  /** Where each row begins in the arrays below, and where the last one ends. */
  readonly rowStart: Int32Array
  readonly column: Int32Array
  readonly re: Float64Array
  readonly im: Float64Array
}

export interface SplitVector {
  readonly re: Float64Array
  readonly im: Float64Array
}

export function splitVector(size: number): SplitVector {
  return { re: new Float64Array(size), im: new Float64Array(size) }
}

/** What goes into a matrix, in any order; of one place it adds up in the order in which it came. */
export interface Entries {
  readonly row: number[]
  readonly column: number[]
  readonly re: number[]
  readonly im: number[]
}

export function noEntries(): Entries {
  return { row: [], column: [], re: [], im: [] }
}

export function addEntry(entries: Entries, row: number, column: number, re: number, im: number): void {
  entries.row.push(row)
  entries.column.push(column)
  entries.re.push(re)
  entries.im.push(im)
}

export function splitMatrix(size: number, entries: Entries): SplitMatrix {
  const count = entries.row.length
  const matrix = {
    size,
    rowStart: new Int32Array(size + 1),
    column: new Int32Array(count),
    re: new Float64Array(count),
    im: new Float64Array(count),
  }
  const { begin, order } = byRow(size, entries.row)
  // place of each column in the row that is being filled, counted from 1
  const placeOf = new Int32Array(size)
  let end = 0
  for (let row = 0; row < size; row++) {
    const start = end
    for (let i = begin[row]!; i < begin[row + 1]!; i++) {
      const from = order[i]!
      const column = entries.column[from]!
      if (placeOf[column] === 0) {
        matrix.column[end] = column
        placeOf[column] = ++end
      }
      const place = placeOf[column]! - 1
      matrix.re[place] = matrix.re[place]! + entries.re[from]!
      matrix.im[place] = matrix.im[place]! + entries.im[from]!
    }
    for (let place = start; place < end; place++) placeOf[matrix.column[place]!] = 0
    sortRow(matrix, start, end)
    matrix.rowStart[row + 1] = end
  }
  return matrix
}

/** Entries of one row beside each other, in the order in which they came. */
function byRow(size: number, rows: readonly number[]): { readonly begin: Int32Array; readonly order: Int32Array } {
  const begin = new Int32Array(size + 1)
  for (const row of rows) begin[row + 1] = begin[row + 1]! + 1
  for (let row = 0; row < size; row++) begin[row + 1] = begin[row + 1]! + begin[row]!
  const next = begin.slice()
  const order = new Int32Array(rows.length)
  for (let i = 0; i < rows.length; i++) {
    const row = rows[i]!
    order[next[row]!] = i
    next[row] = next[row]! + 1
  }
  return { begin, order }
}

/** By column, by insertion: a row has a handful of entries. */
function sortRow({ column, re, im }: Omit<SplitMatrix, 'size'>, start: number, end: number): void {
  for (let i = start + 1; i < end; i++) {
    const [atColumn, atRe, atIm] = [column[i]!, re[i]!, im[i]!]
    let j = i
    for (; j > start && column[j - 1]! > atColumn; j--) {
      column[j] = column[j - 1]!
      re[j] = re[j - 1]!
      im[j] = im[j - 1]!
    }
    column[j] = atColumn
    re[j] = atRe
    im[j] = atIm
  }
}
