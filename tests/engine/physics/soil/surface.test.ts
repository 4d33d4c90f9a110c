import { describe, expect, it } from 'vitest'
import { complex } from '../../../../src/engine/math/complex'
import { discMutual, discSelf, solveElectrodes } from '../../../../src/engine/physics/soil'
import { mutualOhm } from '../../../../src/engine/physics/soil/layeredKernel'
import { solveLeakage } from '../../../../src/engine/physics/soil/leakage'
import { segmentsOf } from '../../../../src/engine/physics/soil/segments'
import { layered } from '../../../../src/engine/physics/soil/soil'
import { surfaceOfSegment } from '../../../../src/engine/physics/soil/surfaceField'
import { evenSoil, rod, twoLayers } from './rods'

function expectWithin(got: number, wanted: number, relative: number): void {
  expect(Math.abs(got / wanted - 1), `${got} against ${wanted}`).toBeLessThanOrEqual(relative)
}

describe('a point source in two layers', () => {
  // Volt per ampere from a point at one depth to a point at another, boundary at 1 m: independent numerical integration
  // of the Hankel transform (three boundary conditions solved per wave number, 20 digits), no images in it.
  it.each([
    [100, 300, 2, 0, 0.5, 16.2287141],
    [100, 300, 2, 0, 1.5, 14.1812204],
    [100, 300, 3.5, 0.4, 1.6, 10.0871893],
    [100, 300, 1, 1.3, 1.8, 21.5880227],
    [100, 300, 2, 0.2, 0.9, 15.8755237],
    [100, 300, 30, 0, 1.5, 1.57488319],
    [500, 50, 2, 0, 0.5, 7.65575355],
    [500, 50, 2, 0, 1.5, 3.88432606],
    [500, 50, 3.5, 0.4, 1.6, 2.28675092],
    [500, 50, 1, 1.3, 1.8, 6.02086256],
    [500, 50, 2, 0.2, 0.9, 5.0179477],
    [500, 50, 30, 0, 1.5, 0.265351373],
  ])('%d over %d Ω·m, %d m away, depths %d and %d m', (upper, lower, apart, seenDepth, sourceDepth, ohm) => {
    const soil = layered(twoLayers(upper, 1, lower))
    const point = (electrode: number, x: number, depth: number) => ({
      electrode,
      x,
      y: 0,
      radius: 1e-4,
      depth,
      length: 1e-4,
      isLower: depth > 1,
      isDisc: false,
    })
    const source = point(0, 0, sourceDepth)
    const seen = point(1, apart, seenDepth)
    expectWithin(mutualOhm(soil, source, seen), ohm, 2e-5)
    expect(mutualOhm(soil, seen, source)).toBeCloseTo(mutualOhm(soil, source, seen), 12)
    if (seenDepth === 0) {
      const surface = new Float64Array(2)
      surfaceOfSegment(soil, source, apart, surface)
      expectWithin(surface[0]!, ohm, 2e-5)
    }
  })
})

