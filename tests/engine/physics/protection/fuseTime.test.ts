/** Expulsion fuses: the standard's points, the shape between them, what lies beyond. */
import { describe, expect, it } from 'vitest'
import { arcTime, fuseLinkTypes, fuseRatings, meltingTime } from '../../../../src/engine/physics/protection'

const seconds = (time: number | 'never'): number => {
  if (time === 'never') throw new Error('a time')
  return time
}

describe('melting time', () => {
  // Least and most melting currents of ANSI C37.42 / IEC 60282-2 (from memory, ±3 %).
  it.each([
    ['K', 25, 'least', 50, 300],
    ['K', 25, 'least', 60, 10],
    ['K', 25, 'least', 350, 0.1],
    ['K', 25, 'most', 60, 300],
    ['K', 25, 'most', 90, 10],
    ['K', 25, 'most', 420, 0.1],
    ['T', 25, 'least', 73.5, 10],
    ['T', 25, 'most', 762, 0.1],
    ['K', 6, 'least', 13.5, 10],
    ['K', 100, 'most', 1820, 0.1],
    ['T', 65, 'least', 1650, 0.1],
    ['K', 140, 'least', 310, 600],
    ['K', 200, 'most', 576, 600],
  ] as const)('%s %i, %s, at %s A is %s s', (link, rating, edge, current, time) => {
    expect(meltingTime(link, rating, current, edge)).toBeCloseTo(time, 6)
  })

  it('twice its rating does not quite melt a link for ever, less never does (rating = half the 300 s current)', () => {
    expect(meltingTime('K', 25, 49.9, 'least')).toBe('never')
    expect(meltingTime('K', 25, 59.9, 'most')).toBe('never')
    expect(meltingTime('K', 25, 0, 'most')).toBe('never')
  })

  it('below 0.1 s it is a wire that loses no heat: I²t stays', () => {
    const at = (current: number): number => seconds(meltingTime('K', 40, current, 'least')) * current * current
    expect(at(5_650)).toBeCloseTo(0.1 * 565 * 565, 6)
    expect(at(2_000)).toBeCloseTo(at(5_650), 6)
  })

  it('falls with every ampere more, in every link, the quickest before the slowest, K before T', () => {
    for (const link of fuseLinkTypes) {
      for (const rating of fuseRatings) {
        let [least, most] = [Infinity, Infinity]
        for (let current = 2.9 * rating; current < 90 * rating; current *= 1.05) {
          const now = [meltingTime(link, rating, current, 'least'), meltingTime(link, rating, current, 'most')].map(
            seconds,
          )
          expect(now[0]!, `${link} ${rating} ${current}`).toBeLessThan(least)
          expect(now[1]!, `${link} ${rating} ${current}`).toBeLessThan(most)
          expect(now[0]!, `${link} ${rating} ${current}`).toBeLessThan(now[1]!)
          ;[least, most] = now as [number, number]
          if (link === 'K') expect(now[0]!).toBeLessThan(seconds(meltingTime('T', rating, current, 'least')))
        }
      }
    }
  })

  // Per-unit curves of an open collection of time-current data (times the rating: 3, 4, 6): one curve for all ratings,
  // a tenth below the standard's 0.1 s point. Ours is slower there, by less than a quarter in current.
  it.each([
    ['K', 25, 3, 4],
    ['K', 25, 4, 1.3],
    ['K', 25, 6, 0.41],
    ['K', 65, 4, 1.3],
    ['T', 25, 4, 4],
    ['T', 25, 6, 1.4],
    ['T', 65, 4, 4],
  ] as const)('%s %i at %i times its rating against an open curve of %s s', (link, rating, times, time) => {
    const shifted = seconds(meltingTime(link, rating, times * rating * 1.25, 'least'))
    expect(shifted).toBeLessThan(time)
    expect(seconds(meltingTime(link, rating, times * rating * 0.95, 'least'))).toBeGreaterThan(time)
  })

  it('refuses a rating that is not in the standard', () => {
    expect(() => meltingTime('K', 26, 100, 'least')).toThrow(/rating/)
  })
})

it('arcs for one period', () => {
  expect(arcTime(50)).toBe(0.02)
})
