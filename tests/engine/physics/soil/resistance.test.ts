import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Electrode, Soil } from '../../../../src/engine/physics/soil'
import { discSelf, solveElectrodes } from '../../../../src/engine/physics/soil'
import { solveLeakage } from '../../../../src/engine/physics/soil/leakage'
import { segmentsOf } from '../../../../src/engine/physics/soil/segments'
import { layered } from '../../../../src/engine/physics/soil/soil'
import { evenSoil, rod, twoLayers } from './rods'

function resistanceOf(soil: Soil, electrode: Electrode): number {
  return solveElectrodes(soil, [electrode]).resistance[0]![0]!
}

function expectWithin(got: number, wanted: number, relative: number): void {
  expect(Math.abs(got / wanted - 1), `${got} against ${wanted}`).toBeLessThanOrEqual(relative)
}

describe('one rod in even soil', () => {
  // Dwight 1936 / IEEE Std 142: ρ/2πL (ln(8L/d) - 1) takes even leakage, which is about 1 % high
  it.each([
    ['3 m × 16 mm in 100 Ω·m', 100, 3, 0.008],
    ['2.4 m × 12 mm in 50 Ω·m', 50, 2.4, 0.006],
    ['1.2 m × 20 mm in 800 Ω·m', 800, 1.2, 0.01],
  ])('Dwight’s formula from above: %s', (_, resistivity, length, radius) => {
    const dwight = (resistivity / (2 * Math.PI * length)) * (Math.log((4 * length) / radius) - 1)
    const got = resistanceOf(evenSoil(resistivity), rod('r', 0, length, radius))
    expectWithin(got, dwight, 0.012)
    expect(got).toBeLessThan(dwight)
  })

  // IEEE Std 142 soil table, 10 ft × 5/8 in rod, printed in whole ohms (from memory)
  it.each([
    [23.7, 8],
    [40.6, 13],
    [158, 52],
    [940, 311],
  ])('IEEE 142 rod in %d Ω·m: %d Ω', (resistivity, ohm) => {
    const got = resistanceOf(evenSoil(resistivity), rod('r', 0, 3.048, 0.0079375))
    expect(Math.abs(got - ohm)).toBeLessThan(Math.max(0.5, 0.015 * ohm))
  })

  it('solid cylinder: Smythe 1962, C = (8 + 6.95 (l/a)^0.76) ε a for half-length l, halved by the surface', () => {
    // 1.8 m × 0.30 m: 8 + 6.95 · 12^0.76 = 53.94, R = 2 · 100/(53.94 · 0.15)
    const smythe = 200 / ((8 + 6.95 * 12 ** 0.76) * 0.15)
    expectWithin(resistanceOf(evenSoil(100), rod('r', 0, 1.8, 0.15)), smythe, 0.015)
  })
})

