// What raises the surface, against the same segments taken one by one; a buried disc that is as good as a point, against
// an integral without images (surface.test.ts tells how it was had).

import { describe, expect, it } from 'vitest'
import type { Electrode } from '../../../../src/engine/physics/soil'
import { solveLeakage } from '../../../../src/engine/physics/soil/leakage'
import { discField, radialField, scaledField, type RadialField } from '../../../../src/engine/physics/soil/radialField'
import { segmentsOf, type Segment } from '../../../../src/engine/physics/soil/segments'
import { layered } from '../../../../src/engine/physics/soil/soil'
import { discOhm, discSlope, surfaceOfSegment } from '../../../../src/engine/physics/soil/surfaceField'
import { sourcesOf } from '../../../../src/engine/physics/soil/surfaceSources'
import { evenSoil, rod, twoLayers } from './rods'

const ground = layered(twoLayers(100, 1, 300))

function potential(field: RadialField, apart: number, count: number): readonly number[] {
  const into = new Float64Array(count).fill(7)
  field.addPotential(apart, into)
  return [...into].map((ohm) => ohm - 7)
}

function slope(field: RadialField, apart: number, count: number): readonly number[] {
  const into = new Float64Array(count).fill(7)
  field.addSlope(apart, into)
  return [...into].map((ohm) => ohm - 7)
}

describe('a buried disc', () => {
  const small = (depth: number) => ({ radius: 1e-3, depth, isLower: depth > 1 })

  it.each([
    [100, 300, 2, 0.5, 16.2287141],
    [100, 300, 2, 1.5, 14.1812204],
    [100, 300, 30, 1.5, 1.57488319],
    [500, 50, 2, 0.5, 7.65575355],
    [500, 50, 2, 1.5, 3.88432606],
    [500, 50, 30, 1.5, 0.265351373],
  ])('%d over %d Ω·m, %d m away, %d m deep: as a point', (upper, lower, apart, depth, ohm) => {
    const soil = layered(twoLayers(upper, 1, lower))
    expect(discOhm(soil, small(depth), apart) / ohm).toBeCloseTo(1, 4)
    const rise = (discOhm(soil, small(depth), apart + 1e-3) - discOhm(soil, small(depth), apart - 1e-3)) / 2e-3
    expect(discSlope(soil, small(depth), apart) / rise).toBeCloseTo(1, 4)
  })

  it('above it the surface falls smoothly from its highest point: no rim', () => {
    const plate: Electrode = { id: 'p', kind: 'disc', at: { x: 3, y: 4 }, radius: 0.4, depth: 0.3 }
    const segments = segmentsOf(ground, [plate])
    const [source] = sourcesOf(ground, segments, [Float64Array.of(1)], 0)
    expect(source).toMatchObject({ x: 3, y: 4, rim: 0 })
    const at = (apart: number): number => potential(source!.field, apart, 1)[0]!
    expect(at(0)).toBeGreaterThan(at(0.2))
    expect(slope(source!.field, 0.2, 1)[0]! / ((at(0.2001) - at(0.1999)) / 2e-4)).toBeCloseTo(1, 5)
    expect(at(0.2)).toBeCloseTo(discOhm(ground, { radius: 0.4, depth: 0.3, isLower: false }, 0.2), 9)
  })

  it('the table of one on even soil: ρ asin(b/r)/2πb, from its rim to 2 km and no further than a step', () => {
    const { radii, ohm } = discField(layered(evenSoil(100)), { radius: 0.4, depth: 0, isLower: false })
    expect(radii[0]).toBe(0.4)
    const last = radii[radii.length - 1]!
    expect(last).toBeGreaterThanOrEqual(2000)
    expect(last).toBeLessThan(2000 * Math.exp(0.4))
    for (const [k, apart] of radii.entries()) {
      if (k > 0) expect(apart / radii[k - 1]!).toBeCloseTo(Math.exp(0.4), 9)
      expect(ohm[0]![k]! / ((100 * Math.asin(0.4 / apart)) / (2 * Math.PI * 0.4))).toBeCloseTo(1, 9)
    }
  })

  it('on the surface it has a rim, inside which nothing rises', () => {
    const pad: Electrode = { id: 'p', kind: 'disc', at: { x: 3, y: 4 }, radius: 0.4 }
    const [source] = sourcesOf(ground, segmentsOf(ground, [pad]), [Float64Array.of(1)], 0)
    expect(source!.rim).toBe(0.4)
    expect(slope(source!.field, 0.39, 1)).toEqual([0])
    expect(slope(source!.field, 0.41, 1)[0]).toBeLessThan(0)
  })
})

