import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { complex, magnitude, type Complex } from '../../../../src/engine/math/complex'
import { capacitanceMatrix, seriesImpedance } from '../../../../src/engine/physics/line'
import {
  earthedCurrents,
  floatingVoltages,
  inducedVoltages,
  loopCurrents,
} from '../../../../src/engine/physics/line/coupling'

const EPS0 = 8.8541878128e-12

const balanced = (volts: number): readonly Complex[] =>
  [0, 1, 2].map((k) => complex(volts * Math.cos((2 * Math.PI * k) / 3), -volts * Math.sin((2 * Math.PI * k) / 3)))

const liveWith = (values: readonly Complex[]) => values.map((value, conductor) => ({ conductor, value }))

function determinant(m: readonly (readonly number[])[]): number {
  const [[a, b, c], [d, e, f], [g, h, i]] = m as [
    [number, number, number],
    [number, number, number],
    [number, number, number],
  ]
  return a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g)
}

describe('capacitive coupling', () => {
  // one live wire over ground, one dead: q1 = V1/P11, V2 = P21 q1 (Maxwell's potential coefficients)
  const radius = 0.0045
  const pair = capacitanceMatrix([
    { x: 0, y: 10, radius },
    { x: 10, y: 9, radius },
  ])
  const mutual = Math.log(Math.sqrt(100 + 361) / Math.sqrt(101))
  const ownLive = Math.log(20 / radius)
  const ownDead = Math.log(18 / radius)

  it('a floating wire stands at V ln(D′/D)/ln(2h/r), by hand', () => {
    const [volt] = floatingVoltages(pair, [{ conductor: 0, value: complex(6351) }], [1])
    expect(volt!.re / ((6351 * mutual) / ownLive)).toBeCloseTo(1, 9)
    expect(volt!.im).toBeCloseTo(0, 9)
  })

  it('earthed, it gives jω C12 V a metre to earth: -P12/(P11 P22 - P12²) by hand', () => {
    const [ampere] = earthedCurrents(50, pair, [{ conductor: 0, value: complex(6351) }], [1])
    const farad = (2 * Math.PI * EPS0 * mutual) / (ownLive * ownDead - mutual * mutual)
    expect(ampere!.im / (2 * Math.PI * 50 * farad * 6351)).toBeCloseTo(1, 9)
    expect(ampere!.re).toBeCloseTo(0, 15)
  })

  it('the floating wire is a source behind its own capacitance: I = jω (C22 of it alone beside the live one) V', () => {
    const live = [{ conductor: 0, value: complex(6351) }]
    const volt = magnitude(floatingVoltages(pair, live, [1])[0]!)
    const ampere = magnitude(earthedCurrents(50, pair, live, [1])[0]!)
    expect(ampere / (2 * Math.PI * 50 * pair[1]![1]! * volt)).toBeCloseTo(1, 12)
  })

  it('11 kV, flat at 1 m spacing 10 m up, a wire 10 m away at 9 m: charges by Cramer’s rule, V = Σ P4k qk', () => {
    const phases = [-1, 0, 1].map((x) => ({ x, y: 10, radius }))
    const dead = { x: 10, y: 9, radius }
    const wires = capacitanceMatrix([...phases, dead])
    const live = liveWith(balanced(11000 / Math.sqrt(3)))
    // potential coefficients in units of 1/2πε0
    const [p, m, f] = [Math.log(20 / radius), Math.log(Math.sqrt(401)), Math.log(Math.sqrt(404) / 2)]
    const matrix = [
      [p, m, f],
      [m, p, m],
      [f, m, p],
    ]
    const charge = (k: number, volts: readonly number[]) =>
      determinant(matrix.map((row, i) => row.map((it, j) => (j === k ? volts[i]! : it)))) / determinant(matrix)
    const towards = phases.map(({ x }) => Math.log(Math.hypot(10 - x, 19) / Math.hypot(10 - x, 1)))
    const part = (of: 're' | 'im') =>
      towards.reduce(
        (sum, t, k) =>
          sum +
          t *
            charge(
              k,
              live.map(({ value }) => value[of]),
            ),
        0,
      )
    const byHand = Math.hypot(part('re'), part('im'))
    expect(magnitude(floatingVoltages(wires, live, [3])[0]!) / byHand).toBeCloseTo(1, 9)
    // a balanced circuit cancels nearly all: one phase alone, the others earthed, gives more
    const single = [live[2]!, ...[0, 1].map((conductor) => ({ conductor, value: complex(0) }))]
    expect(magnitude(floatingVoltages(wires, single, [3])[0]!)).toBeGreaterThan(2 * byHand)
  })

  it('no charge is left on floating wires, whatever hangs beside them', () => {
    const place = fc.record({ x: fc.integer({ min: -6, max: 6 }), y: fc.integer({ min: 6, max: 12 }) })
    const layouts = fc.uniqueArray(place, { minLength: 3, maxLength: 7, selector: ({ x, y }) => `${x}/${y}` })
    fc.assert(
      fc.property(layouts, fc.integer({ min: 1, max: 2 }), (places, liveCount) => {
        const matrix = capacitanceMatrix(places.map((it) => ({ ...it, radius: 0.006 })))
        const live = liveWith(balanced(1000).slice(0, liveCount))
        const dead = places.map((_, i) => i).slice(liveCount)
        const volts = [...live.map(({ value }) => value), ...floatingVoltages(matrix, live, dead)]
        for (const i of dead) {
          const charge = (part: 're' | 'im') => matrix[i]!.reduce((sum, farad, j) => sum + farad * volts[j]![part], 0)
          expect(Math.abs(charge('re')) / (matrix[i]![i]! * 1000)).toBeLessThan(1e-12)
          expect(Math.abs(charge('im')) / (matrix[i]![i]! * 1000)).toBeLessThan(1e-12)
          expect(magnitude(volts[i]!)).toBeLessThanOrEqual(1000)
        }
      }),
    )
  })
})

