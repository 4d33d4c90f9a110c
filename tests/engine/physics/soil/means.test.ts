// Means of 1/distance, against sums over points that know nothing of how they are worked out: a line as a row of points, a
// disc as rings of the current that an equipotential disc gives off, 1/(2πb√(b² - r²)) (Weber 1873, in Sommerfeld,
// Partial Differential Equations in Physics; evenly spread in √(1 - r²/b²)). Closed forms where one is known.

import { describe, expect, it } from 'vitest'
import { meanBetween } from '../../../../src/engine/physics/soil/meanBetween'
import { addLine, meanBetweenLines, meanToDisc, slopeToDisc } from '../../../../src/engine/physics/soil/meanInverse'
import type { Segment } from '../../../../src/engine/physics/soil/segments'

interface Place {
  readonly x: number
  readonly y: number
  readonly z: number
}

function upright(electrode: number, x: number, y: number, depth: number, length: number, radius = 0.01): Segment {
  return { electrode, x, y, radius, depth, length, isLower: false, isDisc: false }
}

function wire(electrode: number, from: readonly number[], to: readonly number[], radius = 0.01): Segment {
  const [dx, dy, dz] = [0, 1, 2].map((k) => to[k]! - from[k]!)
  const length = Math.hypot(dx!, dy!, dz!)
  const along = { x: dx! / length, y: dy! / length, z: dz! / length }
  const [x, y, depth] = [0, 1, 2].map((k) => (from[k]! + to[k]!) / 2)
  return { ...upright(electrode, x!, y!, depth!, length, radius), along }
}

function disc(electrode: number, x: number, y: number, depth: number, radius: number): Segment {
  return { ...upright(electrode, x, y, depth, 0, radius), isDisc: true }
}

/** Alike places of the current that leaves a segment. */
function placesOf({ x, y, depth, length, radius, isDisc, along = { x: 0, y: 0, z: 1 } }: Segment): readonly Place[] {
  const middles = (count: number): number[] => Array.from({ length: count }, (_, k) => (k + 0.5) / count)
  if (!isDisc) {
    return middles(64).map((share) => {
      const at = (share - 0.5) * length
      return { x: x + at * along.x, y: y + at * along.y, z: depth + at * along.z }
    })
  }
  return middles(10).flatMap((share) => {
    const reach = radius * Math.sqrt(1 - share * share)
    return middles(12).map((part) => {
      const turn = 2 * Math.PI * part
      return { x: x + reach * Math.cos(turn), y: y + reach * Math.sin(turn), z: depth }
    })
  })
}

/** @param beside of one electrode: so far from its axis is its own potential taken */
function summed(a: Segment, b: Segment, mirrored: boolean, shift: number, beside = 0): number {
  const [ours, theirs] = [placesOf(a), placesOf(b)]
  let sum = 0
  for (const one of ours) {
    for (const other of theirs) {
      const dx = one.x - other.x
      const dy = one.y - other.y
      const dz = one.z - (mirrored ? shift - other.z : shift + other.z)
      sum += 1 / Math.sqrt(dx * dx + dy * dy + dz * dz + beside * beside)
    }
  }
  return sum / (ours.length * theirs.length)
}

/** The segment itself or its mirror image, where it is or moved up or down. */
const images = [
  [false, 0],
  [true, 0],
  [false, 3],
  [false, -3],
  [true, 9],
  [true, -4],
  [false, 60],
  [true, -60],
] as const

function expectAsSummed(a: Segment, b: Segment, relative: number, beside = 0): void {
  const [there, back] = [meanBetween(a, b), meanBetween(b, a)]
  for (const [mirrored, shift] of images) {
    const wanted = summed(a, b, mirrored, shift, beside)
    expect(Math.abs(there(mirrored, shift) / wanted - 1), `${mirrored} ${shift}`).toBeLessThan(relative)
    // seen from the other one a plain shift goes the other way
    const other = back(mirrored, mirrored ? shift : -shift)
    expect(Math.abs(other / wanted - 1), `back ${mirrored} ${shift}`).toBeLessThan(relative)
  }
}

