// How the answer moves when the pieces get smaller: an even leakage over ever shorter pieces is a variational problem, so
// halving the pieces can only lower the resistance (Thomson's principle); what it still lowers shrinks each time. The
// current crowds at the ends of a thin wire, which is why the order is below one there (half for a rod of its own, nearly
// one for a long wire): the end is one piece of many.

import { describe, expect, it } from 'vitest'
import type { Electrode, Soil } from '../../../../src/engine/physics/soil'
import { solveLeakage } from '../../../../src/engine/physics/soil/leakage'
import { segmentsOf } from '../../../../src/engine/physics/soil/segments'
import { layered } from '../../../../src/engine/physics/soil/soil'
import { evenSoil, rod, twoLayers } from './rods'

function by(soil: Soil, electrodes: readonly Electrode[], pieces: number) {
  const ground = layered(soil)
  return solveLeakage(ground, electrodes, segmentsOf(ground, electrodes, pieces)).resistance
}

const buried: Electrode = {
  id: 'w',
  kind: 'wire',
  radius: 0.005,
  points: [
    { x: 0, y: 0, depth: 0.5 },
    { x: 10, y: 0, depth: 0.5 },
  ],
}

const thin = rod('r', 0, 2, 0.004)

/** log2 of how much smaller each further halving's change is. */
function orders(values: readonly number[]): readonly number[] {
  const changes = values.slice(1).map((value, i) => values[i]! - value)
  return changes.slice(1).map((change, i) => Math.log2(changes[i]! / change))
}

const halvings = [4, 8, 16, 32, 64]

describe('refinement', () => {
  it.each([
    ['rod', evenSoil(100), thin, 0.3, 0.6],
    ['wire', evenSoil(100), buried, 0.5, 1.2],
    ['wire above a boundary', twoLayers(100, 0.9, 400), buried, 0.6, 1.4],
  ] as const)('%s: monotone from above, at a steady order', (_, soil, electrode, least, most) => {
    const values = halvings.map((pieces) => by(soil, [electrode], pieces)[0]![0]!)
    for (const [i, value] of values.slice(1).entries()) expect(value).toBeLessThan(values[i]!)
    for (const order of orders(values)) {
      expect(order).toBeGreaterThan(least)
      expect(order).toBeLessThan(most)
    }
    // what all further halvings together would still take, with that order, is below 0.7 % of what twelve pieces give
    const last = values[3]! - values[4]!
    const rest = last / (2 ** least - 1)
    expect((values[1]! - values[4]! + rest) / values[1]!).toBeLessThan(0.011)
  })

  it('between electrodes the ends do not matter: the mutual resistance is settled to a thousandth with twelve pieces', () => {
    const pair: readonly Electrode[] = [rod('a', -2, 1.8), buried]
    const settled = by(twoLayers(100, 1, 300), pair, 48)[0]![1]!
    expect(Math.abs(by(twoLayers(100, 1, 300), pair, 12)[0]![1]! / settled - 1)).toBeLessThan(1.5e-3)
  })

  it('far images by Chebyshev points for a whole pair of rods, or one by one for each pair of pieces: the same', () => {
    for (const soil of [twoLayers(100, 1, 300), twoLayers(3000, 0.3, 50), twoLayers(10, 0.6, 5000)]) {
      const rods: readonly Electrode[] = [rod('a', 0, 1.8), rod('b', 2, 2.4, 0.01, 0.4)]
      // a wire straight down goes the long way round as soon as it leans a little
      const leaning = rods.map((it): Electrode => {
        const { at, top, length, radius } = it as Extract<Electrode, { kind: 'rod' }>
        const points = [
          { ...at, depth: top },
          { x: at.x, y: at.y + 1e-5, depth: top + length },
        ]
        return { id: it.id, kind: 'wire', radius, points }
      })
      const [quick, plain] = [by(soil, rods, 12), by(soil, leaning, 12)]
      quick.forEach((row, i) => row.forEach((ohm, j) => expect(Math.abs(ohm / plain[i]![j]! - 1)).toBeLessThan(5e-4)))
    }
  })
})
