/** Travel of a relay under changing currents, and what becomes of it at or below pickup. */
import { describe, expect, it } from 'vitest'
import { relayProgress, relayResets, resetTime, timeToOperate } from '../../../../src/engine/physics/protection'

const setting = { curve: 'iec-very-inverse', pickup: 100, multiplier: 1 } as const
const disc = { curve: 'ieee-very-inverse', pickup: 100, multiplier: 2 } as const

describe('relay progress', () => {
  it('adds up over steps: half the time at 500 A, then half the time at 1000 A operates (Σ dt/t = 1)', () => {
    const half = relayProgress(setting, 0, 500, 3.375 / 2, 'at-once')
    expect(half).toBeCloseTo(0.5, 12)
    expect(timeToOperate(setting, half, 1000)).toBeCloseTo(0.75, 12)
    expect(relayProgress(setting, half, 1000, 0.76, 'at-once')).toBe(1)
  })

  it('never operates at or below pickup, whatever travel it has', () => {
    expect(timeToOperate(setting, 0.3, 100)).toBe('never')
    for (const reset of relayResets) expect(relayProgress(disc, 0.3, 100, 1000, reset)).toBeLessThanOrEqual(0.3)
  })

  it('needs no more time once it has operated', () => {
    expect(timeToOperate(setting, 1, 0)).toBe(0)
  })

  it('operates at once with a definite time of 0', () => {
    expect(relayProgress({ curve: 'definite-time', pickup: 1, multiplier: 0 }, 0, 2, 0, 'kept')).toBe(1)
  })
})

describe('reset', () => {
  it('is lost at once, or kept, as the relay’s data says', () => {
    expect(relayProgress(setting, 0.3, 100, 0.001, 'at-once')).toBe(0)
    expect(relayProgress(disc, 0.3, 50, 0.001, 'at-once')).toBe(0)
    expect(relayProgress(setting, 0.3, 100, 1000, 'kept')).toBe(0.3)
  })

  // IEEE C37.112: t = D · tr/(1 − M²), tr 4.85, 21.6 and 29.1 (from memory, high confidence).
  it.each([
    ['ieee-moderately-inverse', 4.85],
    ['ieee-very-inverse', 21.6],
    ['ieee-extremely-inverse', 29.1],
  ] as const)('%s turns back from full travel in %s s a dial without current', (curve, seconds) => {
    expect(resetTime({ curve, pickup: 100, multiplier: 3 }, 0)).toBeCloseTo(3 * seconds, 9)
  })

  it('a disc turns back slower as the current comes near pickup, and stands still on it', () => {
    // by hand: 2 · 21.6/(1 − 0.25) = 57.6 s at half of pickup
    expect(resetTime(disc, 50)).toBeCloseTo(57.6, 9)
    expect(resetTime(disc, 100)).toBe('never')
    expect(relayProgress(disc, 0.8, 50, 28.8, 'by-curve')).toBeCloseTo(0.3, 9)
    expect(relayProgress(disc, 0.8, 100, 1000, 'by-curve')).toBe(0.8)
    expect(relayProgress(disc, 0.1, 0, 100, 'by-curve')).toBe(0)
  })

  it('a curve without a published reset loses its travel at once', () => {
    expect(relayProgress(setting, 0.8, 50, 1, 'by-curve')).toBe(0)
    expect(relayProgress(setting, 0.8, 50, 0, 'by-curve')).toBe(0)
  })
})

describe('what makes no sense', () => {
  it('travel below rest or beyond the contact, and time that runs backwards', () => {
    for (const travel of [-0.1, 1.1]) {
      expect(() => relayProgress(setting, travel, 500, 1, 'kept')).toThrow(/progress/)
      expect(() => timeToOperate(setting, travel, 500)).toThrow(/progress/)
    }
    expect(() => relayProgress(setting, 0.5, 500, -1, 'kept')).toThrow(/seconds/)
    expect(relayProgress(setting, 1, 500, 0, 'kept')).toBe(1)
  })

  it('a reset above pickup, or at a current below nothing', () => {
    expect(() => resetTime(disc, 101)).toThrow(/pickup/)
    expect(() => resetTime(disc, -1)).toThrow(/pickup/)
  })
})
