import { describe, expect, it } from 'vitest'
import {
  insulatingItems,
  insulationClasses,
  insulationRating,
  layerAdmittance,
  withstand,
} from '../../../../src/engine/physics/insulation'

describe('rating', () => {
  // ASTM D120 / IEC 60903 table, AC: proof and maximum use in volts.
  it.each([
    ['00', 2500, 500],
    ['0', 5000, 1000],
    ['1', 10_000, 7500],
    ['2', 20_000, 17_000],
    ['3', 30_000, 26_500],
    ['4', 40_000, 36_000],
  ] as const)('class %s is proved at %s V and used to %s V', (cls, proofTest, maxUse) => {
    for (const item of insulatingItems) expect(insulationRating(item, cls)).toMatchObject({ proofTest, maxUse })
  })

  it('gloves and boots go back to the test room each half year, covers on doubt', () => {
    for (const cls of insulationClasses) {
      expect(insulationRating('glove', cls).retestMonths).toBe(6)
      expect(insulationRating('boot', cls).retestMonths).toBe(6)
      expect(insulationRating('cover', cls)).not.toHaveProperty('retestMonths')
    }
  })
})

describe('withstand', () => {
  it('class 0 may fail at 4–5 kV, fails at 6.35 kV, where class 1 still holds', () => {
    const class0 = insulationRating('boot', '0')
    expect(withstand(class0, 1_000)).toBe('holds')
    expect(withstand(class0, 4_500)).toBe('may-fail')
    expect(withstand(class0, -5_000)).toBe('may-fail')
    expect(withstand(class0, 5_000.1)).toBe('fails')
    expect(withstand(class0, 6_350)).toBe('fails')
    expect(withstand(insulationRating('boot', '1'), 6_350)).toBe('holds')
  })
})

describe('layer admittance', () => {
  it('a pole cover 3 mm thick, permittivity 2.5, under a thigh of 0.03 m² is 221 pF (plate capacitor by hand)', () => {
    const { re, im } = layerAdmittance(50, 0.03, 0.003, 2.5, 150e6)
    expect(im / (2 * Math.PI * 50)).toBeCloseTo(221.35e-12, 13)
    expect(re).toBeCloseTo(1 / 150e6, 15)
  })

  it('passes about half a milliampere at phase voltage: 5.7 kV over that cover (hand: 5700 · 314.16 · 221 pF = 0.40 mA)', () => {
    const { re, im } = layerAdmittance(50, 0.03, 0.003, 2.5, 150e6)
    expect(5_700 * Math.sqrt(re * re + im * im)).toBeCloseTo(0.000398, 5)
  })

  it('refuses a layer without thickness', () => {
    for (const none of [0, -0.001]) expect(() => layerAdmittance(50, 0.03, none, 2.5, 1e8)).toThrow(/thickness/)
  })

  it('refuses a frequency or an area below nothing, a permittivity or a leakage of nothing', () => {
    expect(() => layerAdmittance(-50, 0.03, 0.003, 2.5, 1e8)).toThrow(/frequency/)
    expect(() => layerAdmittance(50, -0.03, 0.003, 2.5, 1e8)).toThrow(/area/)
    for (const none of [0, -1]) {
      expect(() => layerAdmittance(50, 0.03, 0.003, none, 1e8)).toThrow(/permittivity/)
      expect(() => layerAdmittance(50, 0.03, 0.003, 2.5, none)).toThrow(/leakage/)
    }
  })

  it('leaks only where there is no frequency or no area to charge', () => {
    expect(layerAdmittance(0, 0.03, 0.003, 2.5, 1e8)).toEqual({ re: 1e-8, im: 0 })
    expect(layerAdmittance(50, 0, 0.003, 2.5, 1e8)).toEqual({ re: 1e-8, im: 0 })
  })
})
