// Scaling that must not cost a digit: by powers of two alone, so that each entry can be had back to the bit (Higham,
// Accuracy and Stability of Numerical Algorithms, section 9.8, from memory; the figures are worked by hand).

import { describe, expect, it } from 'vitest'
import type { SplitMatrix } from '../../../../src/engine/math/splitMatrix'
import { equilibrate } from '../../../../src/engine/physics/network/equilibrate'
import { square, type Entry } from './square'

/** Every power of two that is a normal number. */
const powers = new Set(Array.from({ length: 2046 }, (_, k) => 2 ** (k - 1022)))

function rowsOf({ size, rowStart }: SplitMatrix): readonly number[] {
  return Array.from({ length: size }, (_, row) => Array<number>(rowStart[row + 1]! - rowStart[row]!).fill(row)).flat()
}

describe('rows and columns brought to a size', () => {
  // a clamp of 0.5 mΩ, its own current, a leakage of 5 nS: what one matrix of a site has beside each other
  const entries: readonly Entry[] = [
    [0, 0, 2000, 0],
    [0, 1, 1, 0],
    [1, 0, 1, 0],
    [1, 1, 0, 5e-9],
  ]

  it('by hand: row 0 by 2⁻¹⁰, then column 1 by 2¹⁰', () => {
    const { matrix, rowFactor, columnFactor } = equilibrate(square(2, entries))
    expect([...rowFactor]).toEqual([1 / 1024, 1])
    expect([...columnFactor]).toEqual([1, 1024])
    expect([...matrix.re]).toEqual([2000 / 1024, 1, 1, 0])
    expect([...matrix.im]).toEqual([0, 0, 0, 5e-9 * 1024])
  })

  it('every row and column ends with a largest part from 1 to below 2, by powers of two, each entry as it was', () => {
    const given = square(3, [
      [0, 0, 3e-7, -8e-3],
      [0, 2, 0, 4096],
      [1, 1, -1e-12, 2e-12],
      [1, 2, -7e-15, 0],
      [2, 0, -1e9, 5],
      [2, 1, 0.3, -0.1],
    ])
    const before = [[...given.re], [...given.im]]
    const { matrix, rowFactor, columnFactor } = equilibrate(given)
    // the matrix that was given stays as it was
    expect([[...given.re], [...given.im]]).toEqual(before)
    for (const factor of [...rowFactor, ...columnFactor]) expect(powers).toContain(factor)
    const rows = rowsOf(matrix)
    rows.forEach((row, at) => {
      const factor = rowFactor[row]! * columnFactor[matrix.column[at]!]!
      expect([matrix.re[at], matrix.im[at]]).toEqual([given.re[at]! * factor, given.im[at]! * factor])
    })
    for (const lineOf of [rows, [...matrix.column]]) {
      for (const line of [0, 1, 2]) {
        const parts = lineOf.flatMap((it, at) => (it === line ? [matrix.re[at]!, matrix.im[at]!] : []))
        const largest = Math.max(...parts.map(Math.abs))
        expect(largest).toBeGreaterThanOrEqual(1)
        expect(largest).toBeLessThan(2)
      }
    }
  })

  it.each([
    [1, 1],
    [1.99, 1],
    [2, 1 / 2],
    [3, 1 / 2],
    [4, 1 / 4],
    [0.75, 2],
    [0.5, 2],
    [0.49, 4],
  ])('%d alone is divided by the largest power of two not above it', (value, factor) => {
    expect([...equilibrate(square(1, [[0, 0, value, 0]])).rowFactor]).toEqual([factor])
    expect([...equilibrate(square(1, [[0, 0, 0, -value]])).rowFactor]).toEqual([factor])
  })

  it('the least number there is, 2⁻¹⁰⁷⁴, is raised as far as a factor with a reciprocal goes: 2¹⁰²²', () => {
    expect([...equilibrate(square(1, [[0, 0, 5e-324, 0]])).rowFactor]).toEqual([2 ** 1022])
  })

  it('a row and a column of nothing stay nothing', () => {
    const { matrix, rowFactor, columnFactor } = equilibrate(
      square(2, [
        [0, 0, 0, 0],
        [1, 1, 8, 0],
      ]),
    )
    expect([...rowFactor]).toEqual([1, 1 / 8])
    expect([...columnFactor]).toEqual([1, 1])
    expect([...matrix.re]).toEqual([0, 1])
  })
})
