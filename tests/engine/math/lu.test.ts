import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { factorLu } from '../../../src/engine/math/lu'
import type { SplitMatrix, SplitVector } from '../../../src/engine/math/splitMatrix'
import { splitMatrix, splitVector } from '../../../src/engine/math/splitMatrix'

function matrixOf(rows: readonly (readonly number[])[]): SplitMatrix {
  const matrix = splitMatrix(rows.length)
  for (const [i, row] of rows.entries()) for (const [j, entry] of row.entries()) matrix.re[i * rows.length + j] = entry
  return matrix
}

function times(matrix: SplitMatrix, x: SplitVector): SplitVector {
  const { size, re, im } = matrix
  const product = splitVector(size)
  for (let i = 0; i < size; i++) {
    for (let j = 0; j < size; j++) {
      const at = i * size + j
      product.re[i] = product.re[i]! + re[at]! * x.re[j]! - im[at]! * x.im[j]!
      product.im[i] = product.im[i]! + re[at]! * x.im[j]! + im[at]! * x.re[j]!
    }
  }
  return product
}

function hilbert(size: number): SplitMatrix {
  return matrixOf(Array.from({ length: size }, (_, i) => Array.from({ length: size }, (__, j) => 1 / (i + j + 1))))
}

describe('complex LU', () => {
  it('hand calculation: x + jy = 1, jx + y = j gives x = 1, y = 0', () => {
    const matrix = matrixOf([
      [1, 0],
      [0, 1],
    ])
    matrix.im[1] = 1
    matrix.im[2] = 1
    const right = splitVector(2)
    right.re[0] = 1
    right.im[1] = 1
    const x = factorLu(matrix).solve(right)
    expect([...x.re, ...x.im]).toEqual([1, 0, 0, 0])
  })

  it('condition of the Hilbert matrix: 28375 for n = 4, 943656 for n = 5 in the 1-norm (Higham 2002, section 28.1)', () => {
    expect(factorLu(hilbert(4)).reciprocalCondition * 28375).toBeCloseTo(1, 6)
    expect(factorLu(hilbert(5)).reciprocalCondition * 943656).toBeCloseTo(1, 6)
  })

  it('names the column of a matrix without inverse', () => {
    const lu = factorLu(
      matrixOf([
        [1, 2, 0],
        [2, 4, 0],
        [0, 0, 0],
      ]),
    )
    expect(lu.singularColumn).toBe(1)
    expect(lu.reciprocalCondition).toBe(0)
    expect(() => lu.solve(splitVector(3))).toThrow('factored')
  })

  it('gives back what was multiplied, for random matrices with rows of very different size', () => {
    const entry = fc.double({ min: -1, max: 1, noNaN: true })
    const cases = fc.integer({ min: 1, max: 9 }).chain((size) =>
      fc.record({
        size: fc.constant(size),
        entries: fc.array(entry, { minLength: 2 * size * size, maxLength: 2 * size * size }),
        x: fc.array(entry, { minLength: 2 * size, maxLength: 2 * size }),
      }),
    )
    fc.assert(
      fc.property(cases, ({ size, entries, x }) => {
        const matrix = splitMatrix(size)
        for (let k = 0; k < size * size; k++) {
          const factor = 10 ** (Math.floor(k / size) % 5)
          matrix.re[k] = entries[2 * k]! * factor
          matrix.im[k] = entries[2 * k + 1]! * factor
        }
        const lu = factorLu(matrix)
        fc.pre(lu.reciprocalCondition > 1e-9)
        const wanted = { re: Float64Array.from(x.slice(0, size)), im: Float64Array.from(x.slice(size)) }
        const got = lu.solve(times(matrix, wanted))
        for (let i = 0; i < size; i++) {
          expect(Math.abs(got.re[i]! - wanted.re[i]!)).toBeLessThan(1e-6)
          expect(Math.abs(got.im[i]! - wanted.im[i]!)).toBeLessThan(1e-6)
        }
      }),
    )
  })
})
