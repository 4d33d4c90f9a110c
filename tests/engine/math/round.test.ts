import { describe, expect, it } from 'vitest'
import { roundTo } from '../../../src/engine/math/round'

describe('rounding to a step', () => {
  it('gives the double that the decimal text gives', () => {
    expect(roundTo(0.1 + 0.2, 1e-6)).toBe(0.3)
    expect(roundTo(2.4999996, 1e-6)).toBe(2.5)
    expect(roundTo(1234.5678, 0.01)).toBe(1234.57)
    expect(roundTo(1234.5, 10)).toBe(1230)
  })

  it('halves go away from zero, and no zero is negative', () => {
    expect(roundTo(2.5, 1)).toBe(3)
    expect(roundTo(-2.5, 1)).toBe(-3)
    expect(Object.is(roundTo(-0.2, 1), 0)).toBe(true)
    expect(() => roundTo(1, 0)).toThrow('positive step')
  })
})
