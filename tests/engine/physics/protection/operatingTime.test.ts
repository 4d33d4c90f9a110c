import { describe, expect, it } from 'vitest'
import { curveNames, operatingTime } from '../../../../src/engine/physics/protection'

describe('operating time', () => {
  // IEC 60255-151 and IEEE C37.112 by hand at ten times pickup, multiplier 1.
  it.each([
    ['iec-standard-inverse', 2.9706],
    ['iec-very-inverse', 1.5],
    ['iec-extremely-inverse', 0.80808],
    ['iec-long-time-inverse', 13.3333],
    ['iec-short-time-inverse', 0.51825],
    ['ieee-moderately-inverse', 1.20678],
    ['ieee-very-inverse', 0.68908],
    ['ieee-extremely-inverse', 0.40655],
    ['definite-time', 1],
  ] as const)('%s at ten times pickup takes %s s', (curve, seconds) => {
    expect(operatingTime(curve, 100, 1, 1000)).toBeCloseTo(seconds, 4)
  })

  it.each(curveNames)('%s never operates at or below pickup', (curve) => {
    expect(operatingTime(curve, 100, 1, 100)).toBe('never')
    expect(operatingTime(curve, 100, 1, 0)).toBe('never')
    expect(operatingTime(curve, 100, 1, 100.1)).not.toBe('never')
  })

  it('takes about 2.5 s at 70 A with 40 A × 0.2 standard inverse (hand: 0.2 · 0.14/(1.75^0.02 − 1) = 2.4877)', () => {
    expect(operatingTime('iec-standard-inverse', 40, 0.2, 70)).toBeCloseTo(2.4877, 4)
  })

  it('is proportional to the multiplier, which is the delay itself for definite time', () => {
    expect(operatingTime('iec-very-inverse', 100, 0.5, 500)).toBeCloseTo(3.375 / 2, 12)
    expect(operatingTime('definite-time', 10, 5, 4000)).toBe(5)
  })

  it('answers never rather than infinity one bit above pickup', () => {
    expect(operatingTime('iec-standard-inverse', 1, 1, 1 + Number.EPSILON)).toBe('never')
  })

  it('refuses a pickup of 0 and a multiplier below it', () => {
    expect(() => operatingTime('definite-time', 0, 1, 1)).toThrow(/pickup/)
    expect(() => operatingTime('definite-time', 1, -1, 1)).toThrow(/multiplier/)
  })
})