describe('surface potential', () => {
  it('MIL-HDBK-419A table 2-7: 10 ft × 1 in rod, 10 Ω·m, 20 kA, a pace of 0.91 m away from it 41.4 kV, 0.68 of the rod’s', () => {
    const system = solveElectrodes(evenSoil(10), [rod('r', 0, 3.048, 0.0127)])
    const rise = 20000 * system.resistance[0]![0]!
    const oneYard = system.potentialAt({ x: 0, y: 0.9144 }, [complex(20000)]).re
    expectWithin(rise - oneYard, 41400, 0.03)
    expectWithin((rise - oneYard) / rise, 0.68, 0.03)
  })

  it('flush rod with even leakage: ρI/2πL ln((L + √(L² + x²))/x)', () => {
    const system = solveElectrodes(evenSoil(100), [rod('r', 0, 1.8)])
    for (const x of [0.5, 1, 3, 10]) {
      const closed = (100 / (2 * Math.PI * 1.8)) * Math.log((1.8 + Math.sqrt(1.8 * 1.8 + x * x)) / x)
      // even leakage is up to 3 % high close by: in truth more current leaves at the lower end
      expectWithin(system.mutualTo({ x, y: 0 })[0]!, closed, 0.035)
      expect(system.mutualTo({ x, y: 0 })[0]!).toBeLessThan(closed)
    }
  })

  it('a pace at 3 m from a 1.8 m rod with 70 A, 100 Ω·m to 1.0 m over 300: about 161 V', () => {
    const system = solveElectrodes(twoLayers(100, 1, 300), [rod('r', 0, 1.8)])
    const at = (x: number) => system.potentialAt({ x, y: 0 }, [complex(70)]).re
    expectWithin(at(3) - at(4), 161, 0.01)
  })

  it('far away only the total current and the lower layer count: ρ2 I/2πr', () => {
    for (const [upper, lower] of [
      [100, 300],
      [500, 50],
      [50, 1000],
    ] as const) {
      const system = solveElectrodes(twoLayers(upper, 0.5, lower), [rod('a', 0, 1.8), rod('b', 2, 1.8)])
      const far = system.potentialAt({ x: 1500, y: 0 }, [complex(3), complex(2, 1)])
      // counted from the middle of the current the first correction is of order (2 m/1500 m)²
      expectWithin(far.re, (lower / (2 * Math.PI)) * (3 / 1500 + 2 / 1498), 0.005)
      expectWithin(far.im, (lower / (2 * Math.PI)) * (1 / 1498), 0.005)
      const farther = system.potentialAt({ x: 0, y: 50000 }, [complex(3), complex(2)])
      expectWithin(farther.re, ((lower / (2 * Math.PI)) * 5) / 50000, 0.005)
    }
  })

  it('falls all the way from the rod outwards, and nowhere stands above it', () => {
    for (const soil of [evenSoil(100), twoLayers(100, 1, 300), twoLayers(1000, 0.3, 50)]) {
      const system = solveElectrodes(soil, [rod('r', 0, 1.8)])
      let last = system.resistance[0]![0]!
      expectWithin(system.mutualTo({ x: 0, y: 0 })[0]!, last, 0.003)
      for (let x = 0.01; x < 3000; x *= 1.07) {
        const here = system.mutualTo({ x, y: 0 })[0]!
        expect(here).toBeLessThanOrEqual(last)
        expect(here).toBeGreaterThan(0)
        last = here
      }
    }
  })

  it('on top of a buried rod the surface stays below it', () => {
    const system = solveElectrodes(evenSoil(100), [rod('r', 0, 1.8, 0.008, 0.5)])
    expect(system.mutualTo({ x: 0, y: 0 })[0]!).toBeLessThan(0.6 * system.resistance[0]![0]!)
  })

  it('a loose rod takes the potential of the ground around it', () => {
    const system = solveElectrodes(twoLayers(100, 1, 300), [rod('a', 0, 1.8), rod('b', 3.5, 1.8, 0.15)])
    const beside = system.potentialAt({ x: 3.5, y: 0 }, [complex(1), complex(0)]).re
    expectWithin(beside, system.resistance[1]![0]!, 0.05)
    const alone = solveElectrodes(twoLayers(100, 1, 300), [rod('a', 0, 1.8)]).mutualTo({ x: 3.5, y: 0 })[0]!
    expectWithin(system.resistance[1]![0]!, alone, 0.06)
  })

  it('the tables follow the exact sums to a thousandth, and slopes follow the potential', () => {
    const soil = twoLayers(100, 1, 300)
    const electrodes = [
      rod('a', 0, 1.8),
      {
        id: 'b',
        kind: 'encased' as const,
        at: { x: 3.5, y: 0 },
        top: 0,
        length: 1.8,
        radius: 0.15,
        coreRadius: 0.12,
        encasementResistivity: 200,
      },
      { id: 'c', kind: 'disc' as const, at: { x: -2, y: 3 }, radius: 0.25 },
      rod('d', 1, 1.2, 0.01, 0.6, -4),
    ]
    const system = solveElectrodes(soil, electrodes)
    const ground = layered(soil)
    const segments = segmentsOf(ground, electrodes)
    const { share } = solveLeakage(ground, electrodes, segments)
    const exact = (x: number, y: number, driven: number): number => {
      const value = new Float64Array(2)
      return segments.reduce((sum, segment, s) => {
        const apart = Math.sqrt((x - segment.x) * (x - segment.x) + (y - segment.y) * (y - segment.y))
        if (segment.isDisc) return sum + share[driven]![s]! * discFieldOf(x - segment.x, y - segment.y)
        surfaceOfSegment(ground, segment, apart, value)
        return sum + share[driven]![s]! * value[0]!
      }, 0)
    }
    // field of the disc alone, from a system of its own
    const discAlone = solveElectrodes(soil, [{ id: 'c', kind: 'disc', at: { x: 0, y: 0 }, radius: 0.25 }])
    const discFieldOf = (x: number, y: number): number => discAlone.mutualTo({ x, y })[0]!
    for (let k = 0; k < 300; k++) {
      const turn = 2.399963 * k
      const reach = 0.02 * 1.035 ** k
      const x = 1.7 + reach * Math.cos(turn)
      const y = reach * Math.sin(turn)
      if (electrodes.some(({ at, radius }) => Math.hypot(at.x - x, at.y - y) < 1.2 * radius)) continue
      const mutual = system.mutualTo({ x, y })
      for (const driven of [0, 1, 2, 3]) expectWithin(mutual[driven]!, exact(x, y, driven), 1e-3)
      const currents = [complex(70), complex(4, 1), complex(-2), complex(0.5)]
      const step = 1e-4 * (1 + reach)
      const slope = system.slopeAt({ x, y }, currents)
      const eastward =
        system.potentialAt({ x: x + step, y }, currents).re - system.potentialAt({ x: x - step, y }, currents).re
      const northward =
        system.potentialAt({ x, y: y + step }, currents).re - system.potentialAt({ x, y: y - step }, currents).re
      const size = Math.hypot(slope.x.re, slope.y.re)
      expect(Math.abs(slope.x.re - eastward / (2 * step))).toBeLessThan(2e-3 * size)
      expect(Math.abs(slope.y.re - northward / (2 * step))).toBeLessThan(2e-3 * size)
    }
  })

  it('a radial table is the rod’s own field', () => {
    const system = solveElectrodes(twoLayers(100, 1, 300), [rod('a', 0, 1.8)])
    const { at, radii, ohm } = system.radialTables(0)[0]!
    expect(at).toEqual({ x: 0, y: 0 })
    expect(radii[0]).toBe(0.008)
    expect(radii.length).toBe(ohm.length)
    for (const [k, radius] of radii.entries()) {
      if (k > 0) expectWithin(ohm[k]!, system.mutualTo({ x: 0, y: radius })[0]!, 1e-9)
    }
    expect(() => system.radialTables(1)).toThrow('an electrode')
  })

  it('asks for as many currents as there are electrodes', () => {
    const system = solveElectrodes(evenSoil(100), [rod('a', 0, 1.8)])
    expect(() => system.potentialAt({ x: 1, y: 0 }, [])).toThrow('1 electrode currents')
  })
})

