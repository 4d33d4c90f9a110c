import { describe, expect, it } from 'vitest'
import { bodyImpedance, handToHandImpedance, percentiles, skins } from '../../../../src/engine/physics/body'

describe('body impedance', () => {
  // IEC 60479-1:2005/2018 Tables 1–3, node values from memory (Table 1 high confidence, 2 and 3 medium).
  it.each([
    [25, 5, 'dry', 1750],
    [25, 50, 'dry', 3250],
    [25, 95, 'dry', 6100],
    [100, 5, 'dry', 990],
    [150, 50, 'dry', 1400],
    [225, 95, 'dry', 1900],
    [400, 5, 'dry', 700],
    [1000, 50, 'dry', 775],
    [25, 50, 'water-wet', 2175],
    [100, 50, 'water-wet', 1675],
    [125, 5, 'water-wet', 900],
    [25, 50, 'salt-wet', 1300],
    [225, 50, 'salt-wet', 1115],
    [700, 50, 'salt-wet', 775],
  ] as const)('at %s V, %s %%, %s is %s ohm', (voltage, percentile, skin, ohm) => {
    expect(handToHandImpedance(voltage, percentile, skin)).toBe(ohm)
  })

  it('is straight between the nodes: halfway from 225 to 400 V is the mean of 1225 and 950 ohm', () => {
    expect(handToHandImpedance(312.5, 50, 'dry')).toBeCloseTo(1087.5, 9)
  })

  it('is flat below 25 V and stays at the asymptote at 11 kV', () => {
    expect(handToHandImpedance(1, 5, 'dry')).toBe(1750)
    expect(handToHandImpedance(0, 5, 'dry')).toBe(1750)
    expect(handToHandImpedance(11_000, 5, 'dry')).toBe(575)
  })

  it('never rises with voltage, with moisture or towards a lower percentile', () => {
    for (let voltage = 5; voltage <= 1200; voltage += 5) {
      for (const skin of skins) {
        for (const percentile of percentiles) {
          expect(handToHandImpedance(voltage + 5, percentile, skin)).toBeLessThanOrEqual(
            handToHandImpedance(voltage, percentile, skin),
          )
        }
        expect(handToHandImpedance(voltage, 5, skin)).toBeLessThan(handToHandImpedance(voltage, 50, skin))
        expect(handToHandImpedance(voltage, 50, skin)).toBeLessThan(handToHandImpedance(voltage, 95, skin))
      }
      for (const percentile of percentiles) {
        const [dry, water, salt] = skins.map((skin) => handToHandImpedance(voltage, percentile, skin))
        expect(water!).toBeLessThanOrEqual(dry!)
        expect(salt!).toBeLessThanOrEqual(water!)
      }
    }
  })

  it('hand to both feet is three quarters of hand to hand (four equal limbs, IEC 60479-1, from memory)', () => {
    expect(bodyImpedance(225, 50, 'dry', 'hand-feet')).toBe(0.75 * 1225)
    expect(bodyImpedance(225, 50, 'dry', 'hand-hand')).toBe(1225)
  })

  it('other paths by limbs in series and side by side, each limb a half (same source)', () => {
    const whole = 1225
    expect(bodyImpedance(225, 50, 'dry', 'hand-foot')).toBe(whole)
    expect(bodyImpedance(225, 50, 'dry', 'both-hands-feet')).toBe(whole / 2)
    expect(bodyImpedance(225, 50, 'dry', 'hand-trunk')).toBe(whole / 2)
    expect(bodyImpedance(225, 50, 'dry', 'both-hands-trunk')).toBe(whole / 4)
    expect(bodyImpedance(225, 50, 'dry', 'foot-foot')).toBe(whole)
  })

  it('above 1 kV wet skin and dry skin are the same: 575, 775, 1050 ohm (IEC 60479-1 Table 1, asymptote)', () => {
    for (const skin of skins) {
      expect(percentiles.map((it) => handToHandImpedance(6_350, it, skin))).toEqual([575, 775, 1050])
    }
  })

  it('between the tabulated shares: lognormal, so a quarter of the population by hand', () => {
    // z(25 %) = -0.6745, z(5 %) = -1.6449: 1225 · (775/1225)^0.41006 = 1015.4 at 225 V
    expect(handToHandImpedance(225, 25, 'dry')).toBeCloseTo(1225 * (775 / 1225) ** (0.67449 / 1.644854), 2)
    // z(75 %) likewise towards 95 %: 1225 · (1900/1225)^0.41006
    expect(handToHandImpedance(225, 75, 'dry')).toBeCloseTo(1225 * (1900 / 1225) ** (0.67449 / 1.644854), 2)
  })

  it('runs on from the tables without a step, and rises from 1 to 99 %', () => {
    for (const skin of skins) {
      for (const voltage of [10, 60, 230, 900, 6_000]) {
        for (const percentile of percentiles) {
          const beside = handToHandImpedance(voltage, percentile + 1e-9, skin)
          expect(beside / handToHandImpedance(voltage, percentile, skin)).toBeCloseTo(1, 8)
        }
        for (let percentile = 1; percentile < 99; percentile++) {
          const next = handToHandImpedance(voltage, percentile + 1, skin)
          expect(next).toBeGreaterThan(handToHandImpedance(voltage, percentile, skin))
        }
      }
    }
    for (const none of [0.5, 99.5]) expect(() => handToHandImpedance(230, none, 'dry')).toThrow(/percentile/)
  })

  it('refuses a voltage that is not a number', () => {
    expect(() => handToHandImpedance(Number.NaN, 5, 'dry')).toThrow(/body voltage/)
  })
})