describe('the table of an upright', () => {
  const pieces = segmentsOf(ground, [rod('a', 0, 1.8)])
  const share = [1, 2].map((j) => Float64Array.from(pieces, (_, s) => j / (s + 1)))
  const field = radialField(ground, pieces, share)
  const exact = (apart: number): readonly number[] => {
    const one = new Float64Array(2)
    return share.map((currents) =>
      pieces.reduce((sum, piece, s) => {
        surfaceOfSegment(ground, piece, apart, one)
        return sum + currents[s]! * one[0]!
      }, 0),
    )
  }

  it('is exact at its points, and between them to a thousandth, for each electrode that drives it', () => {
    for (const [k, radius] of field.radii.entries()) {
      expect(field.ohm.map((column) => column[k]! / exact(radius)[field.ohm.indexOf(column)]!)).toEqual([
        expect.closeTo(1, 9),
        expect.closeTo(1, 9),
      ])
    }
    for (let apart = 0.0081; apart < 1900; apart *= 1.17) {
      const [got, wanted] = [potential(field, apart, 2), exact(apart)]
      for (const j of [0, 1]) expect(Math.abs(got[j]! / wanted[j]! - 1)).toBeLessThan(3e-4)
    }
  })

  it('its slope is that of its potential, nothing inside its radius', () => {
    for (let apart = 0.009; apart < 1900; apart *= 1.31) {
      const step = 1e-5 * apart
      const [more, less] = [potential(field, apart + step, 2), potential(field, apart - step, 2)]
      const got = slope(field, apart, 2)
      // where two cubics meet the second derivative jumps; within one the difference is exact to 1e-5
      for (const j of [0, 1]) expect((got[j]! * 2 * step) / (more[j]! - less[j]!)).toBeCloseTo(1, 3)
    }
    for (const apart of [0, 1e-6, 0.007]) {
      expect(slope(field, apart, 2)).toEqual([0, 0])
      const inside = potential(field, apart, 2)
      for (const j of [0, 1]) expect(inside[j]! / exact(0.008)[j]!).toBeCloseTo(1, 9)
    }
  })

  it('past it, from 2 km on, it is a point: half at twice the distance', () => {
    const [near, far] = [potential(field, 4000, 2), potential(field, 8000, 2)]
    for (const j of [0, 1]) {
      expect(near[j]! / far[j]!).toBeCloseTo(2, 12)
      expect(near[j]! / exact(4000)[j]!).toBeCloseTo(1, 3)
    }
    const last = field.radii[field.radii.length - 1]!
    expect(last).toBeGreaterThanOrEqual(2000)
    expect(last).toBeLessThan(2000 * Math.exp(0.4))
    // at its end the slope is -V/r
    const [volt, rise] = [potential(field, 1.001 * last, 2), slope(field, 1.001 * last, 2)]
    for (const j of [0, 1]) expect(rise[j]! / (-volt[j]! / last)).toBeCloseTo(1, 2)
  })

  it('one of many alike: so much of the field of one ampere', () => {
    const unit = radialField(ground, pieces, [Float64Array.from(pieces, () => 1 / pieces.length)])
    const three = scaledField(unit, Float64Array.of(3, -0.5))
    for (const apart of [0.1, 2, 50]) {
      const [one] = potential(unit, apart, 1)
      expect(potential(three, apart, 2)).toEqual([expect.closeTo(3 * one!, 9), expect.closeTo(-0.5 * one!, 9)])
      const [rise] = slope(unit, apart, 1)
      expect(slope(three, apart, 2)).toEqual([expect.closeTo(3 * rise!, 9), expect.closeTo(-0.5 * rise!, 9)])
    }
    expect(three.radii).toEqual(unit.radii)
    expect(three.ohm.map((column) => column[5])).toEqual([3 * unit.ohm[0]![5]!, -0.5 * unit.ohm[0]![5]!])
  })
})

describe('the sources of one electrode', () => {
  const electrodes: readonly Electrode[] = [
    {
      id: 'j',
      kind: 'joined',
      parts: [
        { kind: 'rod', at: { x: 0, y: 0 }, top: 0, length: 1.8, radius: 0.008 },
        { kind: 'disc', at: { x: 5, y: 0 }, radius: 0.3 },
        { kind: 'rod', at: { x: 0, y: 3 }, top: 0.2, length: 2, radius: 0.01 },
        { kind: 'disc', at: { x: 5, y: 3 }, radius: 0.3 },
        { kind: 'disc', at: { x: 9, y: 3 }, radius: 0.2 },
      ],
    },
    rod('r', 12, 1.8),
  ]
  const segments = segmentsOf(ground, electrodes)
  const { share } = solveLeakage(ground, electrodes, segments)

  it('one for each axis, discs of one size sharing their field', () => {
    const sources = sourcesOf(ground, segments, share, 0)
    expect(sources.map(({ x, y, rim }) => [x, y, rim])).toEqual([
      [5, 0, 0.3],
      [5, 3, 0.3],
      [9, 3, 0.2],
      [0, 0, 0],
      [0, 3, 0],
    ])
    const units = sources.map(({ field }) => field.scaled?.unit)
    expect(units[0]).toBe(units[1])
    expect(units[2]).not.toBe(units[0])
    expect(sourcesOf(ground, segments, share, 1).map(({ x, y, rim }) => [x, y, rim])).toEqual([[12, 0, 0]])
  })

  it('together they make what the segments make one by one', () => {
    const exact = (x: number, y: number, driven: number, of: number): number => {
      const one = new Float64Array(2)
      return segments.reduce((sum, it, s) => {
        if (it.electrode !== of) return sum
        const apart = Math.hypot(x - it.x, y - it.y)
        if (it.isDisc) return sum + share[driven]![s]! * discOhm(ground, it, apart)
        surfaceOfSegment(ground, it, apart, one)
        return sum + share[driven]![s]! * one[0]!
      }, 0)
    }
    for (const of of [0, 1]) {
      const sources = sourcesOf(ground, segments, share, of)
      for (const [x, y] of [
        [2, 1],
        [5.5, 3.2],
        [11, -4],
      ] as const) {
        const into = new Float64Array(2)
        for (const it of sources) it.field.addPotential(Math.hypot(x - it.x, y - it.y), into)
        // of what the two of them make together, because what one takes from the other nearly cancels
        for (const driven of [0, 1]) {
          const size = Math.abs(exact(x, y, driven, 0)) + Math.abs(exact(x, y, driven, 1))
          expect(Math.abs(into[driven]! - exact(x, y, driven, of))).toBeLessThan(3e-4 * size)
        }
      }
    }
  })
})

