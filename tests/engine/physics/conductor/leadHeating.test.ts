import { describe, expect, it } from 'vitest'
import {
  adiabaticArea,
  adiabaticTime,
  contactBurnTime,
  contactHeat,
  contactHeatLimit,
  contactResistance,
  contactStates,
  leadResistance,
  meltingTemperature,
  temperatureAfter,
} from '../../../../src/engine/physics/conductor'

const squareMillimetre = 1e-6

describe('adiabatic time', () => {
  // k of IEC 60364-5-54 (from memory, high confidence, whole numbers): t = (k S/I)², here 100 mm² for 1 s.
  it.each([
    ['copper', 30, 160, 143],
    ['copper', 30, 200, 159],
    ['copper', 30, 250, 176],
    ['copper', 70, 160, 115],
    ['aluminium', 30, 160, 95],
    ['aluminium', 70, 160, 76],
    ['steel', 30, 160, 52],
  ] as const)('%s from %s to %s °C has k = %s', (material, initial, limit, k) => {
    const time = adiabaticTime(material, 100 * squareMillimetre, k * 100, initial, limit)
    expect(time).toBeGreaterThan(0.985)
    expect(time).toBeLessThan(1.015)
  })

  it('is Onderdonk: 33 (I/A_cmil)² t = log10(1 + (Tm − Ta)/(234 + Ta)) within 1 %', () => {
    // Hand: 2/0 copper, 133 100 circular mils (67.44 mm²), 20 kA, 40 to 1083 °C.
    const onderdonk = Math.log10(1 + (1083 - 40) / (234 + 40)) / (33 * (20_000 / 133_100) ** 2)
    const time = adiabaticTime('copper', 67.4436 * squareMillimetre, 20_000, 40, 1083)
    expect(Number(time) / onderdonk).toBeGreaterThan(0.99)
    expect(Number(time) / onderdonk).toBeLessThan(1.01)
  })

  it('is 0 when the limit is reached already and never without current', () => {
    expect(adiabaticTime('copper', squareMillimetre, 100, 200, 160)).toBe(0)
    expect(adiabaticTime('copper', squareMillimetre, 0, 160, 160)).toBe(0)
    expect(adiabaticTime('copper', squareMillimetre, 0, 30, 160)).toBe('never')
  })
})

describe('temperature', () => {
  it('25 mm² copper at 4.9 kA for 1 s rises about 300 K from 30 °C (61230 practice, from memory)', () => {
    const rise = temperatureAfter('copper', 25 * squareMillimetre, 4_900, 30, 1) - 30
    expect(rise).toBeGreaterThan(285)
    expect(rise).toBeLessThan(315)
  })

  it('is far beyond that limit after two more shots without cooling (hand: 264.5 · e^(3 · 0.7522) − 234.5 = 2291 > 1083)', () => {
    let temperature = 30
    for (let shot = 0; shot < 3; shot += 1) {
      temperature = temperatureAfter('copper', 25 * squareMillimetre, 4_900, temperature, 1)
    }
    expect(temperature).toBe(meltingTemperature('copper'))
  })

  it('undoes the adiabatic time', () => {
    const time = Number(adiabaticTime('aluminium', 50 * squareMillimetre, 3_000, 20, 300))
    expect(temperatureAfter('aluminium', 50 * squareMillimetre, 3_000, 20, time)).toBeCloseTo(300, 8)
  })

  it('adds up over intervals: two halves are the whole', () => {
    const half = temperatureAfter('copper', 25 * squareMillimetre, 3_000, 30, 0.5)
    const whole = temperatureAfter('copper', 25 * squareMillimetre, 3_000, 30, 1)
    expect(temperatureAfter('copper', 25 * squareMillimetre, 3_000, half, 0.5)).toBeCloseTo(whole, 9)
  })

  it('agrees with stepping I²R into the heat of the metal (3.45 J/(K·cm³), IEC 60949) within 1 %', () => {
    const area = 25 * squareMillimetre
    let temperature = 30
    for (let step = 0; step < 10_000; step += 1) {
      const heat = 4_000 * 4_000 * leadResistance('copper', area, 1, temperature) * 1e-4
      temperature += heat / (3.45e6 * area)
    }
    expect(temperatureAfter('copper', area, 4_000, 30, 1) / temperature).toBeGreaterThan(0.99)
    expect(temperatureAfter('copper', area, 4_000, 30, 1) / temperature).toBeLessThan(1.01)
  })

  it('stops at the melting point', () => {
    expect(temperatureAfter('copper', squareMillimetre, 20_000, 30, 10)).toBe(meltingTemperature('copper'))
    expect(meltingTemperature('copper')).toBe(1083)
  })
})

