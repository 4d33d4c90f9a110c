import { describe, expect, it } from 'vitest'
import { acResistance, conductorTypes, conductorValues } from '../../../../src/engine/physics/line/conductorTypes'
import { poleTopPlaces, poleTops, type PoleTopName } from '../../../../src/engine/physics/line/poleTops'
import { capacitanceMatrix, kronReduce, seriesImpedance } from '../../../../src/engine/physics/line'

describe('conductors by construction', () => {
  // printed tables of DIN 48201 (copper, aluminium) and DIN 48204 / EN 50182 (aluminium on steel), from memory, high
  // confidence: outside diameter in mm, direct-current resistance at 20 °C in ohm per kilometre
  it.each([
    ['copper-16', 5.1, 1.1385],
    ['copper-25', 6.3, 0.7461],
    ['copper-35', 7.5, 0.5265],
    ['copper-50', 9.0, 0.3656],
    ['copper-70', 10.5, 0.2762],
    ['copper-95', 12.5, 0.195],
    ['aluminium-25', 6.3, 1.1808],
    ['aluminium-50', 9.0, 0.5786],
    ['aluminium-70', 10.5, 0.4371],
    ['aluminium-95', 12.5, 0.3084],
    ['aluminium-120', 14.0, 0.2459],
    ['aluminium-steel-35-6', 8.1, 0.8352],
    ['aluminium-steel-50-8', 9.6, 0.5946],
    ['aluminium-steel-70-12', 11.7, 0.413],
    ['aluminium-steel-95-15', 13.6, 0.3058],
    ['aluminium-steel-120-20', 15.5, 0.2374],
    ['aluminium-steel-185-30', 19.0, 0.1571],
  ] as const)('%s: %d mm, %d Ω/km', (type, diameter, ohm) => {
    const { radius, resistance20 } = conductorValues(type)
    expect(Math.abs(2000 * radius - diameter)).toBeLessThan(0.051)
    // printed with four decimals, from constants rounded to four
    expect(Math.abs(1000 * resistance20 - ohm)).toBeLessThan(1.5e-4)
  })

  it('every one of the catalogue is in that table', () => {
    expect(conductorTypes).toHaveLength(17)
  })

  // geometric mean radius over radius: Stevenson, Elements of Power System Analysis, and the EPRI red book, from memory
  it.each([
    ['copper-25', 0.7256],
    ['aluminium-95', 0.7577],
  ] as const)('GMR of %s is %d of its radius', (type, ratio) => {
    const { gmr, radius } = conductorValues(type)
    expect(gmr / radius).toBeCloseTo(ratio, 3)
  })

  it('26 wires over 7 of steel: as 336.4 kcmil 26/7, GMR 0.0244 ft at 0.721 in (Kersting appendix A)', () => {
    const printed = 0.0244 / (0.721 / 24)
    for (const type of ['aluminium-steel-70-12', 'aluminium-steel-120-20'] as const) {
      const { gmr, radius } = conductorValues(type)
      expect(Math.abs(gmr / radius / printed - 1)).toBeLessThan(0.003)
    }
  })

  it('hot wire: aluminium at 80 °C 1.242 of 20 °C (α 0.00403), skin effect far below one per cent', () => {
    const cold = acResistance('aluminium-50', 50, 20)
    expect(acResistance('aluminium-50', 50, 80) / cold).toBeCloseTo(1.242, 3)
    const direct = conductorValues('aluminium-steel-185-30').resistance20
    const skin = acResistance('aluminium-steel-185-30', 50, 20) / direct
    // IEC 60287: xs² = 8π f 10⁻⁷/R′ = 0.80, ys = xs⁴/(192 + 0.8 xs⁴) = 0.0033
    expect(skin - 1).toBeCloseTo(0.0033, 4)
  })

  it('skin effect at 400 Hz, xs = 2.5 (good to 2.8): IEC 60287 by hand from 0.1571 Ω/km, 18 %', () => {
    const xs2 = (8 * Math.PI * 400 * 1e-7) / 0.1571e-3
    const ratio = acResistance('aluminium-steel-185-30', 400, 20) / acResistance('aluminium-steel-185-30', 1e-3, 20)
    expect(ratio - 1).toBeCloseTo(xs2 ** 2 / (192 + 0.8 * xs2 ** 2), 3)
    expect(ratio - 1).toBeCloseTo(0.182, 3)
  })

  // true sections of the same tables: 7 × 3.0, 19 × 2.5, 26 × 3.0 mm, from memory, high confidence
  it.each([
    ['copper-50', 49.48],
    ['aluminium-95', 93.27],
    ['aluminium-steel-185-30', 183.78],
  ] as const)('%s has %d mm² that carry current', (type, square) => {
    expect(1e6 * conductorValues(type).area).toBeCloseTo(square, 2)
  })
})