describe('inductive coupling', () => {
  const wire = (x: number, acResistance = 5e-4) => ({ x, y: 10, acResistance, gmr: 0.0036 })
  const series = seriesImpedance(50, 100, [wire(0), wire(10)])
  const live = [{ conductor: 0, value: complex(100) }]

  it('100 A of earth return 10 m away: 28.9 V a kilometre, from ωμ0/8 + j ωμ0/2π ln(931.8/10)', () => {
    const perMetre = 50 * 4e-7 * Math.PI * Math.PI
    const byHand = 100 * Math.hypot(perMetre / 4, 50 * 4e-7 * Math.PI * Math.log((658.87 * Math.SQRT2) / 10))
    const [volt] = inducedVoltages(series, live, [1])
    expect(magnitude(volt!) / byHand).toBeCloseTo(1, 6)
    expect(1000 * magnitude(volt!)).toBeCloseTo(28.9, 1)
    // against the current: in phase with -Z
    expect(volt!.re).toBeLessThan(0)
    expect(volt!.im).toBeLessThan(0)
  })

  it('a balanced circuit induces only by its spacing: j ωμ0/2π Σ ln(1/D) I, no earth in it', () => {
    const circuit = seriesImpedance(50, 100, [...[-1, 0, 1].map((x) => wire(x)), wire(10)])
    const other = seriesImpedance(50, 3000, [...[-1, 0, 1].map((x) => wire(x)), wire(10)])
    const currents = balanced(200)
    const [volt] = inducedVoltages(circuit, liveWith(currents), [3])
    const byHand = [11, 10, 9].reduce(
      (sum, apart, k) =>
        complex(sum.re - Math.log(apart) * currents[k]!.re, sum.im - Math.log(apart) * currents[k]!.im),
      complex(0),
    )
    expect(magnitude(volt!) / (50 * 4e-7 * Math.PI * magnitude(byHand))).toBeCloseTo(1, 6)
    expect(magnitude(inducedVoltages(other, liveWith(currents), [3])[0]!) / magnitude(volt!)).toBeCloseTo(1, 6)
  })

  it('earthed at both ends the loop carries E/(Z l + R1 + R2), by hand', () => {
    const emf = 1000 * magnitude(inducedVoltages(series, live, [1])[0]!)
    for (const earths of [0, 10, 80]) {
      const loop = Math.hypot(series[1]![1]!.re * 1000 + earths, series[1]![1]!.im * 1000)
      expect(magnitude(loopCurrents(series, live, [1], 1000, earths)[0]!) / (emf / loop)).toBeCloseTo(1, 9)
    }
  })

  it('the loop flows against what induces it, and two joined wires share it', () => {
    const [ampere] = loopCurrents(series, live, [1], 1000, 0)
    expect(ampere!.re).toBeLessThan(0)
    const three = seriesImpedance(50, 100, [wire(0), wire(10), wire(-10)])
    const [one, two] = loopCurrents(three, live, [1, 2], 1000, 0)
    expect(one!.re).toBeCloseTo(two!.re, 9)
    // each also feels the other 20 m away: Z11 + Z12 in place of Z11
    const sum = { re: three[1]![1]!.re + three[1]![2]!.re, im: three[1]![1]!.im + three[1]![2]!.im }
    const emf = magnitude(inducedVoltages(three, live, [1])[0]!)
    expect(magnitude(one!) / (emf / Math.hypot(sum.re, sum.im))).toBeCloseTo(1, 9)
  })

  it('more earths, more induced current; with one earth none at all but the full voltage (a known trap)', () => {
    const at = (earths: number) => magnitude(loopCurrents(series, live, [1], 1000, earths)[0]!)
    expect(at(10)).toBeGreaterThan(at(50))
    expect(at(1e9)).toBeLessThan(1e-6)
  })
})

it('what cannot be is refused', () => {
  const matrix = capacitanceMatrix([
    { x: 0, y: 10, radius: 0.005 },
    { x: 1, y: 10, radius: 0.005 },
  ])
  expect(() => floatingVoltages(matrix, [{ conductor: 0, value: complex(1) }], [0])).toThrow('each conductor once')
  expect(() => floatingVoltages(matrix, [{ conductor: 2, value: complex(1) }], [1])).toThrow('a conductor of 2')
  expect(() => floatingVoltages(matrix, [{ conductor: 0, value: complex(1) }], [])).toThrow('a dead wire')
  for (const place of [-1, 0.5, 2]) {
    expect(() => floatingVoltages(matrix, [{ conductor: 0, value: complex(1) }], [place])).toThrow('a conductor of 2')
  }
  const series = seriesImpedance(50, 100, [
    { x: 0, y: 10, acResistance: 1e-4, gmr: 0.004 },
    { x: 1, y: 10, acResistance: 1e-4, gmr: 0.004 },
  ])
  const live = [{ conductor: 0, value: complex(1) }]
  for (const [length, earths] of [
    [0, 10],
    [-1, 10],
    [1000, -1],
  ] as const) {
    expect(() => loopCurrents(series, live, [1], length, earths)).toThrow('a length')
  }
})
