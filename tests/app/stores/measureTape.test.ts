// What the tape reads, against distances worked out by hand.

import { describe, expect, test } from 'vitest'
import { measureTape, nearestPoints } from '../../../src/app/stores/measureTape'
import type { Place } from '../../../src/app/stores/shapeOf'
import type { TapeEnd } from '../../../src/app/stores/tapeStore'
import { believe } from '../../../src/engine'
import { after } from '../../support/cleanStages'

const at = (x: number, y: number, z: number): Place => ({ x, y, z })
const long = ([a, b]: readonly [Place, Place]) => Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z)

describe('nearest points of two straight pieces', () => {
  test.each([
    // Crossing at a right angle, one 3 above the other.
    [at(-5, 0, 0), at(5, 0, 0), at(0, -5, 3), at(0, 5, 3), 3],
    // Side by side: the gap.
    [at(0, 0, 0), at(10, 0, 0), at(2, 4, 0), at(8, 4, 0), 4],
    // End to end on one line, 2 apart.
    [at(0, 0, 0), at(1, 0, 0), at(3, 0, 0), at(9, 0, 0), 2],
    // A point and the end of a piece: 3, 4, 5.
    [at(0, 0, 0), at(0, 0, 0), at(3, 4, 0), at(9, 4, 0), 5],
    // Two points: 2, 3, 6, 7.
    [at(0, 0, 0), at(0, 0, 0), at(2, 3, 6), at(2, 3, 6), 7],
    // The nearest of the first lies past the end of the second, so at that end: 1 up, 2 along.
    [at(0, 0, 0), at(4, 0, 0), at(6, 0, 1), at(9, 3, 1), Math.sqrt(5)],
  ])('%o to %o and %o to %o: %d', (a, b, c, d, wanted) => {
    expect(long(nearestPoints([a, b], [c, d]))).toBeCloseTo(wanted, 12)
    expect(long(nearestPoints([c, d], [a, b]))).toBeCloseTo(wanted, 12)
  })
})

describe('on the site', () => {
  const belief = believe(after('drive-rod'))
  const rod: TapeEnd = { kind: 'thing', id: 'rod/R-1' }

  test('from the rod to the conductor over it: across the line, up, and straight', () => {
    const conductor = belief.sheet.conductors.find(({ id }) => id === 'conductor-a')!
    const { at: foot } = belief.rods[0]!
    const read = measureTape(belief, [rod, { kind: 'thing', id: 'conductor-a' }])!
    // The wire passes level over the rod's own metre of the line, so only what lies across counts.
    expect(read.over).toBeCloseTo(Math.abs(foot.y - conductor.x), 12)
    expect(read.up).toBe(conductor.height)
    expect(read.straight ** 2).toBeCloseTo(read.over ** 2 + read.up ** 2, 10)
  })

  test('the other way round it is as long, and down', () => {
    const there = measureTape(belief, [rod, { kind: 'thing', id: 'conductor-a' }])!
    const back = measureTape(belief, [{ kind: 'thing', id: 'conductor-a' }, rod])!
    expect(back.straight).toBeCloseTo(there.straight, 12)
    expect(back.up).toBeCloseTo(-there.up, 12)
  })

  test('a point of the ground by figures: 3 east and 4 north of the pole are 5', () => {
    const read = measureTape(belief, [
      { kind: 'thing', id: 'pole-foot' },
      { kind: 'ground', at: { x: 3, y: 4 } },
    ])!
    expect([read.over, read.up, read.straight]).toEqual([5, 0, 5])
  })

  test('nothing is read while an end is missing, or where the crew knows no place', () => {
    expect(measureTape(belief, [rod])).toBeUndefined()
    expect(measureTape(belief, [rod, { kind: 'thing', id: 'cover' }])).toBeUndefined()
  })
})