describe('rods through or above a boundary', () => {
  // independent method-of-moments solution with 60 segments, 3 m × 16 mm, boundary at 1 m
  it.each([
    [500, 100, 43.11],
    [100, 500, 80.57],
    [1000, 100, 44.81],
    [100, 1000, 100.72],
    [100, 100, 33.26],
  ])('%d over %d Ω·m: %d Ω', (upper, lower, ohm) => {
    expectWithin(resistanceOf(twoLayers(upper, 1, lower), rod('r', 0, 3)), ohm, 0.003)
  })

  it('1.8 m × 16 mm through 100 Ω·m to 1.0 m over 300: near 81 Ω, between the two even soils', () => {
    const got = resistanceOf(twoLayers(100, 1, 300), rod('r', 0, 1.8))
    expectWithin(got, 81, 0.005)
    expect(got).toBeGreaterThan(resistanceOf(evenSoil(100), rod('r', 0, 1.8)))
    expect(got).toBeLessThan(resistanceOf(evenSoil(300), rod('r', 0, 1.8)))
  })

  // Tagg 1964: ρ1/2πL [ln(4L/a) - 1 + Σ Kⁿ ln((2nh + L)/(2nh - L))], even leakage, so about 1 % high
  it.each([
    [100, 400, 4],
    [400, 100, 4],
    [100, 1000, 2.5],
  ])('rod of 2 m wholly in the upper layer, %d over %d Ω·m at %d m: Tagg’s series', (upper, lower, thickness) => {
    const length = 2
    const reflection = (lower - upper) / (lower + upper)
    let series = Math.log((4 * length) / 0.008) - 1
    for (let n = 1; n < 400; n++) {
      const depth = 2 * n * thickness
      series += reflection ** n * Math.log((depth + length) / (depth - length))
    }
    const tagg = (upper / (2 * Math.PI * length)) * series
    const got = resistanceOf(twoLayers(upper, thickness, lower), rod('r', 0, length))
    expectWithin(got, tagg, 0.012)
  })

  it('nothing jumps when the boundary passes the end or the top of a rod', () => {
    const at = (thickness: number, top = 0) =>
      resistanceOf(twoLayers(100, thickness, 300), rod('r', 0, 1.8, 0.008, top))
    for (const edge of [1.8 - 0.008, 1.8, 1.8 + 0.008]) expectWithin(at(edge - 1e-6), at(edge + 1e-6), 0.006)
    expectWithin(at(0.5 - 1e-6, 0.5), at(0.5 + 1e-6, 0.5), 0.006)
    expectWithin(at(1e-3), resistanceOf(evenSoil(300), rod('r', 0, 1.8)), 0.006)
    expectWithin(at(1000), resistanceOf(evenSoil(100), rod('r', 0, 1.8)), 0.001)
  })

  it('five times the segments change the answer by less than half a per cent, contrast 60 to 1 included', () => {
    const cases: readonly (readonly [Soil, number, number])[] = [
      [twoLayers(100, 1, 300), 1.8, 0.008],
      [twoLayers(3000, 0.1, 50), 1.8, 0.008],
      [twoLayers(10, 2, 5000), 2.4, 0.01],
      [evenSoil(100), 3, 0.008],
    ]
    for (const [soil, length, radius] of cases) {
      const ground = layered(soil)
      const electrodes = [rod('r', 0, length, radius)]
      const at = (perRod: number) =>
        solveLeakage(ground, electrodes, segmentsOf(ground, electrodes, perRod)).resistance[0]![0]!
      expectWithin(resistanceOf(soil, electrodes[0]!), at(60), 0.005)
    }
  })
})

