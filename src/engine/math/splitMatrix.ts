/** Complex matrices and vectors as two arrays, row-major: what the solver works on. */

export interface SplitMatrix {
  readonly size: number
  readonly re: Float64Array
  readonly im: Float64Array
}

export interface SplitVector {
  readonly re: Float64Array
  readonly im: Float64Array
}

export function splitMatrix(size: number): SplitMatrix {
  return { size, re: new Float64Array(size * size), im: new Float64Array(size * size) }
}

export function splitVector(size: number): SplitVector {
  return { re: new Float64Array(size), im: new Float64Array(size) }
}
