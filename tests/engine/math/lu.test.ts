import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { complex, type Complex } from '../../../src/engine/math/complex'
import { factorLu } from '../../../src/engine/math/lu'
import { splitVector } from '../../../src/engine/math/splitMatrix'
import { complexMatrix, conditionByInverse, realMatrix, times } from './matrices'

function hilbert(size: number): number[][] {
  return Array.from({ length: size }, (_, i) => Array.from({ length: size }, (__, j) => 1 / (i + j + 1)))
}

// whole thousandths: random doubles would mostly be next to nothing
const entry = fc.integer({ min: -1000, max: 1000 }).map((it) => it / 1000)

/** Square, some of it nothing, its rows of very different size. */
function squares(most: number, emptyInTen: number, decades: number): fc.Arbitrary<readonly (readonly Complex[])[]> {
  const place = fc
    .record({ re: entry, im: entry, dice: fc.integer({ min: 0, max: 9 }) })
    .map(({ re, im, dice }) => (dice < emptyInTen ? complex(0) : complex(re, im)))
  return fc.integer({ min: 1, max: most }).chain((size) => {
    const rows = fc.array(fc.array(place, { minLength: size, maxLength: size }), { minLength: size, maxLength: size })
    return rows.map((all) =>
      all.map((row, i) => row.map(({ re, im }) => complex(re * 10 ** (i % decades), im * 10 ** (i % decades)))),
    )
  })
}

describe('complex LU', () => {
  it('hand calculation: x + jy = 1, jx + y = j gives x = 1, y = 0', () => {
    const right = splitVector(2)
    right.re[0] = 1
    right.im[1] = 1
    const x = factorLu(
      complexMatrix([
        [complex(1), complex(0, 1)],
        [complex(0, 1), complex(1)],
      ]),
    ).solve(right)
    expect([...x.re, ...x.im]).toEqual([1, 0, 0, 0])
  })

  it('names the column of a matrix without inverse', () => {
    const lu = factorLu(
      realMatrix([
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
    const cases = fc.record({
      rows: squares(9, 2, 5),
      parts: fc.array(entry, { minLength: 18, maxLength: 18 }),
    })
    fc.assert(
      fc.property(cases, ({ rows, parts }) => {
        const lu = factorLu(complexMatrix(rows))
        fc.pre(lu.reciprocalCondition > 1e-9)
        const size = rows.length
        const wanted = { re: Float64Array.from(parts.slice(0, size)), im: Float64Array.from(parts.slice(9, 9 + size)) }
        const got = lu.solve(times(rows, wanted))
        for (let i = 0; i < size; i++) {
          expect(Math.abs(got.re[i]! - wanted.re[i]!)).toBeLessThan(1e-6)
          expect(Math.abs(got.im[i]! - wanted.im[i]!)).toBeLessThan(1e-6)
        }
      }),
    )
  })
})

describe('reciprocal condition', () => {
  it('of the Hilbert matrix: 28375 for n = 4, 943656 for n = 5 in the 1-norm (Higham 2002, section 28.1)', () => {
    expect(factorLu(realMatrix(hilbert(4))).reciprocalCondition * 28375).toBeCloseTo(1, 6)
    expect(factorLu(realMatrix(hilbert(5))).reciprocalCondition * 943656).toBeCloseTo(1, 6)
  })

  it('of Kahan’s triangle, which hides its condition from its pivots (Higham 2002, section 8.3), by its inverse', () => {
    const [c, s] = [0.6, 0.8]
    const rows = Array.from({ length: 30 }, (_, i) =>
      Array.from({ length: 30 }, (__, j) => complex(j < i ? 0 : s ** i * (i === j ? 1 : -c))),
    )
    const lu = factorLu(complexMatrix(rows))
    const smallest = s ** 29
    expect(1 / lu.reciprocalCondition).toBeGreaterThan(1000 / smallest)
    expect(lu.reciprocalCondition * conditionByInverse(rows, lu)).toBeCloseTo(1, 6)
  })

  // Hager’s and Higham’s estimate is a lower bound of the condition, in practice within a factor of 3 (Higham 2002, 15.3)
  it('is never below what the whole inverse gives, and at most ten times as much', () => {
    const small = fc.constantFrom(0, 3, 6).chain((emptyInTen) => squares(12, emptyInTen, 4))
    let factored = 0
    fc.assert(
      fc.property(small, (rows) => {
        const lu = factorLu(complexMatrix(rows))
        if (lu.singularColumn >= 0 || lu.reciprocalCondition < 1e-12) return
        factored++
        const share = lu.reciprocalCondition * conditionByInverse(rows, lu)
        expect(share).toBeGreaterThan(1 - 1e-6)
        expect(share).toBeLessThan(10)
      }),
      { numRuns: 1000 },
    )
    expect(factored).toBeGreaterThan(600)
  })
})
