// How far shapes are from each other, worked by hand from whole-numbered triangles (3-4-5, 2-1-2) and, for lines that pass
// each other in space, from their common perpendicular (plane and solid geometry).

import { describe, expect, it } from 'vitest'
import type { DeepPoint, Shape } from '../../../../src/engine/physics/soil/electrode'
import { distanceInPlan, gapBetween } from '../../../../src/engine/physics/soil/gap'

const rod = (x: number, y: number, radius: number, top: number, length: number): Shape => ({
  kind: 'rod',
  at: { x, y },
  radius,
  top,
  length,
})
const disc = (x: number, y: number, radius: number, depth?: number): Shape => ({
  kind: 'disc',
  at: { x, y },
  radius,
  ...(depth === undefined ? {} : { depth }),
})
const wire = (radius: number, ...points: readonly (readonly [x: number, y: number, depth: number])[]): Shape => ({
  kind: 'wire',
  radius,
  points: points.map(([x, y, depth]): DeepPoint => ({ x, y, depth })),
})

/** From a to b and from b to a. */
function expectGap(a: Shape, b: Shape, wanted: number): void {
  expect(gapBetween(a, b)).toBeCloseTo(wanted, 12)
  expect(gapBetween(b, a)).toBeCloseTo(wanted, 12)
}

describe('the gap between two shapes', () => {
  it('uprights and discs on the surface: in plan, however deep, 5 m between axes less both radii', () => {
    const far = rod(4, 5, 0.2, 9, 1)
    expectGap(rod(1, 1, 0.1, 0, 1), far, 4.7)
    expectGap(disc(1, 1, 0.1), far, 4.7)
    expectGap(disc(1, 1, 0.1, 0), far, 4.7)
    expectGap(disc(1, 1, 0.1), disc(4, 5, 0.3), 4.6)
    expectGap(rod(1, 1, 3, 0, 7), rod(4, 5, 4, 0, 9), -2)
  })

  it('a buried plate: in space, from its middle as a ball, to the nearest of an upright', () => {
    // its middle 4 m deep, the rod from 0.5 to 1 m: 4 m in plan and 3 m up
    expectGap(disc(5, 1, 0.3, 4), rod(1, 1, 0.1, 0.5, 0.5), 4.6)
    // beside the rod’s length, below it
    expectGap(disc(5, 1, 0.3, 0.7), rod(1, 1, 0.1, 0.5, 0.5), 3.6)
    expectGap(disc(5, 1, 0.3, 0.5), rod(1, 1, 0.1, 3.5, 0.5), 4.6)
    expectGap(disc(1, 1, 0.3, 1), disc(3, 2, 0.2, 3), 2.5)
  })

  it('wires that pass each other: 6 m along the common perpendicular (2, -2, 1)/3 of (1, 1, 0) and (1, 2, 2)', () => {
    // feet of the perpendicular (1, 2, 6) and (5, -2, 8), inside both
    const one = wire(0.05, [-1, 0, 6], [4, 5, 6])
    const other = wire(0.15, [4, -4, 6], [7, 2, 12])
    expectGap(one, other, 5.8)
  })

  it('wires that end before they pass: from end to end, and from an end to a side', () => {
    // (0, 0, 1) to (2, 1, 3): 3 m
    expectGap(wire(0.1, [-5, 0, 1], [0, 0, 1]), wire(0.2, [2, 1, 3], [6, 1, 3]), 2.7)
    // (2, 3, 5) stands 5 m off the first one’s inside (2, -1, 2) → 3 up, 4 across
    expectGap(wire(0.1, [-5, -1, 2], [9, -1, 2]), wire(0.2, [2, 3, 5], [2, 9, 8]), 4.7)
  })

  it('side by side, and the nearest of several sides', () => {
    expectGap(wire(0.1, [0, 1, 2], [4, 1, 2]), wire(0.2, [0, 4, 6], [4, 4, 6]), 4.7)
    const bent = wire(0.1, [0, 0, 2], [9, 0, 2], [9, 9, 2])
    expectGap(bent, rod(5, 8, 0.2, 0, 3), 3.7)
    expectGap(bent, rod(3, 2, 0.2, 0, 3), 1.7)
  })

  it('a side of no length is its point', () => {
    expectGap(wire(0.1, [1, 2, 3], [1, 2, 3]), disc(3, 3, 0.2, 5), 2.7)
  })
})

describe('the way over the ground to a shape', () => {
  it('an upright or a disc: to its edge, negative on it', () => {
    expect(distanceInPlan(rod(1, 2, 0.5, 3, 1), { x: 4, y: 6 })).toBe(4.5)
    expect(distanceInPlan(disc(1, 2, 0.5, 7), { x: 1, y: 2.25 })).toBe(-0.25)
  })

  it('a wire: to its line as seen from above, wherever it dives', () => {
    const diving = wire(0.5, [1, 1, 0.5], [5, 1, 9])
    expect(distanceInPlan(diving, { x: 4, y: 3 })).toBeCloseTo(1.5, 12)
    expect(distanceInPlan(diving, { x: 8, y: 5 })).toBeCloseTo(4.5, 12)
    expect(distanceInPlan(diving, { x: 2, y: 1 })).toBeCloseTo(-0.5, 12)
    const slanted = wire(0.1, [0, 0, 1], [8, 6, 1])
    // (4, 3) and 5 m across
    expect(distanceInPlan(slanted, { x: 1, y: 7 })).toBeCloseTo(4.9, 12)
  })

  it('the nearest side of a bent or closed one', () => {
    const points = [
      { x: 0, y: 0, depth: 1 },
      { x: 9, y: 0, depth: 1 },
      { x: 9, y: 9, depth: 1 },
    ]
    const bent: Shape = { kind: 'wire', radius: 0.1, points }
    expect(distanceInPlan(bent, { x: 7, y: 8 })).toBeCloseTo(1.9, 12)
    expect(distanceInPlan(bent, { x: 0, y: 8 })).toBeCloseTo(7.9, 12)
    // the third side runs back along the diagonal: (0, 8) is 8/√2 off it
    expect(distanceInPlan({ ...bent, isClosed: true }, { x: 0, y: 8 })).toBeCloseTo(8 / Math.SQRT2 - 0.1, 12)
  })
})