describe('a wire is a row of points', () => {
  const points = (...given: readonly (readonly [x: number, y: number, depth: number])[]): Electrode => ({
    id: 'w',
    kind: 'wire',
    radius: 0.05,
    points: given.map(([x, y, depth]) => ({ x, y, depth })),
  })
  const sourcesAlong = (wire: Electrode, soil = ground) => {
    const segments = segmentsOf(soil, [wire])
    const share = [Float64Array.from(segments, ({ length }) => length)]
    return { segments, sources: sourcesOf(soil, segments, share, 0) }
  }
  const ampere = ({ field }: { readonly field: RadialField }): number => field.scaled!.share[0]!

  it('as close to each other as they are deep, 16 for a piece at most, evenly along it', () => {
    // 24 pieces of half a metre, 0.4 m deep: two points a piece
    const { segments, sources } = sourcesAlong(points([0, 0, 0.4], [7.2, 9.6, 0.4]))
    expect(segments).toHaveLength(24)
    expect(sources).toHaveLength(48)
    sources.forEach((it, k) => {
      const along = ((k + 0.5) / 48) * 12
      expect([it.x, it.y, it.rim]).toEqual([expect.closeTo(0.6 * along, 9), expect.closeTo(0.8 * along, 9), 0])
      expect(ampere(it)).toBeCloseTo(0.25, 12)
    })
    // points of one depth share their field
    expect(new Set(sources.map(({ field }) => field.scaled!.unit)).size).toBe(1)
    // 3 m a piece, as deep as it is thick: 60 points would be wanted
    expect(sourcesAlong(points([0, 0, 0.05], [72, 0, 0.05])).sources).toHaveLength(24 * 16)
    expect(sourcesAlong(points([0, 0, 4], [7.2, 9.6, 4])).sources).toHaveLength(24)
  })

  it('a slanted one gets deeper along the way, counted by its upper end, and never above its radius', () => {
    const { segments, sources } = sourcesAlong(points([0, 0, 0], [3, 0, 4]), layered(evenSoil(100)))
    const first = segments[0]!
    const own = sources.filter(({ x }) => x < 0.6 * first.length)
    // its upper end comes to the surface: as close as its radius
    expect(own).toHaveLength(Math.ceil(first.length / 0.05))
    const deepest = (it: Segment): number => it.depth + 0.4 * it.length
    // even soil: a point at depth d gives 100/2π√(d² + r²) at r, its radius, within which the table ends
    for (const it of sources) {
      const depth = Math.max(0.05, (4 / 3) * it.x)
      expect(potential(it.field, 0, 1)[0]! / ampere(it) / (100 / (2 * Math.PI * Math.hypot(depth, 0.05)))).toBeCloseTo(
        1,
        9,
      )
    }
    expect(Math.max(...sources.map(({ x }) => (4 / 3) * x))).toBeLessThan(deepest(segments[segments.length - 1]!))
  })

  it('beside and above it the surface is that of the whole line: ρ/2πL [asinh((L - x)/d) + asinh(x/d)] in even soil', () => {
    const { sources } = sourcesAlong(points([0, 0, 0.5], [10, 0, 0.5]), layered(evenSoil(100)))
    for (const [x, aside] of [
      [5, 0],
      [3, 1],
      [10, 0.3],
      [14, 2],
    ] as const) {
      const into = new Float64Array(1)
      for (const it of sources) it.field.addPotential(Math.hypot(x - it.x, aside - it.y), into)
      const depth = Math.hypot(0.5, aside)
      const closed = (100 / (2 * Math.PI)) * (Math.asinh((10 - x) / depth) + Math.asinh(x / depth))
      expect(into[0]! / closed).toBeCloseTo(1, 2)
    }
  })
})