describe('between two segments', () => {
  it('uprights, near and from 6 lengths on by the expansion', () => {
    expectAsSummed(upright(0, 0, 0, 1, 1), upright(1, 1, 1, 1.5, 0.5), 2e-5)
    expectAsSummed(upright(0, 0, 0, 1, 0.4), upright(1, -2, 2.2, 3, 0.5), 2e-5)
    expectAsSummed(upright(0, 0, 0, 1, 0.4), upright(1, 0.4, 0.3, 4.6, 0.5), 2e-5)
    expectAsSummed(upright(0, 0, 0, 1, 0.4), upright(1, 4, 4, 4, 0.5), 2e-5)
  })

  it('of one electrode on one axis: its own potential is that at its radius', () => {
    expectAsSummed(upright(0, 1, 2, 1, 1, 0.3), upright(0, 1, 2, 2, 1, 0.3), 2e-4, 0.3)
    // two rods of one electrode, and two electrodes, are as far apart as they are
    expectAsSummed(upright(0, 1, 2, 1, 1, 0.3), upright(0, 2, 2, 2, 1, 0.3), 5e-5)
    expectAsSummed(upright(0, 1, 2, 1, 1, 0.3), upright(0, 1, 3, 2, 1, 0.3), 5e-5)
    const self = meanBetween(upright(0, 1, 2, 5, 2), upright(0, 1, 2, 5, 2))(false, 0)
    // 2/L [asinh(L/a) + a/L - √(1 + a²/L²)]: mean over a line of its own potential at the distance a (Sunde 1949)
    const ratio = 0.01 / 2
    expect(self).toBeCloseTo(Math.asinh(1 / ratio) + ratio - Math.sqrt(1 + ratio * ratio), 9)
  })

  it('an upright and a disc', () => {
    expectAsSummed(upright(0, 0, 0, 2, 1.5), disc(1, 1, 0.5, 0, 0.4), 2e-4)
    expectAsSummed(upright(0, 0, 0, 2.5, 0.5), disc(1, 0.3, 0.4, 0, 0.8), 1e-3)
    expectAsSummed(upright(0, 1, 2, 6, 1), disc(0, 1, 2, 0.5, 0.5), 2e-4)
    // far off, across and along its axis: by the expansion
    expectAsSummed(upright(0, 0, 0, 1, 0.5), disc(1, 3, 3, 0, 0.2), 3e-5)
    expectAsSummed(upright(0, 0, 0, 1, 0.2), disc(1, 4, 4, 0, 0.4), 3e-5)
    expectAsSummed(upright(0, 0, 0, 7, 0.5), disc(1, 0.3, 0, 0, 0.3), 3e-5)
  })

  it('two discs: right to second order in size over distance', () => {
    expectAsSummed(disc(0, 0, 0, 0.5, 0.3), disc(1, 1.2, 0.9, 0, 0.4), 5e-3)
    // nearer than that the closed form holds longer: 0.4 m between the rims, then 0.1 m
    const near = (apart: number, depth: number): number => {
      const [one, other] = [disc(0, 0, 0, depth, 0.3), disc(1, apart, 0, 0, 0.4)]
      return Math.abs(meanBetween(one, other)(false, 0) / summed(one, other, false, 0) - 1)
    }
    expect(near(1, 0.3)).toBeLessThan(3e-4)
    expect(near(0.75, 0.1)).toBeLessThan(0.01)
    expectAsSummed(disc(0, 0, 0, 0.5, 0.2), disc(1, 2.4, 1.8, 0, 0.1), 1e-4)
    expectAsSummed(disc(0, 0, 0, 0.5, 0.2), disc(1, 4.8, 3.6, 0, 0.1), 1e-5)
  })

  it('a disc and its own images', () => {
    const own = disc(0, 1, 2, 2, 0.8)
    for (const [mirrored, shift] of [
      [true, 0],
      [true, 5.6],
      [false, 3],
      [true, 15],
      [false, -60],
    ] as const) {
      expect(meanBetween(own, own)(mirrored, shift) / summed(own, own, mirrored, shift)).toBeCloseTo(1, 3)
    }
    // twice the field of a disc at the disc itself: π/2b
    expect(meanBetween(own, own)(false, 0)).toBeCloseTo(Math.PI / 1.6, 12)
    // by the expansion 1/z - 2b²/3z³, on the axis of either disc 1/z - b²/3z³
    expect(meanBetween(own, own)(false, 20)).toBeCloseTo(1 / 20 - (2 * 0.64) / (3 * 8000), 6)
  })

  it('wires in space: askew, at right angles, side by side, steep and flat', () => {
    const slanted = wire(0, [0, 0, 0.5], [1, 0.5, 1.5])
    expectAsSummed(slanted, wire(1, [2, -1, 1], [2.5, 1, 0.6]), 2e-4)
    expectAsSummed(slanted, wire(1, [0, 2, 1], [-1, 2.5, 2.2]), 2e-4)
    expectAsSummed(slanted, wire(1, [2, 1, 0.5], [3, 1.5, 1.5]), 2e-4)
    expectAsSummed(slanted, upright(1, 2, 1, 1, 0.8), 2e-4)
    expectAsSummed(wire(0, [0, 0, 0.7], [1, 0, 0.7]), wire(1, [1.5, 0.5, 0.7], [1.5, 2, 0.7]), 2e-4)
    // as long as each other, at one depth, on one meridian: told apart all the same
    expectAsSummed(wire(0, [0, 0, 0.5], [0, 1, 0.5]), wire(1, [0, 2, 0.5], [0.6, 2.8, 0.5]), 2e-4)
    expectAsSummed(wire(0, [0, 0, 0.5], [0, 1, 0.5]), wire(1, [2, 0, 0.2], [2.6, 0.8, 0.2]), 2e-4)
  })

  it('the shorter of two wires is taken at points, the longer as a whole: 8 points are too few along 5 m', () => {
    const long = wire(1, [-1, 0.4, 0.6], [4, 0.4, 0.7])
    expectAsSummed(wire(0, [0.2, 0, 0.6], [0.2, -0.3, 0.6]), long, 2e-4)
    expectAsSummed(wire(0, [0.2, 0, 0.8], [0.2, -0.3, 0.8]), long, 2e-4)
    // counted by the longer one they are not far: 10 m
    expectAsSummed(wire(0, [0, 10, 0.6], [0, 10.3, 0.6]), wire(1, [-2, 0, 0.6], [2, 0, 0.7]), 2e-5)
  })

  it('wires that meet in a corner: ∫∫ 1/√(x² + y²) over a unit square is 2 ln(1 + √2)', () => {
    const corner = meanBetween(wire(0, [0, 0, 0.6], [1, 0, 0.6], 1e-4), wire(0, [0, 0, 0.6], [0, 1, 0.6], 1e-4))
    expect(Math.abs(corner(false, 0) / (2 * Math.log(1 + Math.SQRT2)) - 1)).toBeLessThan(0.01)
  })

  it('wires side by side are two uprights turned over', () => {
    const turned = meanBetween(wire(0, [0, 0, 2], [0.6, 0.8, 2]), wire(1, [0.3, 1.1, 2], [0.75, 1.7, 2]))
    // 0.42 m across from the middle of the first to the second, 1.18 m along to its middle, 0.75 m long
    const across = 0.6 * 1.1 - 0.8 * 0.3
    const along = 0.6 * 0.525 + 0.8 * 1.4 - 0.5
    expect(turned(false, 0)).toBeCloseTo(meanBetweenLines(across, along, 1, 0.75), 12)
  })

  it('wires from far away: by the expansion, with the lean of each', () => {
    const slanted = wire(0, [0, 0, 0.5], [0.3, 0.2, 0.9])
    expectAsSummed(slanted, wire(1, [4, 3, 1], [4.2, 3.3, 0.7]), 3e-5)
    expectAsSummed(slanted, wire(1, [-3, 3, 8], [-3.4, 3, 8.2]), 3e-5)
    expectAsSummed(slanted, upright(1, 4, -3, 1, 0.4), 3e-5)
  })

  it('wires of one electrode: its own potential is that at its radius, in a corner and along', () => {
    const arm = wire(0, [0, 0, 0.6], [1, 0, 0.6], 0.2)
    expectAsSummed(arm, wire(0, [0, 0.5, 0.6], [0, 1.5, 0.6], 0.3), 1e-3, 0.3)
    expectAsSummed(arm, wire(0, [1, 0, 0.6], [2, 0, 0.6], 0.2), 1e-3, 0.2)
  })

  it('wires of two electrodes are as far apart as they are, however thick', () => {
    expectAsSummed(wire(0, [0, 0, 0.6], [1, 0, 0.6], 0.3), wire(1, [0, 1.5, 0.6], [0.2, 2.5, 0.6], 0.3), 2e-4)
  })

  it('a wire and a disc', () => {
    const slanted = wire(0, [0, 0, 0.5], [1, 0.5, 1.5])
    expectAsSummed(slanted, disc(1, 2, 1, 0, 0.4), 5e-4)
    expectAsSummed(slanted, disc(1, -1, 1, 1.5, 0.5), 5e-4)
    expectAsSummed(wire(0, [0, 0, 0.5], [0.5, -1, 0.5]), disc(1, 1, 1, 2, 0.5), 5e-4)
  })
})