describe('several electrodes', () => {
  it('far apart two rods see each other as points: ρ/2πd', () => {
    const { resistance } = solveElectrodes(evenSoil(100), [rod('a', 0, 1.8), rod('b', 200, 3)])
    expectWithin(resistance[0]![1]!, 100 / (2 * Math.PI * 200), 1e-3)
    expect(resistance[0]![1]).toBe(resistance[1]![0])
  })

  it('mutual of two flush rods with even leakage: ρ/2πL [asinh(2L/s) + s/2L - √(1 + (s/2L)²)]', () => {
    for (const apart of [1, 3.5, 10]) {
      const length = 1.8
      const ratio = apart / (2 * length)
      const closed = (100 / (2 * Math.PI * length)) * (Math.asinh(1 / ratio) + ratio - Math.sqrt(1 + ratio * ratio))
      const { resistance } = solveElectrodes(evenSoil(100), [rod('a', 0, length), rod('b', apart, length)])
      // even leakage is 1 to 2 % high close by: in truth more current leaves at the lower ends
      expectWithin(resistance[0]![1]!, closed, 0.02)
      expect(resistance[0]![1]!).toBeLessThan(closed)
    }
  })

  it('BS 7430 groups: Rn = R (1 + λa)/n, a = ρ/2πRs; λ = 1 for two, 1.66 for three in line, 2.71 for four in a square', () => {
    const apart = 10
    const groupOf = (electrodes: readonly Electrode[]): number => {
      const { resistance } = solveElectrodes(evenSoil(100), electrodes)
      // all at one volt: by symmetry close to equal currents, the mean of the matrix is exact to second order
      return resistance.flat().reduce((sum, ohm) => sum + ohm, 0) / electrodes.length ** 2
    }
    const single = resistanceOf(evenSoil(100), rod('r', 0, 1.8))
    const a = 100 / (2 * Math.PI * single * apart)
    const three = [rod('a', 0, 1.8), rod('b', apart, 1.8), rod('c', 2 * apart, 1.8)]
    const square = [...three.slice(0, 2), rod('c', 0, 1.8, 0.008, 0, apart), rod('d', apart, 1.8, 0.008, 0, apart)]
    expectWithin(groupOf(three.slice(0, 2)), (single * (1 + a)) / 2, 0.005)
    expectWithin(groupOf(three), (single * (1 + 1.66 * a)) / 3, 0.005)
    expectWithin(groupOf(square), (single * (1 + 2.71 * a)) / 4, 0.005)
  })

  it('a loose rod nearby lowers a rod’s resistance a little and never raises it', () => {
    const alone = resistanceOf(twoLayers(100, 1, 300), rod('a', 0, 1.8))
    const beside = solveElectrodes(twoLayers(100, 1, 300), [rod('a', 0, 1.8), rod('b', 0.3, 1.8)]).resistance[0]![0]!
    expect(beside).toBeLessThan(alone)
    expect(beside).toBeGreaterThan(0.9 * alone)
  })

  it('symmetric, and no electrode rises above the one that carries the current', () => {
    const place = fc.record({ x: fc.integer({ min: -4, max: 4 }), y: fc.integer({ min: -4, max: 4 }) })
    const layout = fc.uniqueArray(place, { minLength: 2, maxLength: 4, selector: ({ x, y }) => `${x}/${y}` })
    const soils = fc.record({
      upper: fc.constantFrom(20, 100, 1000),
      lower: fc.constantFrom(20, 100, 1000),
      thickness: fc.constantFrom(0.3, 1, 2.5),
    })
    fc.assert(
      fc.property(layout, soils, (places, { upper, lower, thickness }) => {
        const electrodes = places.map(({ x, y }, i): Electrode => {
          const at = { x: 2 * x, y: 2 * y }
          if (i % 3 === 2) return { id: `e${i}`, kind: 'disc', at, radius: 0.2 }
          return { id: `e${i}`, kind: 'rod', at, top: 0.2 * i, length: 1 + 0.4 * i, radius: i === 1 ? 0.15 : 0.008 }
        })
        const { resistance } = solveElectrodes(twoLayers(upper, thickness, lower), electrodes)
        for (const [i, row] of resistance.entries()) {
          for (const [j, ohm] of row.entries()) {
            expect(ohm).toBe(resistance[j]![i])
            expect(ohm).toBeGreaterThan(0)
            expect(ohm).toBeLessThanOrEqual(resistance[i]![i]!)
          }
        }
        // ohm follows the resistivities; another order only permutes the matrix
        const doubled = solveElectrodes(twoLayers(2 * upper, thickness, 2 * lower), electrodes).resistance
        const turned = solveElectrodes(twoLayers(upper, thickness, lower), [...electrodes].reverse()).resistance
        const last = electrodes.length - 1
        expectWithin(doubled[0]![1]!, 2 * resistance[0]![1]!, 1e-9)
        expectWithin(turned[last]![last - 1]!, resistance[0]![1]!, 1e-9)
      }),
      { numRuns: 25 },
    )
  })
})

