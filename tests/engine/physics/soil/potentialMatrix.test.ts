// The sums over whole rods against the same sums image by image for each pair of pieces (Tagg; Sunde 1949, in
// layeredKernel.ts, itself checked against an integral without images): what is saved must not be seen.

import { describe, expect, it } from 'vitest'
import type { Electrode, Soil } from '../../../../src/engine/physics/soil'
import { mutualOhm } from '../../../../src/engine/physics/soil/layeredKernel'
import { potentialMatrix } from '../../../../src/engine/physics/soil/potentialMatrix'
import { segmentsOf, type Segment } from '../../../../src/engine/physics/soil/segments'
import { layered } from '../../../../src/engine/physics/soil/soil'
import { evenSoil, rod, twoLayers } from './rods'

const wire: Electrode = {
  id: 'w',
  kind: 'wire',
  radius: 0.005,
  points: [
    { x: -1, y: 1, depth: 0.5 },
    { x: 2, y: 2, depth: 0.6 },
  ],
}
const disc: Electrode = { id: 'd', kind: 'disc', at: { x: 1, y: -1 }, radius: 0.3 }

const upright = (y: number, top: number, length: number, x = 0) =>
  ({ kind: 'rod', at: { x, y }, top, length, radius: 0.02 }) as const
const joined = (...parts: readonly ReturnType<typeof upright>[]): Electrode => ({ id: 'j', kind: 'joined', parts })

/** Upright beside upright, above and below the boundary, through it, on one axis, in one electrode. */
const sites: readonly (readonly [string, readonly Electrode[]])[] = [
  ['two rods through the boundary', [rod('a', 0, 1.8), rod('b', 2, 2.4, 0.01, 0.1)]],
  ['as long above it as below it', [rod('a', 0, 2.2)]],
  ['one above it, one below it', [rod('a', 0, 0.8, 0.008, 0.05), rod('b', 1.5, 1.5, 0.01, 1.3, 0.7)]],
  ['both above it', [rod('a', 0, 0.9), rod('b', 0.6, 0.7, 0.01, 0.2, -0.4)]],
  [
    'both below it, one below the other',
    [rod('a', 0, 1, 0.02, 1.2), rod('c', 0, 1, 0.02, 3), rod('b', 3, 1.5, 0.02, 1.15)],
  ],
  ['a rod, a disc and a wire', [rod('a', 0, 1.8), disc, wire]],
  ['rods of one electrode', [joined(upright(0, 0, 0.9), upright(2, 0, 0.9), upright(2, 0, 0.9, 2), upright(0, 0, 2))]],
  ['on one axis, in pieces of two lengths', [joined(upright(0, 0, 0.6), upright(0, 0.7, 0.3))]],
]

const soils = [evenSoil(100), twoLayers(100, 1.1, 300), twoLayers(3000, 1.1, 50), twoLayers(10, 1.1, 5000)]

describe.each(sites)('%s', (_, electrodes) => {
  it.each(soils)('in soil %#: each pair as if it were alone, to 1e-6', (soil) => {
    const ground = layered(soil)
    const segments = segmentsOf(ground, electrodes, 7)
    const matrix = potentialMatrix(ground, segments)
    expect(matrix).toHaveLength(segments.length * segments.length)
    let worst = 0
    segments.forEach((a, i) =>
      segments.slice(0, i + 1).forEach((b, j) => {
        const alone = mutualOhm(ground, a, b)
        for (const at of [i * segments.length + j, j * segments.length + i]) {
          worst = Math.max(worst, Math.abs(matrix[at]! / alone - 1))
        }
      }),
    )
    expect(worst).toBeLessThan(1e-6)
  })
})

describe('what is summed together', () => {
  /** Pairs of pieces whose sum is not, to the bit, the one that they have alone, by what the pieces belong to. */
  function together(soil: Soil, electrodes: readonly Electrode[]): ReadonlySet<string> {
    const ground = layered(soil)
    const segments = segmentsOf(ground, electrodes, 7)
    const matrix = potentialMatrix(ground, segments)
    const nameOf = ({ electrode, isLower }: Segment): string =>
      `${electrodes[electrode]!.id} ${isLower ? 'below' : 'above'}`
    const pairs = segments.flatMap((a, i) =>
      segments.slice(0, i + 1).map((b, j) => ({ a, b, at: i * segments.length + j })),
    )
    return new Set(
      pairs
        .filter(({ a, b, at }) => matrix[at] !== mutualOhm(ground, a, b))
        .map(({ a, b }) => [nameOf(a), nameOf(b)].sort().join(', ')),
    )
  }

  const soil = twoLayers(100, 1, 300)

  it('the pieces of a rod that are in one layer, with those of another or of the same one', () => {
    expect([...together(soil, [rod('a', 0, 2.6), rod('b', 2, 3)])].sort()).toEqual([
      'a above, a above',
      'a above, a below',
      'a above, b above',
      'a above, b below',
      'a below, a below',
      'a below, b above',
      'a below, b below',
      'b above, b above',
      'b above, b below',
      'b below, b below',
    ])
  })

  it('not in even soil, not with a disc or a wire, not for a few pieces', () => {
    expect(together(evenSoil(100), [rod('a', 0, 1.8), rod('b', 2, 2.4)]).size).toBe(0)
    expect([...together(soil, [rod('a', 0, 0.9), disc, wire])]).toEqual(['a above, a above'])
    // two pieces of one radius each, by two and by four
    const short = [rod('s', 3, 0.3, 0.07), rod('t', 5, 0.7, 0.08)]
    expect(segmentsOf(layered(soil), short, 4)).toHaveLength(6)
    expect(together(soil, [rod('s', 3, 0.3, 0.07), disc]).size).toBe(0)
  })

  it('two rods of one electrode each by itself', () => {
    const pair: Electrode = {
      id: 'j',
      kind: 'joined',
      parts: [0, 2].map((y) => ({ kind: 'rod', at: { x: 0, y }, top: 0, length: 0.9, radius: 0.008 })),
    }
    const apart = segmentsOf(layered(soil), [pair], 7)
    expect(new Set(apart.map(({ y }) => y))).toEqual(new Set([0, 2]))
    expect(together(soil, [pair])).toEqual(new Set(['j above, j above']))
  })
})
