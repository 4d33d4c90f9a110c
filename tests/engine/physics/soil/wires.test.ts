import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Electrode, Soil } from '../../../../src/engine/physics/soil'
import { solveElectrodes } from '../../../../src/engine/physics/soil'
import { evenSoil, rod, twoLayers } from './rods'

type Wire = Extract<Electrode, { kind: 'wire' }>
type Point = readonly [x: number, y: number, depth: number]

function wire(id: string, points: readonly Point[], radius = 0.005, isClosed = false): Wire {
  return { id, kind: 'wire', points: points.map(([x, y, depth]) => ({ x, y, depth })), radius, isClosed }
}

const straight = (length: number, depth: number, id = 'w', y = 0) =>
  wire(id, [
    [0, y, depth],
    [length, y, depth],
  ])

function ring(across: number, depth: number, sides: number): Wire {
  const corners = Array.from({ length: sides }, (_, i): Point => {
    const turn = (2 * Math.PI * i) / sides
    return [(across / 2) * Math.cos(turn), (across / 2) * Math.sin(turn), depth]
  })
  return wire('ring', corners, 0.005, true)
}

function star(arm: number, depth: number, arms: number): Electrode {
  const parts = Array.from({ length: arms }, (_, i) => {
    const turn = (2 * Math.PI * i) / arms
    const { points, radius } = wire('', [
      [0, 0, depth],
      [arm * Math.cos(turn), arm * Math.sin(turn), depth],
    ])
    return { kind: 'wire' as const, points, radius }
  })
  return { id: 'star', kind: 'joined', parts }
}

function resistanceOf(soil: Soil, electrode: Electrode): number {
  return solveElectrodes(soil, [electrode]).resistance[0]![0]!
}

function expectWithin(got: number, wanted: number, relative: number): void {
  expect(Math.abs(got / wanted - 1), `${got} against ${wanted}`).toBeLessThanOrEqual(relative)
}

// Dwight 1936, printed again in IEEE Std 142 table 13 (from memory): even leakage, so by the principle of least power
// each is a little above the true value; arm or half length L, wire radius a, depth s/2, 100 Ω·m
describe('Dwight’s formulas, from above', () => {
  it.each([
    [10, 0.5],
    [20, 0.5],
    [5, 0.8],
    [50, 0.6],
  ])('straight wire of %d m at %d m', (length, depth) => {
    const [half, s] = [length / 2, 2 * depth]
    const bracket =
      Math.log((4 * half) / 0.005) + Math.log((4 * half) / s) - 2 + s / (2 * half) - s ** 2 / (16 * half ** 2)
    const dwight = (100 / (4 * Math.PI * half)) * (bracket + s ** 4 / (512 * half ** 4))
    const got = resistanceOf(evenSoil(100), straight(length, depth))
    expectWithin(got, dwight, 0.012)
    expect(got).toBeLessThan(dwight)
  })

  it.each([
    [5, 0.5],
    [10, 0.6],
  ])('right angle, three and four arms of %d m at %d m', (arm, depth) => {
    const s = 2 * depth
    const logs = Math.log((2 * arm) / 0.005) + Math.log((2 * arm) / s)
    const angle = logs - 0.2373 + (0.2146 * s) / arm + 0.1035 * (s / arm) ** 2 - 0.0424 * (s / arm) ** 4
    const three = logs + 1.071 - (0.209 * s) / arm + 0.238 * (s / arm) ** 2 - 0.054 * (s / arm) ** 4
    const four = logs + 2.912 - (1.071 * s) / arm + 0.645 * (s / arm) ** 2 - 0.145 * (s / arm) ** 4
    const elbow = wire('l', [
      [arm, 0, depth],
      [0, 0, depth],
      [0, arm, depth],
    ])
    const below = (electrode: Electrode, dwight: number, most: number): void => {
      const got = resistanceOf(evenSoil(100), electrode)
      expectWithin(got, dwight, most)
      expect(got).toBeLessThan(dwight)
    }
    below(elbow, (100 / (4 * Math.PI * arm)) * angle, 0.012)
    // the more arms meet, the less their inner ends can give, and the worse even leakage is
    below(star(arm, depth, 3), (100 / (6 * Math.PI * arm)) * three, 0.025)
    below(star(arm, depth, 4), (100 / (8 * Math.PI * arm)) * four, 0.045)
  })

  it.each([
    [2, 0.5],
    [4, 0.6],
    [10, 0.8],
  ])('ring %d m across at %d m: a polygon comes to it with more sides', (across, depth) => {
    const dwight =
      (100 / (2 * Math.PI ** 2 * across)) * (Math.log((8 * across) / 0.01) + Math.log((4 * across) / (2 * depth)))
    const by = (sides: number) => resistanceOf(evenSoil(100), ring(across, depth, sides))
    expectWithin(by(24), dwight, 0.01)
    expect(by(8)).toBeGreaterThan(by(12))
    expect(by(12)).toBeGreaterThan(by(24))
  })

  it.each([
    [0.25, 1.5],
    [0.3, 1],
    [0.15, 2],
  ])('plate of radius %d m at %d m: ρ/8r + ρ/4πs (1 - 7r²/12s² + 33r⁴/40s⁴)', (radius, depth) => {
    const s = 2 * depth
    const image = 1 - (7 * radius ** 2) / (12 * s ** 2) + (33 * radius ** 4) / (40 * s ** 4)
    const dwight = 100 / (8 * radius) + (100 / (4 * Math.PI * s)) * image
    expectWithin(
      resistanceOf(evenSoil(100), { id: 'p', kind: 'disc', at: { x: 0, y: 0 }, radius, depth }),
      dwight,
      2e-3,
    )
  })
})

