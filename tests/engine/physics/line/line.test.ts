import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { LineConductor } from '../../../../src/engine/physics/line'
import { capacitanceMatrix, kronReduce, seriesImpedance } from '../../../../src/engine/physics/line'

const FOOT = 0.3048
const MILE = 1609.344

function conductor(xFoot: number, yFoot: number, ohmPerMile: number, gmrFoot: number): LineConductor {
  return { x: xFoot * FOOT, y: yFoot * FOOT, acResistance: ohmPerMile / MILE, gmr: gmrFoot * FOOT }
}

/** Rows of [i, j, R, X] in ohm per mile as printed. */
function expectPrinted(matrix: ReturnType<typeof seriesImpedance>, printed: readonly (readonly number[])[]): void {
  for (const [i, j, resistance, reactance] of printed) {
    const z = matrix[i!]![j!]!
    // printed with four decimals from constants that were rounded before
    expect(Math.abs(z.re * MILE - resistance!)).toBeLessThan(1e-4)
    expect(Math.abs(z.im * MILE - reactance!)).toBeLessThan(3e-4)
    expect(matrix[j!]![i!]).toEqual(z)
  }
}

const PHASES = [
  [0, 29],
  [7, 29],
  [2.5, 29],
] as const

describe('Kersting, Distribution System Modeling and Analysis, problem 4.1 (IEEE 13-node configuration 601)', () => {
  const conductors = [...PHASES.map(([x, y]) => conductor(x, y, 0.1859, 0.0313)), conductor(4, 25, 0.592, 0.00814)]
  const primitive = seriesImpedance(60, 100, conductors)

  it('primitive matrix', () => {
    expectPrinted(primitive, [
      [0, 0, 0.2812, 1.383],
      [3, 3, 0.6873, 1.5465],
      [0, 1, 0.0953, 0.7266],
      [0, 2, 0.0953, 0.8515],
      [1, 2, 0.0953, 0.7802],
      [0, 3, 0.0953, 0.7524],
      [1, 3, 0.0953, 0.7674],
      [2, 3, 0.0953, 0.7865],
    ])
  })

  it('after Kron reduction of the neutral', () => {
    expectPrinted(kronReduce(primitive, 3), [
      [0, 0, 0.3375, 1.0478],
      [0, 1, 0.1535, 0.3849],
      [0, 2, 0.1559, 0.5017],
      [1, 1, 0.3414, 1.0348],
      [1, 2, 0.158, 0.4236],
      [2, 2, 0.3465, 1.0179],
    ])
  })
})

it('Kersting example 4.1, 336.4 kcmil 26/7 in the order b, c, a: same poles, z0 and z1 (from memory)', () => {
  const conductors = [
    conductor(0, 29, 0.306, 0.0244),
    conductor(2.5, 29, 0.306, 0.0244),
    conductor(7, 29, 0.306, 0.0244),
    conductor(4, 25, 0.592, 0.00814),
  ]
  const reduced = kronReduce(seriesImpedance(60, 100, conductors), 3)
  expectPrinted(reduced, [
    [0, 0, 0.4576, 1.078],
    [0, 1, 0.156, 0.5017],
    [0, 2, 0.1535, 0.3849],
    [1, 1, 0.4666, 1.0482],
    [1, 2, 0.158, 0.4236],
    [2, 2, 0.4615, 1.0651],
  ])
  const mean = (pick: (i: number, j: number) => boolean, part: 're' | 'im') => {
    const entries = reduced.flatMap((row, i) => row.filter((_, j) => pick(i, j)).map((z) => z[part] * MILE))
    return entries.reduce((sum, entry) => sum + entry, 0) / entries.length
  }
  const self = (i: number, j: number) => i === j
  const mutual = (i: number, j: number) => i !== j
  expect(mean(self, 're') + 2 * mean(mutual, 're')).toBeCloseTo(0.7735, 3)
  expect(mean(self, 'im') + 2 * mean(mutual, 'im')).toBeCloseTo(1.9373, 3)
  expect(mean(self, 're') - mean(mutual, 're')).toBeCloseTo(0.3061, 3)
  expect(mean(self, 'im') - mean(mutual, 'im')).toBeCloseTo(0.627, 3)
})

it('Carson’s earth resistance: π² f 10⁻⁷ Ω/m, 0.0493 Ω/km at 50 Hz, the same in every soil', () => {
  const pair = [conductor(0, 29, 0, 0.03), conductor(4, 29, 0, 0.03)]
  for (const earth of [10, 100, 3000]) {
    expect(seriesImpedance(50, earth, pair)[0]![1]!.re).toBeCloseTo(Math.PI * Math.PI * 50e-7, 10)
  }
  // complex depth of Deri and others 1981: X = ωμ0/2π Re ln(√((h+h+2p)² + x²)/x), known to lie 1 to 2 % higher
  const depth = Math.sqrt(100 / (2 * Math.PI * 50 * 4e-7 * Math.PI))
  const re = 2 * 29 * FOOT + 2 * depth * Math.SQRT1_2
  const im = -2 * depth * Math.SQRT1_2
  const apart = 4 * FOOT
  // |√(z² + x²)| with z = re + j im
  const size = ((re * re - im * im + apart * apart) ** 2 + (2 * re * im) ** 2) ** 0.25
  const reactance = 50 * 4e-7 * Math.PI * Math.log(size / apart)
  expect(Math.abs(seriesImpedance(50, 100, pair)[0]![1]!.im / reactance - 1)).toBeLessThan(0.02)
})

