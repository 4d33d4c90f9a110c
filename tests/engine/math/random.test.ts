import { describe, expect, it } from 'vitest'
import { nextWord, stream } from '../../../src/engine/math/random'

describe('seeded streams', () => {
  it('xoshiro128** from state 1, 2, 3, 4 gives the words of its authors’ C program (xoshiro128starstar.c 1.1)', () => {
    const state = Uint32Array.of(1, 2, 3, 4)
    const words = Array.from({ length: 6 }, () => nextWord(state))
    expect(words).toEqual([11520, 0, 5927040, 70819200, 2031721883, 1637235492])
  })

  it('same seed and name, same numbers; another name or seed, others', () => {
    const draw = (seed: number | string, name: string) => {
      const numbers = stream(seed, name)
      return Array.from({ length: 8 }, () => numbers.next())
    }
    expect(draw(1, 'gear')).toEqual(draw('1', 'gear'))
    expect(draw(1, 'gear')).not.toEqual(draw(1, 'event'))
    expect(draw(1, 'gear')).not.toEqual(draw(2, 'gear'))
    // the boundary between seed and name counts
    expect(draw('a', 'bc')).not.toEqual(draw('ab', 'c'))
  })

  it('numbers lie in [0, 1) and below n, evenly', () => {
    const numbers = stream(7, 'evenness')
    const counts = [0, 0, 0, 0, 0, 0]
    let sum = 0
    for (let i = 0; i < 60000; i++) {
      const face = numbers.below(6)
      counts[face] = counts[face]! + 1
      const part = numbers.next()
      expect(part >= 0 && part < 1).toBe(true)
      sum += part
    }
    // 10 000 each with a spread of √(60000 · 1/6 · 5/6) = 91; the mean of 60 000 has a spread of 0.0012
    for (const count of counts) expect(Math.abs(count - 10000)).toBeLessThan(5 * 91)
    expect(Math.abs(sum / 60000 - 0.5)).toBeLessThan(5 * 0.0012)
    expect(() => numbers.below(0)).toThrow('whole number')
  })
})