describe('discs', () => {
  it('V(r) = ρI asin(b/r)/2πb outside, ρI/4b on the disc', () => {
    const system = solveElectrodes(evenSoil(100), [{ id: 'd', kind: 'disc', at: { x: 0, y: 0 }, radius: 0.5 }])
    expectWithin(system.mutualTo({ x: 0.2, y: 0 })[0]!, 50, 1e-9)
    for (const r of [0.6, 1, 4]) {
      expectWithin(system.mutualTo({ x: 0, y: r })[0]!, (100 / (2 * Math.PI * 0.5)) * Math.asin(0.5 / r), 1e-9)
    }
  })

  it('two feet: near ρ/2πd, always below the foot’s own, and the same from an electrode pair', () => {
    const soil = twoLayers(100, 1, 300)
    const a = { x: 0, y: 0 }
    expectWithin(discMutual(evenSoil(100), a, { x: 1, y: 0 }, 0.08), 100 / (2 * Math.PI), 0.003)
    for (const apart of [0, 0.05, 0.16, 0.3, 1]) {
      expect(discMutual(soil, a, { x: apart, y: 0 }, 0.08)).toBeLessThan(discSelf(soil, 0.08))
    }
    const pair = solveElectrodes(soil, [
      { id: 'l', kind: 'disc', at: a, radius: 0.08 },
      { id: 'r', kind: 'disc', at: { x: 0.3, y: 0 }, radius: 0.08 },
    ])
    expectWithin(pair.resistance[0]![1]!, discMutual(soil, a, { x: 0.3, y: 0 }, 0.08), 1e-9)
  })

  it('a foot as a port sees what a foot as an electrode sees', () => {
    const soil = twoLayers(100, 1, 300)
    const foot = { x: 2, y: 1 }
    const port = solveElectrodes(soil, [rod('a', 0, 1.8)]).mutualTo(foot)[0]!
    const system = solveElectrodes(soil, [rod('a', 0, 1.8), { id: 'f', kind: 'disc', at: foot, radius: 0.08 }])
    expectWithin(system.resistance[1]![0]!, port, 0.002)
  })
})
