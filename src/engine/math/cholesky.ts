/** Real symmetric positive definite systems, row-major: soil and line potential matrices are of this kind. */
import { invariant } from '../units/invariant'

export interface Cholesky {
  readonly size: number
  solve(right: Float64Array): Float64Array
}

/** Throws when the matrix is not positive definite: for the matrices that we build that is our mistake. */
export function factorCholesky(matrix: Float64Array, size: number): Cholesky {
  const lower = matrix.slice()
  for (let row = 0; row < size; row++) {
    for (let column = 0; column <= row; column++) {
      let sum = lower[row * size + column]!
      for (let k = 0; k < column; k++) sum -= lower[row * size + k]! * lower[column * size + k]!
      if (column < row) {
        lower[row * size + column] = sum / lower[column * size + column]!
      } else {
        invariant(sum > 0, 'a positive definite matrix', `pivot ${sum} in row ${row}`)
        lower[row * size + row] = Math.sqrt(sum)
      }
    }
  }
  return { size, solve: (right) => solveLower(lower, size, right) }
}

function solveLower(lower: Float64Array, size: number, right: Float64Array): Float64Array {
  const x = right.slice()
  for (let row = 0; row < size; row++) {
    let sum = x[row]!
    for (let k = 0; k < row; k++) sum -= lower[row * size + k]! * x[k]!
    x[row] = sum / lower[row * size + row]!
  }
  for (let row = size - 1; row >= 0; row--) {
    let sum = x[row]!
    for (let k = row + 1; k < size; k++) sum -= lower[k * size + row]! * x[k]!
    x[row] = sum / lower[row * size + row]!
  }
  return x
}

/** Inverse, made exactly symmetric. */
export function invertSymmetric(matrix: readonly (readonly number[])[]): number[][] {
  const size = matrix.length
  const flat = new Float64Array(size * size)
  matrix.forEach((row, i) =>
    row.forEach((entry, j) => {
      flat[i * size + j] = entry
    }),
  )
  const factored = factorCholesky(flat, size)
  const columns = matrix.map((_, j) => {
    const unit = new Float64Array(size)
    unit[j] = 1
    return factored.solve(unit)
  })
  return matrix.map((_, i) => matrix.map((__, j) => 0.5 * (columns[j]![i]! + columns[i]![j]!)))
}