// An independent point-matching program (numpy: 120 pieces, potential at the middle of each, every image summed by itself
// to 1e-9) for resistance, mutual and two surface potentials per ampere of the first electrode
describe('two layers, against an independent program', () => {
  const slant = wire(
    's',
    [
      [0, 0, 0],
      [1.2, 0, 1.6],
    ],
    0.01,
  )
  it.each<readonly [string, Soil, readonly Electrode[], readonly number[], readonly number[]]>([
    ['wire in even soil', evenSoil(100), [straight(10, 0.5)], [14.8253], [5.3471, 3.055]],
    ['wire in the upper layer', twoLayers(100, 1, 400), [straight(10, 0.5)], [24.7885], [14.287, 9.7545]],
    ['wire in the lower layer', twoLayers(500, 0.3, 50), [straight(10, 0.5)], [7.9929], [2.7563, 1.5402]],
    ['slanted rod in even soil', evenSoil(100), [slant], [45.6176], [7.0043, 4.9425]],
    ['slanted rod through the boundary', twoLayers(100, 1, 300), [slant], [70.8089], [15.2026, 11.9347]],
    ['ring of eight sides', twoLayers(100, 1, 300), [ring(4, 0.5, 8)], [22.3252], [14.6631, 12.739]],
    [
      'rod through the boundary, wire beside it',
      twoLayers(100, 1, 300),
      [
        rod('r', 0, 1.8),
        wire('w', [
          [1, -3, 0.5],
          [1, 5, 0.5],
        ]),
      ],
      [79.5344, 14.757, 14.7569, 25.7032],
      [12.9186, 12.76],
    ],
    [
      'rod and slanted anchor, both through the boundary',
      twoLayers(100, 1, 300),
      [
        rod('r', 0, 1.8),
        wire(
          'w',
          [
            [3.5, 0, 0.1],
            [5, 0, 1.9],
          ],
          0.01,
        ),
      ],
      [81.0889, 9.5041, 9.5041, 66.2167],
      [13.6025, 12.0108],
    ],
  ])('%s', (_, soil, electrodes, ohm, surface) => {
    const system = solveElectrodes(soil, electrodes)
    system.resistance.flat().forEach((got, i) => expectWithin(got, ohm[i]!, 0.004))
    const places = [
      { x: 2, y: 1.5 },
      { x: 0, y: 3 },
    ]
    places.forEach((place, i) => expectWithin(system.mutualTo(place)[0]!, surface[i]!, 0.002))
  })
})