describe('lead resistance', () => {
  it('of 25 mm² copper is 0.69 mΩ/m at 20 °C (17.241 nΩ·m) and follows R20 (1 + 0.00393 (T − 20)) (ASTM F2249)', () => {
    const cold = leadResistance('copper', 25 * squareMillimetre, 1, 20)
    expect(cold).toBeCloseTo(0.00068964, 8)
    expect(leadResistance('copper', 25 * squareMillimetre, 1, 75) / cold).toBeCloseTo(1 + 0.00393 * 55, 3)
    expect(leadResistance('copper', 25 * squareMillimetre, 12, 20) / cold).toBeCloseTo(12, 9)
    expect(leadResistance('copper', 25 * squareMillimetre, 0, 20)).toBe(0)
  })
})

describe('a lead that makes no sense', () => {
  it('no section, a length below nothing, colder than its resistance can be, time that runs backwards', () => {
    for (const area of [0, -1]) expect(() => leadResistance('copper', area, 1, 20)).toThrow(/cross-section/)
    expect(() => leadResistance('copper', squareMillimetre, -1, 20)).toThrow(/length/)
    expect(() => leadResistance('copper', squareMillimetre, 1, -234.5)).toThrow('temperature above -234.5')
    expect(() => temperatureAfter('copper', squareMillimetre, 1, 20, -1)).toThrow(/seconds/)
    expect(temperatureAfter('copper', squareMillimetre, 100, 20, 0)).toBeCloseTo(20, 9)
  })
})

describe('contact', () => {
  it('keeps each range in order, and 0.5 mΩ declared when good (handbook, aged clamp)', () => {
    for (const state of contactStates) {
      const { low, declared, high } = contactResistance[state]
      expect(low).toBeLessThan(declared)
      expect(declared).toBeLessThan(high)
    }
    expect(contactResistance.good.declared).toBe(0.0005)
    expect(contactResistance.unbrushed).toMatchObject({ low: 0.005, high: 0.02 })
  })

  it('a good clamp outlives its 25 mm² lead, an unbrushed one burns off first (common practice, no source)', () => {
    const current = 5_000
    const leadMelts = Number(adiabaticTime('copper', 25 * squareMillimetre, current, 30, 1083))
    expect(Number(contactBurnTime(contactResistance.good.declared, current, 0))).toBeGreaterThan(leadMelts)
    expect(Number(contactBurnTime(contactResistance.unbrushed.declared, current, 0))).toBeLessThan(leadMelts)
  })

  it('holds grade 1 of ASTM F855: 14 kA for 15 cycles of 60 Hz at 0.5 mΩ', () => {
    expect(Number(contactBurnTime(0.0005, 14_000, 0))).toBeGreaterThan(0.25)
  })

  it('makes R I² t of heat: 10 mΩ at 1 kA is 10 kW, so 50 kJ take 5 s, less what it has taken already', () => {
    expect(contactHeat(0.01, 1_000, 3)).toBeCloseTo(30_000, 6)
    expect(contactBurnTime(0.01, 1_000, 0)).toBeCloseTo(5, 9)
    expect(contactBurnTime(0.01, 1_000, 30_000)).toBeCloseTo(2, 9)
    expect(contactBurnTime(0, 1_000, 0)).toBe('never')
  })

  it('refuses a resistance or a heat below nothing', () => {
    expect(() => contactBurnTime(-0.01, 1_000, 0)).toThrow(/resistance/)
    expect(() => contactBurnTime(0.01, 1_000, -1)).toThrow(/heat/)
  })

  it('never burns without current, at once when the heat is already there', () => {
    expect(contactBurnTime(0.01, 0, 0)).toBe('never')
    expect(contactBurnTime(0.01, 100, contactHeatLimit)).toBe(0)
    expect(contactBurnTime(0.01, 0, contactHeatLimit)).toBe(0)
    expect(contactBurnTime(0.01, 100, 2 * contactHeatLimit)).toBe(0)
  })
})

describe('adiabatic area', () => {
  // IEC 61230/61138, copper cable, kA for 1 s (from memory, middling confidence, to two or three figures).
  it.each([
    [16, 3.2],
    [25, 4.95],
    [35, 7.0],
    [50, 10],
    [70, 13.8],
    [95, 18.7],
    [120, 23.7],
  ])('%s mm² stands %s kA for 1 s with 300 K of rise', (area, kiloampere) => {
    const share = adiabaticArea('copper', kiloampere * 1000, 1, 20, 320) / (area * squareMillimetre)
    expect(Math.abs(share - 1)).toBeLessThan(0.02)
  })

  it('is the time turned round', () => {
    const time = Number(adiabaticTime('copper', 25 * squareMillimetre, 4900, 20, 320))
    expect(adiabaticArea('copper', 4900, time, 20, 320)).toBeCloseTo(25 * squareMillimetre, 12)
  })
})
