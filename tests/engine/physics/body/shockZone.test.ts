import { describe, expect, it } from 'vitest'
import {
  heartEquivalent,
  lineA,
  lineB,
  lineC1,
  lineC2,
  lineC3,
  shockZone,
  tolerable,
} from '../../../../src/engine/physics/body'

describe('heart-current factor', () => {
  it('makes 225 mA hand to hand as likely to stop the heart as 90 mA left hand to feet (IEC 60479-1 clause 5.9)', () => {
    expect(heartEquivalent(0.225, 'hand-hand')).toBeCloseTo(0.09, 12)
  })
})

describe('time-current lines', () => {
  it('pass through their published points (IEC 60479-1 Figure 20, EN 50522 Annex B; from memory)', () => {
    expect(lineA()).toBe(0.0005)
    expect([0.01, 10].map(lineB)).toEqual([0.2, 0.005])
    expect([0.01, 0.1, 0.5, 1, 3].map(lineC1)).toEqual([0.5, 0.4, 0.1, 0.05, 0.04])
    expect([0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10].map(lineC2)).toEqual([0.9, 0.75, 0.6, 0.2, 0.08, 0.06, 0.051, 0.05])
  })

  it('b at 1 s is 17.1 mA by hand: 200 · 100^(−ln 40/ln 1000)', () => {
    expect(lineB(1)).toBeCloseTo(0.0171, 5)
  })

  it('stay level outside their ends and for a current that nothing clears', () => {
    expect(lineB(0.001)).toBe(0.2)
    expect(lineB(60)).toBe(0.005)
    expect(lineC1(Number.POSITIVE_INFINITY)).toBe(0.04)
    expect(lineC2(0.01)).toBe(0.9)
    expect(lineC2(60)).toBe(0.05)
  })

  it('never cross: a < b < c1 < c2 < c3 from 10 ms to 60 s, and none rises with time', () => {
    for (let duration = 0.01; duration < 60; duration *= 1.05) {
      const lines = [lineA(), lineB(duration), lineC1(duration), lineC2(duration), lineC3(duration)]
      expect([...lines].sort((one, other) => one - other)).toEqual(lines)
      expect(lineB(duration * 1.05)).toBeLessThanOrEqual(lineB(duration))
      expect(lineC1(duration * 1.05)).toBeLessThanOrEqual(lineC1(duration))
      expect(lineC2(duration * 1.05)).toBeLessThanOrEqual(lineC2(duration))
    }
  })
})

describe('zone', () => {
  // IEC 60479-1 Table 11 and the lines above; currents chosen between two lines, 1 s, left hand to feet.
  it.each([
    [0.0003, 'AC-1'],
    [0.0005, 'AC-2'],
    [0.01, 'AC-2'],
    [0.03, 'AC-3'],
    [0.07, 'AC-4.1'],
    [0.12, 'AC-4.2'],
    [0.2, 'AC-4.3'],
  ] as const)('%s A for 1 s is %s', (current, zone) => {
    expect(shockZone(current, current, 1)).toBe(zone)
  })

  it('judges cramp by the actual current: 20 mA through the legs is AC-3 though the heart gets 0.8 mA', () => {
    expect(shockZone(0.02, heartEquivalent(0.02, 'foot-foot'), 10)).toBe('AC-3')
  })

  it('judges fibrillation by the equivalent: 60 mA from chest to left hand counts as 90 mA', () => {
    expect(shockZone(0.06, 0.06, 1)).toBe('AC-4.1')
    expect(shockZone(0.06, heartEquivalent(0.06, 'chest-left-hand'), 1)).toBe('AC-4.2')
  })
})

describe('tolerable voltage', () => {
  it('reproduces IEEE 80 Annex B.1 (unrounded Cs 0.743: 2696.1 and 840.5 V)', () => {
    const { derating, step, touch } = tolerable(70, 0.5, {
      surface: 400,
      layer: { resistivity: 2500, thickness: 0.102 },
    })
    expect(derating).toBeCloseTo(0.7429, 4)
    expect(step).toBeCloseTo(2696.1, 0)
    expect(touch).toBeCloseTo(840.5, 0)
  })

  it('gives 118 V a pace at 2.5 s on 100 ohm·m for 50 kg (hand: 1600 · 0.116/√2.5 = 117.4)', () => {
    expect(tolerable(50, 2.5, { surface: 100 }).step).toBeCloseTo(117.38, 2)
  })

  it('keeps the 5 s and the 0.03 s value outside the range and says so', () => {
    const soil = { surface: 100 }
    expect(tolerable(50, 60, soil)).toEqual({ ...tolerable(50, 5, soil), beyondRange: true })
    expect(tolerable(50, 0.01, soil)).toEqual({ ...tolerable(50, 0.03, soil), beyondRange: true })
    expect(tolerable(50, 5, soil).beyondRange).toBe(false)
    expect(tolerable(50, Number.POSITIVE_INFINITY, soil).beyondRange).toBe(true)
  })

  it('a layer of the same soil changes nothing (Cs = 1)', () => {
    const bare = tolerable(50, 1, { surface: 100 })
    expect(tolerable(50, 1, { surface: 100, layer: { resistivity: 100, thickness: 0.1 } })).toEqual(bare)
  })
})

describe('a current on a line', () => {
  it('b belongs to AC-3, c1, c2 and c3 to the zone below them', () => {
    for (const duration of [0.05, 0.4, 1, 7]) {
      const b = lineB(duration)
      expect(shockZone(b, 0, duration)).toBe('AC-3')
      expect(shockZone(b * (1 - 1e-12), 0, duration)).toBe('AC-2')
      const lines = [lineC1, lineC2, lineC3] as const
      const zones = ['AC-3', 'AC-4.1', 'AC-4.2', 'AC-4.3'] as const
      lines.forEach((line, i) => {
        const on = line(duration)
        expect(shockZone(10, on, duration)).toBe(zones[i])
        expect(shockZone(10, on * (1 + 1e-12), duration)).toBe(zones[i + 1])
      })
    }
  })
})

describe('what makes no sense', () => {
  it('a duration below nothing is refused, none at all is the shortest', () => {
    for (const judge of [lineB, lineC1, (duration: number) => tolerable(50, duration, { surface: 100 }).step]) {
      expect(() => judge(-1e-9)).toThrow(/duration/)
      expect(judge(0)).toBe(judge(1e-6))
    }
  })

  it('soil and layer without resistivity, a layer without thickness', () => {
    const layer = { resistivity: 3000, thickness: 0.1 }
    for (const none of [0, -1]) {
      expect(() => tolerable(50, 1, { surface: none })).toThrow(/soil/)
      expect(() => tolerable(50, 1, { surface: 100, layer: { ...layer, resistivity: none } })).toThrow(/layer/)
      expect(() => tolerable(50, 1, { surface: 100, layer: { ...layer, thickness: none } })).toThrow(/thickness/)
    }
  })
})