describe('limits', () => {
  const buried = straight(8, 0.5)

  it('no contrast, and a boundary very deep or very shallow, are even soil', () => {
    for (const electrode of [buried, ring(3, 0.6, 8), star(4, 0.5, 3)]) {
      const even = resistanceOf(evenSoil(100), electrode)
      expectWithin(resistanceOf(twoLayers(100, 0.8, 100.001), electrode), even, 1e-4)
      expectWithin(resistanceOf(twoLayers(100, 2000, 900), electrode), even, 0.004)
      expectWithin(resistanceOf(twoLayers(900, 1e-3, 100), electrode), even, 0.005)
    }
  })

  it('nothing jumps where the boundary passes through the wire: both sides then see 2ρ1ρ2/(ρ1 + ρ2) beside it', () => {
    const at = (thickness: number) => resistanceOf(twoLayers(100, thickness, 300), buried)
    // its image in the boundary falls together with it: ρ1 (1 + K) = ρ2 (1 - K) = 150 Ω·m
    expectWithin(at(0.5 - 1e-6), at(0.5 + 1e-6), 0.002)
    expect(at(0.4)).toBeGreaterThan(at(0.6))
    expect(at(0.6)).toBeGreaterThan(at(2))
  })

  it('a wire straight down is a rod, also a hair’s breadth aslant and from below', () => {
    for (const soil of [evenSoil(100), twoLayers(100, 1, 300), twoLayers(500, 0.4, 50)]) {
      const upright = resistanceOf(soil, rod('r', 0, 1.8))
      const down = (from: Point, to: Point) => resistanceOf(soil, wire('w', [from, to], 0.008))
      expectWithin(down([0, 0, 0], [0, 0, 1.8]), upright, 1e-9)
      expectWithin(down([0, 0, 0], [1e-4, 0, 1.8]), upright, 1e-4)
      expectWithin(down([1e-4, 0, 1.8], [0, 0, 0]), upright, 1e-4)
    }
  })

  it('a rod that is half driven is one of half the length: more ohm at every step out', () => {
    const soil = twoLayers(100, 1, 300)
    const ohm = [1.8, 1.35, 0.9, 0.45, 0.2, 0.05].map((length) => resistanceOf(soil, rod('r', 0, length)))
    for (const [i, value] of ohm.slice(1).entries()) expect(value).toBeGreaterThan(ohm[i]!)
    // 0.9 m in 100 Ω·m, Dwight 100 (ln(4·0.9/0.008) - 1)/2π0.9 = 90.4, the 300 Ω·m below it adds a little
    expect(ohm[2]).toBeGreaterThan(90)
    expect(ohm[2]).toBeLessThan(110)
  })

  it('far away a wire is a point of the lower layer: ρ2/2πr', () => {
    const system = solveElectrodes(twoLayers(100, 1, 300), [ring(4, 0.5, 6)])
    expectWithin(system.mutualTo({ x: 0, y: 900 })[0]!, 300 / (2 * Math.PI * 900), 0.005)
  })

  it('four pads of one vehicle: less than one pad, more than a quarter of it; apart by much, a quarter', () => {
    const pads = (apart: number): Electrode => ({
      id: 'truck',
      kind: 'joined',
      parts: [
        [0, 0],
        [apart, 0],
        [0, apart],
        [apart, apart],
      ].map(([x, y]) => ({ kind: 'disc' as const, at: { x: x!, y: y! }, radius: 0.25 })),
    })
    // ρ/4b = 100 Ω each; the others raise each by ρ/2πd Σ, d, d, √2 d
    const mutual = (apart: number) => (100 / (2 * Math.PI * apart)) * (2 + Math.SQRT1_2)
    for (const apart of [3, 30]) {
      expectWithin(resistanceOf(evenSoil(100), pads(apart)), (100 + mutual(apart)) / 4, 0.002)
    }
  })
})

