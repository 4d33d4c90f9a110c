import { describe, expect, it } from 'vitest'
import { normalBelow, normalQuantile } from '../../../src/engine/math/normal'

describe('standard normal distribution', () => {
  // Abramowitz and Stegun, Handbook of Mathematical Functions, tables 26.1 (P) and 26.5 (quantiles)
  it.each([
    [0, 0.5],
    [0.5, 0.691462461274013],
    [1, 0.841344746068543],
    [-1, 0.158655253931457],
    [2, 0.97724986805182],
    [3, 0.99865010196837],
  ])('P(%s) = %s', (z, chance) => {
    expect(normalBelow(z)).toBeCloseTo(chance, 14)
  })

  it.each([
    [0.05, -1.6448536269515],
    [0.975, 1.9599639845401],
    [0.5, 0],
    [0.995, 2.5758293035489],
  ])('quantile of %s = %s', (share, z) => {
    expect(normalQuantile(share)).toBeCloseTo(z, 12)
  })

  it('has no quantile of nothing or of all', () => {
    expect(() => normalQuantile(0)).toThrow(/share/)
    expect(() => normalQuantile(1)).toThrow(/share/)
  })
})