describe('any two segments', () => {
  const pairs: readonly (readonly [string, Segment, Segment])[] = [
    ['uprights', upright(0, 0, 0, 1, 1), upright(1, 1, 1, 1.5, 0.5)],
    ['an upright and a disc', upright(0, 0, 0, 2, 1.5), disc(1, 1, 0.5, 0, 0.4)],
    ['a small disc and an upright', upright(0, 0, 0, 2, 1.5), disc(1, 5, 0.5, 0, 0.1)],
    ['discs', disc(0, 0, 0, 0.5, 0.3), disc(1, 1.2, 0.9, 0, 0.4)],
    ['wires of two lengths', wire(0, [0, 0, 0.5], [1, 0.5, 1.5]), wire(1, [2, -1, 1], [2.5, 1, 0.6])],
    ['wires at two depths', wire(0, [0, 0, 0.5], [0, 1, 0.5]), wire(1, [1, 0, 0.25], [1.6, 0.8, 0.25])],
    ['wires at one depth', wire(0, [0, 0, 0.5], [0, 1, 0.5]), wire(1, [1, 0, 0.5], [2, 0, 0.5])],
    ['wires on one meridian', wire(0, [0, -0.5, 0.5], [0, 0.5, 0.5]), wire(1, [-0.5, 2, 0.5], [0.5, 2, 0.5])],
    ['a wire and a disc', wire(0, [0, 0, 0.5], [1, 0.5, 1.5]), disc(1, 2, 1, 0, 0.4)],
  ]

  // a disc is taken at points of the other one, and these then come in the other order
  it.each(pairs.filter(([, a, b]) => a.isDisc === b.isDisc))('%s: the same from either side, to the bit', (_, a, b) => {
    const [there, back] = [meanBetween(a, b), meanBetween(b, a)]
    for (const [mirrored, shift] of images)
      expect(back(mirrored, mirrored ? shift : -shift)).toBe(there(mirrored, shift))
  })

  it.each([...pairs, ['a disc and itself', disc(0, 0, 0, 0.5, 0.3), disc(0, 0, 0, 0.5, 0.3)] as const])(
    '%s: 1024 times as large, a 1024th of it, and the other way round, to the bit',
    (_, a, b) => {
      for (const factor of [1024, 1 / 1024]) {
        const [one, other] = [a, b].map(({ x, y, depth, length, radius, ...rest }): Segment => {
          const [larger, wider, deeper, longer, thicker] = [x, y, depth, length, radius].map((it) => it * factor)
          return { ...rest, x: larger!, y: wider!, depth: deeper!, length: longer!, radius: thicker! }
        })
        for (const [mirrored, shift] of images) {
          const got = meanBetween(one!, other!)(mirrored, shift * factor) * factor
          expect(got).toBe(meanBetween(a, b)(mirrored, shift))
        }
      }
    },
  )
})

