import { describe, expect, it } from 'vitest'
import { factorCholesky, invertSymmetric } from '../../../src/engine/math/cholesky'

describe('positive definite systems', () => {
  it('inverse of the 3 by 3 Hilbert matrix has whole numbers (Higham 2002, section 28.1)', () => {
    const inverse = invertSymmetric([
      [1, 1 / 2, 1 / 3],
      [1 / 2, 1 / 3, 1 / 4],
      [1 / 3, 1 / 4, 1 / 5],
    ])
    const wanted = [
      [9, -36, 30],
      [-36, 192, -180],
      [30, -180, 180],
    ]
    for (const [i, row] of wanted.entries()) {
      for (const [j, entry] of row.entries()) expect(inverse[i]![j]!).toBeCloseTo(entry, 9)
    }
    expect(inverse[0]![1]).toBe(inverse[1]![0])
  })

  it('refuses a matrix that is not positive definite', () => {
    expect(() => factorCholesky(Float64Array.of(1, 2, 2, 1), 2)).toThrow('positive definite')
  })
})
