import { describe, expect, it } from 'vitest'
import { complex, magnitude, type Complex } from '../../../../src/engine/math/complex'
import type { Electrode } from '../../../../src/engine/physics/soil'
import { solveElectrodes } from '../../../../src/engine/physics/soil'
import { evenSoil, rod, twoLayers } from './rods'

const electrodes: readonly Electrode[] = [
  rod('a', 0, 1.8),
  rod('b', 4, 2.4, 0.15),
  { id: 'd', kind: 'disc', at: { x: -3, y: 2 }, radius: 0.25 },
  {
    id: 'w',
    kind: 'wire',
    radius: 0.005,
    points: [
      { x: -5, y: -5, depth: 0.5 },
      { x: 5, y: -4, depth: 0.5 },
    ],
  },
]
const currents = [complex(70, -5), complex(-3, 2), complex(1, 4), complex(12, 1)]
const system = solveElectrodes(twoLayers(100, 1, 300), electrodes)
/** Drawn anew for each test. */
const drawn = () => system.drivenBy(currents, 40)

/** A rod in even soil, 20 m around it. */
const drivenRod = (current: Complex) => solveElectrodes(evenSoil(100), [rod('r', 0, 1.8)]).drivenBy([current], 20)

function spiral(count: number) {
  return Array.from({ length: count }, (_, k) => {
    const reach = 0.3 * 1.02 ** k
    return { x: 0.4 + reach * Math.cos(2.4 * k), y: reach * Math.sin(2.4 * k) }
  })
}