describe('discs and concrete', () => {
  it('disc on even soil: ρ/4b; a foot of IEEE Std 80 (0.08 m) is 3.125 ρ', () => {
    const disc: Electrode = { id: 'd', kind: 'disc', at: { x: 1, y: 2 }, radius: 0.08 }
    expectWithin(resistanceOf(evenSoil(100), disc), 312.5, 1e-12)
    expectWithin(discSelf(evenSoil(100), 0.08), 312.5, 1e-12)
  })

  it('foot on a surface layer: IEEE Std 80 equation 27 for Cs, within its stated 5 %', () => {
    // Cs = 1 - 0.09 (1 - ρ/ρs)/(2hs + 0.09), annex B of IEEE Std 80-2000: 400 under 2500 Ω·m, 0.102 m gives 0.74
    for (const [below, surface, thickness] of [
      [400, 2500, 0.102],
      [100, 3000, 0.15],
      [50, 1000, 0.08],
    ] as const) {
      const derating = 1 - (0.09 * (1 - below / surface)) / (2 * thickness + 0.09)
      expectWithin(discSelf(twoLayers(surface, thickness, below), 0.08) / (surface / (4 * 0.08)), derating, 0.05)
    }
  })

  it('concrete butt: Fagan and Lee 1970, [ρc ln(D/d) + ρ(ln(8L/D) - 1)]/2πL, shell exactly in series', () => {
    const butt: Electrode = {
      id: 'b',
      kind: 'encased',
      at: { x: 0, y: 0 },
      top: 0,
      length: 2,
      radius: 0.15,
      coreRadius: 0.1,
      encasementResistivity: 50,
    }
    const fagan = (50 * Math.log(1.5) + 100 * (Math.log(16 / 0.3) - 1)) / (4 * Math.PI)
    const got = resistanceOf(evenSoil(100), butt)
    expectWithin(got, fagan, 0.03)
    const shell = (50 * Math.log(1.5)) / (4 * Math.PI)
    expectWithin(got - resistanceOf(evenSoil(100), rod('r', 0, 2, 0.15)), shell, 1e-9)
    // between two electrodes there is no shell
    const beside = (electrode: Electrode) =>
      solveElectrodes(evenSoil(100), [electrode, rod('o', 3, 2)]).resistance[0]![1]!
    expect(beside(butt)).toBe(beside(rod('r', 0, 2, 0.15)))
  })

  it('a plate deep in the lower layer knows that one only: ρ/8b and its image, ρ/4π·2d, against even soil', () => {
    const plate = (depth: number): Electrode => ({ id: 'p', kind: 'disc', at: { x: 0, y: 0 }, radius: 0.1, depth })
    const soil = twoLayers(100, 0.5, 300)
    expectWithin(resistanceOf(evenSoil(300), plate(8)), 300 / 0.8 + 300 / (4 * Math.PI * 16), 1e-4)
    expectWithin(resistanceOf(soil, plate(8)), resistanceOf(evenSoil(300), plate(8)), 0.01)
    // above the boundary the upper one counts most
    expectWithin(resistanceOf(twoLayers(100, 20, 300), plate(8)), resistanceOf(evenSoil(100), plate(8)), 0.01)
  })
})

describe('what cannot be is refused', () => {
  it('soil', () => {
    expect(() => solveElectrodes({ layers: [] }, [])).toThrow('one or two layers')
    expect(() => solveElectrodes(evenSoil(0), [])).toThrow('resistivity above 0')
    expect(() => solveElectrodes({ layers: [{ resistivity: 1 }, { resistivity: 2 }] }, [])).toThrow('thickness')
  })

  it('geometry', () => {
    const soil = evenSoil(100)
    expect(() => solveElectrodes(soil, [rod('a', 0, 2), rod('a', 1, 2)])).toThrow('id once')
    expect(() => solveElectrodes(soil, [rod('a', 0, 2), rod('b', 0.01, 2)])).toThrow('gap')
    expect(() => solveElectrodes(soil, [rod('a', 0, 2, 0.008, -1)])).toThrow('at or below the surface')
    expect(() => solveElectrodes(soil, [rod('a', 0, Number.NaN)])).toThrow('length')
    expect(() => solveElectrodes(soil, [rod('a', 0, 2, 0)])).toThrow('radius')
    expect(solveElectrodes(soil, []).resistance).toEqual([])
  })
})
