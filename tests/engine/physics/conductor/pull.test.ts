/** The force of a fault on a clamp (IEC 60865-1), and what a loose clamp holds. */
import { describe, expect, it } from 'vitest'
import { looseClampHolds, pullAtClamp } from '../../../../src/engine/physics/conductor'

describe('pull at a clamp', () => {
  it('10 kA, 1 m apart, 2 m of cable: 0.2 µN/A² · (1.8 √2 · 10 kA)² is 130 N/m, half of 2 m at each end', () => {
    expect(pullAtClamp(10_000, 2, 1)).toBeCloseTo(129.6, 1)
  })

  it('grows with the square of the current and the length, and falls with the distance', () => {
    const one = pullAtClamp(1_000, 1, 1)
    expect(pullAtClamp(3_000, 1, 1) / one).toBeCloseTo(9, 9)
    expect(pullAtClamp(1_000, 4, 1) / one).toBeCloseTo(4, 9)
    expect(pullAtClamp(1_000, 1, 0.5) / one).toBeCloseTo(2, 9)
    expect(pullAtClamp(0, 1, 1)).toBe(0)
  })

  it('a loose clamp holds less than the tug of about 100 N that finds it (common practice, no source)', () => {
    expect(looseClampHolds).toBeGreaterThan(0)
    expect(looseClampHolds).toBeLessThan(100)
  })
})
