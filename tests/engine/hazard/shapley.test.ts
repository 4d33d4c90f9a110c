/** Shapley's shares against published games and against the axioms that define them. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { shapley } from '../../../src/engine/hazard/shapley'
import '../../support/sameDraws'

const game = (count: number, worth: (set: readonly number[]) => number): Float64Array => {
  return Float64Array.from({ length: 2 ** count }, (_, set) => {
    return worth(Array.from({ length: count }, (__, i) => i).filter((i) => (set >> i) % 2 === 1))
  })
}

describe('published games', () => {
  it('gloves: one left and two right hands make one pair: 2/3, 1/6, 1/6 (textbook example)', () => {
    const pairs = game(3, (set) => (set.includes(0) && set.length > 1 ? 1 : 0))
    const shares = shapley(pairs)
    for (const [i, want] of [2 / 3, 1 / 6, 1 / 6].entries()) expect(shares[i]).toBeCloseTo(want, 14)
  })

  it('airport: runways of 8, 11, 13 and 18 cost 2, 3, 4 and 9 (S. C. Littlechild and G. Owen’s rule)', () => {
    // each metre is paid by those who need it: 8/4; + 3/3; + 2/2; + 5
    const needs = [8, 11, 13, 18]
    const shares = shapley(game(4, (set) => Math.max(0, ...set.map((i) => needs[i]!))))
    for (const [i, want] of [2, 3, 4, 9].entries()) expect(shares[i]).toBeCloseTo(want, 13)
  })

  it('voting with 4, 3, 2 and 1 votes, 6 carry: 5/12, 3/12, 3/12, 1/12 (Shapley and Shubik’s index by hand)', () => {
    const votes = [4, 3, 2, 1]
    const shares = shapley(game(4, (set) => (set.reduce((sum, i) => sum + votes[i]!, 0) >= 6 ? 1 : 0)))
    for (const [i, want] of [5, 3, 3, 1].entries()) expect(shares[i]).toBeCloseTo(want / 12, 14)
  })

  it('nothing to divide among, and one thing alone', () => {
    expect([...shapley(Float64Array.of(0))]).toEqual([])
    expect([...shapley(Float64Array.of(0, 7))]).toEqual([7])
    expect(() => shapley(Float64Array.of(0, 1, 2))).toThrow(/sets/)
  })
})

describe('axioms, on random games of up to six things', () => {
  const worths = fc
    .integer({ min: 1, max: 6 })
    .chain((count) =>
      fc
        .array(fc.double({ min: -1e3, max: 1e3, noNaN: true }), { minLength: 2 ** count, maxLength: 2 ** count })
        .map((values) => ({ count, worth: Float64Array.from(values, (it, i) => (i === 0 ? 0 : it)) })),
    )
  const sum = (values: Float64Array): number => values.reduce((total, it) => total + it, 0)

  it('efficiency: the shares sum to the worth of all', () => {
    fc.assert(fc.property(worths, ({ worth }) => Math.abs(sum(shapley(worth)) - worth[worth.length - 1]!) < 1e-9))
  })

  it('symmetry: things that change places change shares', () => {
    fc.assert(
      fc.property(worths, ({ count, worth }) => {
        const swapped = (set: number): number => {
          const [first, last] = [set & 1, (set >> (count - 1)) & 1]
          return count === 1 || first === last ? set : set ^ 1 ^ (1 << (count - 1))
        }
        const before = shapley(worth)
        const after = shapley(worth.map((_, set) => worth[swapped(set)]!))
        expect(after[0]).toBeCloseTo(before[count - 1]!, 9)
        expect(after[count - 1]).toBeCloseTo(before[0]!, 9)
      }),
    )
  })

  it('dummy: what adds nothing to any set gets nothing, exactly', () => {
    fc.assert(
      fc.property(worths, ({ count, worth }) => {
        const withDummy = Float64Array.from({ length: 2 * worth.length }, (_, set) => worth[set % worth.length]!)
        const shares = shapley(withDummy)
        expect(shares[count]).toBe(0)
        shapley(worth).forEach((share, i) => expect(shares[i]).toBeCloseTo(share, 9))
      }),
    )
  })

  it('additivity: the shares of a sum of games are the sum of the shares', () => {
    fc.assert(
      fc.property(worths, fc.double({ min: -5, max: 5, noNaN: true }), ({ worth }, factor) => {
        const other = worth.map((it, set) => factor * it * (set % 3))
        const both = shapley(worth.map((it, set) => it + other[set]!))
        const [one, two] = [shapley(worth), shapley(other)]
        both.forEach((share, i) => expect(share).toBeCloseTo(one[i]! + two[i]!, 6))
      }),
    )
  })
})