describe('capacitance', () => {
  it('one wire over ground: 2πε0/ln(2h/r); 10 mm radius at 10 m is 7.32 pF/m', () => {
    const [[farad]] = capacitanceMatrix([{ x: 0, y: 10, radius: 0.01 }]) as [[number]]
    expect(farad * 1e12).toBeCloseTo((2 * Math.PI * 8.8541878) / Math.log(2000), 5)
    expect(farad * 1e12).toBeCloseTo(7.319, 2)
  })

  it('two wires by hand: inverse of the two potential coefficients', () => {
    const unit = 1 / (2 * Math.PI * 8.8541878128e-12)
    const p = unit * Math.log(2000)
    const m = unit * Math.log(Math.sqrt(401) / 1)
    const matrix = capacitanceMatrix([
      { x: 0, y: 10, radius: 0.01 },
      { x: 1, y: 10, radius: 0.01 },
    ])
    expect(matrix[0]![0]! / (p / (p * p - m * m))).toBeCloseTo(1, 9)
    expect(matrix[0]![1]! / (-m / (p * p - m * m))).toBeCloseTo(1, 9)
  })

  it('a wire at 9 m, 10 m beside a live one at 10 m, floats at V P12/P11', () => {
    // the free wire has no charge: V2 = P12 q1, V1 = P11 q1
    const matrix = capacitanceMatrix([
      { x: 0, y: 10, radius: 0.0045 },
      { x: 10, y: 9, radius: 0.0045 },
    ])
    const floating = (-matrix[1]![0]! / matrix[1]![1]!) * 6351
    const byHand = (6351 * Math.log(Math.sqrt(100 + 361) / Math.sqrt(101))) / Math.log(20 / 0.0045)
    expect(floating / byHand).toBeCloseTo(1, 9)
  })

  it('Maxwell form: symmetric, positive diagonal, negative beside it, each row with something left to earth', () => {
    const places = fc.uniqueArray(
      fc.record({ x: fc.integer({ min: -5, max: 5 }), y: fc.integer({ min: 5, max: 12 }) }),
      {
        minLength: 2,
        maxLength: 6,
        selector: ({ x, y }) => `${x}/${y}`,
      },
    )
    fc.assert(
      fc.property(places, (wires) => {
        const matrix = capacitanceMatrix(wires.map(({ x, y }) => ({ x, y, radius: 0.006 })))
        for (const [i, row] of matrix.entries()) {
          for (const [j, farad] of row.entries()) {
            expect(farad).toBe(matrix[j]![i])
            if (i === j) expect(farad).toBeGreaterThan(0)
            else expect(farad).toBeLessThan(0)
          }
          expect(row.reduce((sum, farad) => sum + farad, 0)).toBeGreaterThan(0)
        }
      }),
    )
  })
})

describe('what cannot be is refused', () => {
  it('conductors in the ground or in each other, no frequency, too many to keep', () => {
    expect(() => capacitanceMatrix([{ x: 0, y: -1, radius: 0.01 }])).toThrow('above ground')
    const wire = conductor(0, 29, 0.3, 0.02)
    expect(() => seriesImpedance(60, 100, [wire, wire])).toThrow('apart')
    expect(() => seriesImpedance(0, 100, [wire])).toThrow('frequency')
    expect(() => seriesImpedance(60, 0, [wire])).toThrow('an earth')
    for (const keep of [2, -1, 0.5]) {
      expect(() => kronReduce(seriesImpedance(60, 100, [wire]), keep)).toThrow('to keep')
    }
    expect(kronReduce(seriesImpedance(60, 100, [wire]), 0)).toEqual([])
  })

  it('a wire on the ground, without thickness or without a place', () => {
    const radius = 0.01
    for (const wrong of [
      { x: 0, y: radius, radius },
      { x: 0, y: 10, radius: 0 },
      { x: Number.NaN, y: 10, radius },
      { x: 0, y: Number.POSITIVE_INFINITY, radius },
    ]) {
      expect(() => capacitanceMatrix([wrong])).toThrow('above ground')
    }
  })

  it('two wires that touch by the thicker one’s radius', () => {
    const beside = (apart: number) => [
      { x: 0, y: 10, radius: 0.001 },
      { x: apart, y: 10, radius: 0.02 },
    ]
    expect(() => capacitanceMatrix(beside(0.02))).toThrow('apart')
    expect(() => capacitanceMatrix([...beside(0.02)].reverse())).toThrow('apart')
    expect(capacitanceMatrix(beside(0.5))).toHaveLength(2)
  })
})