describe('any mixture of shapes', () => {
  const layouts = fc.record({
    upper: fc.constantFrom(30, 100, 800),
    lower: fc.constantFrom(30, 100, 800),
    thickness: fc.constantFrom(0.4, 1, 2.5),
    depth: fc.constantFrom(0.3, 0.6, 1.2),
    lean: fc.constantFrom(0, 0.5, 1.5),
    turn: fc.integer({ min: 0, max: 7 }),
  })

  it('is reciprocal and positive, nothing rises above what drives it, and order, place and scale do not matter', () => {
    fc.assert(
      fc.property(layouts, ({ upper, lower, thickness, depth, lean, turn }) => {
        const angle = (turn * Math.PI) / 8
        const end: Point = [6 + 3 * Math.cos(angle), 3 * Math.sin(angle), depth]
        const electrodes: readonly Electrode[] = [
          wire('a', [[6, 0, depth], end]),
          wire(
            'b',
            [
              [-3, -2, 0.1],
              [-3 - lean, -2, 1.5],
            ],
            0.01,
          ),
          rod('c', 0, 1.8),
          { id: 'd', kind: 'disc', at: { x: 1, y: 4 }, radius: 0.25 },
          { id: 'e', kind: 'joined', parts: [{ ...disc(-1, -6) }, { ...disc(1, -6) }] },
        ]
        const soil = twoLayers(upper, thickness, lower)
        const { resistance } = solveElectrodes(soil, electrodes)
        for (const [i, row] of resistance.entries()) {
          for (const [j, ohm] of row.entries()) {
            expect(ohm).toBe(resistance[j]![i])
            expect(ohm).toBeGreaterThan(0)
            expect(ohm).toBeLessThanOrEqual(resistance[i]![i]!)
          }
        }
        const scaled = solveElectrodes(twoLayers(3 * upper, thickness, 3 * lower), electrodes).resistance
        expectWithin(scaled[0]![1]!, 3 * resistance[0]![1]!, 1e-9)
        const reversed = solveElectrodes(soil, [...electrodes].reverse()).resistance
        reversed.forEach((row, i) => row.forEach((ohm, j) => expectWithin(ohm, resistance[4 - i]![4 - j]!, 1e-9)))
      }),
      { numRuns: 20 },
    )

    function disc(x: number, y: number) {
      return { kind: 'disc' as const, at: { x, y }, radius: 0.3 }
    }
  })

  it('the surface over a wire is below it, and highest over its middle in height, not beyond its ends', () => {
    const system = solveElectrodes(twoLayers(100, 1, 300), [straight(10, 0.5)])
    const own = system.resistance[0]![0]!
    const over = (x: number, y: number) => system.mutualTo({ x, y })[0]!
    for (let x = 0; x <= 10; x += 0.37) {
      expect(over(x, 0)).toBeLessThan(own)
      expect(over(x, 0)).toBeGreaterThan(over(x, 1))
      expect(over(x, 1)).toBeGreaterThan(over(x, 3))
    }
    expect(over(-1, 0)).toBeLessThan(over(0.5, 0))
  })
})

describe('what cannot be is refused', () => {
  it.each<readonly [string, Electrode]>([
    ['2 points', wire('w', [[0, 0, 0.5]])],
    [
      '3 points',
      wire(
        'w',
        [
          [0, 0, 0.5],
          [1, 0, 0.5],
        ],
        0.005,
        true,
      ),
    ], // prettier-ignore
    [
      'a depth',
      wire('w', [
        [0, 0, -0.1],
        [1, 0, 0.5],
      ]),
    ], // prettier-ignore
    [
      'sides of two radii',
      wire('w', [
        [0, 0, 0.5],
        [0.005, 0, 0.5],
      ]),
    ], // prettier-ignore
    [
      'buried by its radius',
      wire('w', [
        [0, 0, 0],
        [5, 0, 0],
      ]),
    ], // prettier-ignore
    ['a part', { id: 'j', kind: 'joined', parts: [] }],
  ])('%s', (reason, electrode) => {
    expect(() => solveElectrodes(evenSoil(100), [electrode])).toThrow(reason)
  })

  it('a wire through a rod, and two discs of one vehicle on one spot', () => {
    const crossing = wire('w', [
      [-1, 0, 0.5],
      [1, 0, 0.5],
    ])
    expect(() => solveElectrodes(evenSoil(100), [rod('r', 0, 1.8), crossing])).toThrow('gap')
    const beneath = wire('w', [
      [-1, 0, 2],
      [1, 0, 2],
    ])
    expect(solveElectrodes(evenSoil(100), [rod('r', 0, 1.8), beneath]).resistance).toHaveLength(2)
    const spot = { kind: 'disc' as const, at: { x: 0, y: 0 }, radius: 0.2 }
    expect(() => solveElectrodes(evenSoil(100), [{ id: 'j', kind: 'joined', parts: [spot, spot] }])).toThrow('apart')
  })
})
