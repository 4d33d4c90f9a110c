import { describe, expect, it } from 'vitest'
import { chanceOfFibrillation, lineC1, lineC2, lineC3 } from '../../../../src/engine/physics/body'

const durations = [0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10]

describe('chance of fibrillation', () => {
  // IEC 60479-1 Table 11: AC-4.2 up to about 5 %, AC-4.3 up to about 50 % (from memory, high confidence)
  it('is 5 % on line c2 at every published duration, whatever c3 is read as', () => {
    for (const duration of durations) {
      const chance = chanceOfFibrillation(lineC2(duration), duration)
      for (const share of [chance.likely, chance.low, chance.high]) expect(share).toBeCloseTo(0.05, 12)
    }
  })

  it('is 50 % on line c3; between 34 % and 74 % for what c3 can be read as (by hand)', () => {
    for (const duration of durations) {
      const { likely, low, high } = chanceOfFibrillation(lineC3(duration), duration)
      expect(likely).toBeCloseTo(0.5, 12)
      // z = ln(1.75/2)/(ln 2/1.645) = -0.317 and ln(1.75/1.5)/(ln 1.5/1.645) = 0.625; Φ from tables 0.3757 and 0.7341
      expect(low).toBeCloseTo(0.3757, 3)
      expect(high).toBeCloseTo(0.7341, 3)
    }
  })

  it('100 mA for 1 s is about 16 % by hand: Φ(ln(100/140)/0.3402)', () => {
    // z = -0.3365/0.3402 = -0.989; Φ = 0.1613 (Abramowitz and Stegun, table 26.1)
    expect(chanceOfFibrillation(0.1, 1).likely).toBeCloseTo(0.1613, 3)
  })

  it('is nothing below line c1, but its upper end is not: the standard says unlikely, not impossible', () => {
    for (const duration of durations) {
      const below = chanceOfFibrillation(0.999 * lineC1(duration), duration)
      expect(below.likely).toBe(0)
      expect(below.low).toBe(0)
      expect(below.high).toBeGreaterThan(0)
      expect(below.high).toBeLessThan(0.05)
      expect(chanceOfFibrillation(lineC1(duration), duration).likely).toBeGreaterThan(0)
    }
    expect(chanceOfFibrillation(0, 1)).toEqual({ likely: 0, low: 0, high: 0, beyondRange: false })
  })

  it('rises with current and with time, and lies in its own interval', () => {
    for (let duration = 0.05; duration < 12; duration *= 1.3) {
      let before = -1
      for (let current = 0.005; current < 5; current *= 1.1) {
        const { likely, low, high } = chanceOfFibrillation(current, duration)
        expect(likely).toBeGreaterThanOrEqual(before)
        expect(low).toBeLessThanOrEqual(likely)
        expect(high).toBeGreaterThanOrEqual(likely)
        expect(chanceOfFibrillation(current, duration * 1.3).likely).toBeGreaterThanOrEqual(likely)
        before = likely
      }
    }
  })

  it('against Dalziel (IEEE 80: 0.116/√t spares 99.5 % of 50 kg): near 1 % at 0.5 s, far more careful at 1 s', () => {
    expect(chanceOfFibrillation(0.116 / Math.sqrt(0.5), 0.5).likely).toBeCloseTo(0.013, 3)
    expect(chanceOfFibrillation(0.116, 1).likely).toBeGreaterThan(0.25)
  })

  it('marks what lies outside 0.05–10 s and judges it at the nearer end', () => {
    expect(chanceOfFibrillation(0.06, 60)).toEqual({ ...chanceOfFibrillation(0.06, 10), beyondRange: true })
    expect(chanceOfFibrillation(0.06, Number.POSITIVE_INFINITY).beyondRange).toBe(true)
    expect(chanceOfFibrillation(1, 0.02).beyondRange).toBe(true)
    expect(chanceOfFibrillation(1, 0.05).beyondRange).toBe(false)
    expect(chanceOfFibrillation(1, 10).beyondRange).toBe(false)
  })

  it('refuses a current that is no number', () => {
    expect(() => chanceOfFibrillation(Number.NaN, 1)).toThrow(/heart-current/)
    expect(() => chanceOfFibrillation(-0.1, 1)).toThrow(/heart-current/)
  })
})