describe('pole tops', () => {
  const names = Object.keys(poleTops) as PoleTopName[]

  it('phases first, then earth wire, then neutral; all apart by half a metre and above ground', () => {
    for (const name of names) {
      const places = poleTopPlaces(name, 9)
      places.forEach((a, i) => {
        expect(a.y).toBeGreaterThan(5)
        for (const b of places.slice(0, i)) expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThan(0.5)
      })
    }
    expect(poleTopPlaces('flat-earth-wire', 9)[3]).toEqual({ x: 0, y: 10.5 })
    expect(poleTopPlaces('delta-neutral', 9, 20)[3]).toEqual({ x: 20.2, y: 7.5 })
  })

  it('an earth wire takes some of the zero-sequence impedance away and leaves the positive sequence nearly alone', () => {
    const { gmr, radius } = conductorValues('aluminium-50')
    const ohm = acResistance('aluminium-50', 50, 20)
    const wires = (name: PoleTopName) => poleTopPlaces(name, 9).map((it) => ({ ...it, acResistance: ohm, gmr }))
    const sequence = (name: PoleTopName) => {
      const reduced = kronReduce(seriesImpedance(50, 100, wires(name)), 3)
      const mean = (pick: (i: number, j: number) => boolean, part: 're' | 'im') => {
        const all = reduced.flatMap((row, i) => row.filter((_, j) => pick(i, j)).map((z) => z[part]))
        return all.reduce((sum, it) => sum + it, 0) / all.length
      }
      const own = mean((i, j) => i === j, 'im')
      const mutual = mean((i, j) => i !== j, 'im')
      return { zero: own + 2 * mutual, positive: own - mutual }
    }
    const [plain, shielded] = [sequence('flat'), sequence('flat-earth-wire')]
    expect(shielded.zero).toBeLessThan(0.9 * plain.zero)
    expect(shielded.positive / plain.positive).toBeCloseTo(1, 1)
    // GMD of 1, 1, 2 m: X1 = ωμ0/2π ln(1.26/gmr)
    expect(plain.positive / (50 * 4e-7 * Math.PI * Math.log(Math.cbrt(2) / gmr))).toBeCloseTo(1, 6)
    // C1 = 2πε0/ln(GMD/r), within the few per cent that the ground makes
    const farad = capacitanceMatrix(poleTopPlaces('flat', 9).map((it) => ({ ...it, radius })))
    const ownC = (farad[0]![0]! + farad[1]![1]! + farad[2]![2]!) / 3
    const mutualC = (farad[0]![1]! + farad[0]![2]! + farad[1]![2]!) / 3
    const byHand = (2 * Math.PI * 8.8541878e-12) / Math.log(Math.cbrt(2) / radius)
    expect(Math.abs((ownC - mutualC) / byHand - 1)).toBeLessThan(0.03)
  })

  it('two circuits beside each other: each block is the circuit alone, between them ωμ0/8 + j ωμ0/2π ln(De/D)', () => {
    const ohm = acResistance('aluminium-steel-50-8', 50, 20)
    const { gmr } = conductorValues('aluminium-steel-50-8')
    const wiresOf = (at: number) =>
      poleTopPlaces('delta-neutral', 9, at).map((it) => ({ ...it, acResistance: ohm, gmr }))
    const both = seriesImpedance(50, 100, [...wiresOf(0), ...wiresOf(12)])
    const alone = seriesImpedance(50, 100, wiresOf(0))
    alone.forEach((row, i) => row.forEach((z, j) => expect(both[i]![j]).toEqual(z)))
    // the same on both poles, 12 m apart: 658.87 √2 = 931.8 m
    for (let i = 0; i < 4; i++) {
      expect(both[i]![4 + i]!.im).toBeCloseTo(50 * 4e-7 * Math.PI * Math.log(931.783 / 12), 9)
      expect(both[i]![4 + i]!.re).toBeCloseTo(Math.PI * Math.PI * 50e-7, 10)
    }
  })
})