describe('the surface under one set of currents', () => {
  it('is the sum of all electrodes, to 2e-4 of the highest, near and far', () => {
    const surface = drawn()
    const highest = magnitude(system.potentialAt({ x: 0, y: 0 }, currents))
    for (const place of spiral(250)) {
      if (Math.hypot(place.x - 4, place.y) < 0.16) continue
      const [quick, plain] = [surface.potentialAt(place), system.potentialAt(place, currents)]
      expect(Math.abs(quick.re - plain.re)).toBeLessThan(2e-4 * highest)
      expect(Math.abs(quick.im - plain.im)).toBeLessThan(2e-4 * highest)
    }
  })

  it('ten electrodes’ distances beyond its table it falls as one over the distance', () => {
    const surface = drawn()
    for (const [x, y] of [
      [300, 40],
      [-2000, 900],
    ] as const) {
      const [quick, plain] = [surface.potentialAt({ x, y }), system.potentialAt({ x, y }, currents)]
      expect(Math.abs(quick.re / plain.re - 1)).toBeLessThan(0.03)
    }
  })

  it('a map is the same places row by row', () => {
    const surface = drawn()
    const grid = { from: { x: -6, y: -6 }, step: 0.75, columns: 17, rows: 15 }
    const { re, im } = surface.map(grid)
    for (let row = 0; row < grid.rows; row++) {
      for (let column = 0; column < grid.columns; column++) {
        const at = surface.potentialAt({ x: -6 + 0.75 * column, y: -6 + 0.75 * row })
        expect(re[row * grid.columns + column]).toBeCloseTo(at.re, 9)
        expect(im[row * grid.columns + column]).toBeCloseTo(at.im, 9)
      }
    }
  })

  it('slopes point where the exact ones do, within a degree or two', () => {
    const surface = drawn()
    for (const place of spiral(150)) {
      if (electrodes.some((it) => 'at' in it && Math.hypot(it.at.x - place.x, it.at.y - place.y) < 0.4)) continue
      const [quick, plain] = [surface.slopeAt(place), system.slopeAt(place, currents)]
      const size = Math.hypot(plain.x.re, plain.y.re)
      expect(Math.hypot(quick.x.re - plain.x.re, quick.y.re - plain.y.re)).toBeLessThan(0.04 * size)
      const turned = Math.hypot(plain.x.im, plain.y.im)
      expect(Math.hypot(quick.x.im - plain.x.im, quick.y.im - plain.y.im)).toBeLessThan(0.04 * turned + 2e-3 * size)
    }
  })

  it('past its table a slope is that of one over the distance: a quarter at twice the distance, and points home', () => {
    const rise = (at: { x: number; y: number }) => drivenRod(complex(3, -2)).slopeAt(at)
    const [near, far] = [rise({ x: 60, y: 80 }), rise({ x: 120, y: 160 })]
    for (const [one, other] of [
      [near.x.re, far.x.re],
      [near.y.re, far.y.re],
      [near.x.im, far.x.im],
      [near.y.im, far.y.im],
    ] as const) {
      expect(one / other).toBeCloseTo(4, 9)
    }
    // -ρI/2πr² along the way out, by parts of 0.6 and 0.8; the table is straight lines, so within some per cent
    const size = -100 / (2 * Math.PI * 100 * 100)
    expect(near.x.re / (3 * 0.6 * size)).toBeCloseTo(1, 1)
    expect(near.y.re / (3 * 0.8 * size)).toBeCloseTo(1, 1)
    expect(near.x.im / (-2 * 0.6 * size)).toBeCloseTo(1, 1)
    expect(near.y.im / (-2 * 0.8 * size)).toBeCloseTo(1, 1)
  })

  it('within a rod’s radius nothing rises, and the whole of it is as high', () => {
    const driven = drivenRod(complex(3, -2))
    const nothing = { re: 0, im: 0 }
    expect(driven.slopeAt({ x: 0.004, y: 0 })).toEqual({ x: nothing, y: nothing })
    expect(driven.potentialAt({ x: 0.004, y: 0.001 })).toEqual(driven.potentialAt({ x: 0, y: 0 }))
  })

  it('the least reach still reaches two radii', () => {
    const small = solveElectrodes(evenSoil(100), [rod('r', 0, 1.8)]).drivenBy([complex(1)], 1e-6)
    const wide = drivenRod(complex(1))
    for (const x of [0.009, 0.012, 0.0155]) {
      expect(small.potentialAt({ x, y: 0 }).re / wide.potentialAt({ x, y: 0 }).re).toBeCloseTo(1, 9)
    }
  })

  it('a map that goes past its reach keeps to numbers: the height of the edge', () => {
    const driven = drivenRod(complex(3, -2))
    const { re, im } = driven.map({ from: { x: 0, y: 0 }, step: 30, columns: 4, rows: 3 })
    const edge = re[11]!
    expect(edge / ((3 * 100) / (2 * Math.PI * 20))).toBeGreaterThan(0.9)
    expect(edge / ((3 * 100) / (2 * Math.PI * 20))).toBeLessThan(1.01)
    expect([...re.slice(1)]).toEqual(Array(11).fill(edge))
    for (const volt of im.slice(1)) expect(volt / edge).toBeCloseTo(-2 / 3, 9)
  })

  it('one ampere into a rod in even soil: ρ/2πL asinh(L/x), as if leakage were even, 3 % high near it', () => {
    const alone = solveElectrodes(evenSoil(100), [rod('r', 0, 1.8)]).drivenBy([complex(1)], 20)
    for (const x of [0.5, 1, 3, 10]) {
      const closed = (100 / (2 * Math.PI * 1.8)) * Math.asinh(1.8 / x)
      const got = alone.potentialAt({ x, y: 0 }).re
      expect(got).toBeLessThan(closed)
      expect(got).toBeGreaterThan(0.965 * closed)
    }
  })

  it('a disc is at one potential over its whole area', () => {
    const disc = solveElectrodes(evenSoil(100), [{ id: 'd', kind: 'disc', at: { x: 0, y: 0 }, radius: 0.5 }])
    const driven = disc.drivenBy([complex(1)], 20)
    for (const x of [0, 0.2, 0.49]) expect(driven.potentialAt({ x, y: 0 }).re / 50).toBeCloseTo(1, 2)
    for (const x of [0.52, 0.7, 3]) {
      expect(driven.potentialAt({ x, y: 0 }).re / ((100 / Math.PI) * Math.asin(0.5 / x))).toBeCloseTo(1, 3)
    }
  })

  it('asks for as many currents as there are electrodes', () => {
    expect(() => system.drivenBy([complex(1)], 10)).toThrow('4 electrode currents')
  })
})