describe('from a point', () => {
  it.each([
    [1, 0.5, 2],
    [1, 3, 2],
    [2, -3, 1],
    [0.3, 0, 1],
    [5, 4, 0.5],
    [1, -8, 0.5],
    [8, 0.5, 0.5],
  ])('%d m off a line, %d m below its middle, length %d m: potential and slope', (apart, offset, length) => {
    const at = (x: number): number => summed(upright(0, 0, 0, offset, length), disc(1, x, 0, 0, 0), false, 0)
    const into = Float64Array.of(2, 5)
    addLine(into, 3, apart, offset, length)
    expect((into[0]! - 2) / 3 / at(apart)).toBeCloseTo(1, 4)
    const rise = (at(apart + 1e-4) - at(apart - 1e-4)) / 2e-4
    expect((into[1]! - 5) / 3 / rise).toBeCloseTo(1, 3)
  })

  it('just above and just below where the expansion begins nothing jumps by more than 2e-5', () => {
    const both = (apart: number): Float64Array => {
      const into = new Float64Array(2)
      addLine(into, 1, apart, 0, 1)
      return into
    }
    const [near, far] = [both(6 - 1e-9), both(6 + 1e-9)]
    for (const k of [0, 1]) expect(Math.abs(near[k]! / far[k]! - 1)).toBeLessThan(2e-5)
    const lines = (apart: number): number => meanBetweenLines(apart, 0, 1, 0.5)
    expect(Math.abs(lines(6 - 1e-9) / lines(6 + 1e-9) - 1)).toBeLessThan(2e-5)
  })

  it.each([
    [0.5, 0, 0.7],
    [0.5, 0.3, 0.6],
    [0.5, 2, 0],
    [0.5, 1, -1],
  ])('disc of %d m, %d m off its axis, %d m off its plane: potential and slope', (radius, apart, height) => {
    const at = (x: number): number => summed(disc(0, 0, 0, height, radius), disc(1, x, 0, 0, 0), false, 0)
    expect(meanToDisc(radius, apart, height) / at(apart)).toBeCloseTo(1, 3)
    const rise = (at(apart + 1e-4) - at(apart - 1e-4)) / 2e-4
    expect(Math.abs(slopeToDisc(radius, apart, height) - rise)).toBeLessThan(3e-3 * at(apart))
  })

  it('disc: π/2b all over it, asin(b/r)/b in its plane, atan(b/z)/b on its axis', () => {
    for (const apart of [0, 0.2, 0.5]) expect(meanToDisc(0.5, apart, 0)).toBeCloseTo(Math.PI, 12)
    expect(meanToDisc(0.5, 2, 0)).toBeCloseTo(2 * Math.asin(0.25), 12)
    expect(meanToDisc(0.5, 0, 2)).toBeCloseTo(2 * Math.atan(0.25), 12)
    // -1/(r√(r² - b²))
    expect(slopeToDisc(0.5, 1.3, 0)).toBeCloseTo(-1 / (1.3 * 1.2), 12)
  })
})
