/**
 * Where somebody stands on a pole follows the pole: shoulders (1.4 m above the feet) 0.4 m under the low voltage, 0.1 m under
 * the arm, feet on a bolt that is there. Common practice, no source.
 */
import { expect, test } from 'vitest'
import { feetAt, thighAt } from '../../../src/engine/site/stations'

const rows = [
  // The pole of marrow-bend: wires at 7 m, arm at 8.3 m.
  [{ armHeight: 8.3, lvHeight: 7, stepBoltsTo: 7 }, 5.2, 6.8],
  [{ armHeight: 11.5, lvHeight: 9.1, stepBoltsTo: 11 }, 7.3, 10],
  // Bolts end below: 10 m would be in the air.
  [{ armHeight: 11.5, lvHeight: 9.1, stepBoltsTo: 9.4 }, 7.3, 9.4],
  // No low voltage near the bolts' end: nobody stands higher below it than above it.
  [{ armHeight: 9, lvHeight: 8.9, stepBoltsTo: 6.5 }, 6.5, 6.5],
  // No bolts at all: irons hold anywhere in the wood.
  [{ armHeight: 11.5, lvHeight: 9.1, stepBoltsTo: 9.4, steps: 'none' }, 7.3, 10],
] as const

test.each(rows)('%o: feet at %d and %d', (pole, below, above) => {
  expect(feetAt(pole, 'foot')).toBe(0)
  expect(feetAt(pole, 'below-lv')).toBe(below)
  expect(feetAt(pole, 'above-lv')).toBe(above)
  expect(thighAt(pole, 'above-lv')).toBeCloseTo(above + 0.9, 9)
})

test('to the bit what it was on that pole', () => {
  const pole = { armHeight: 8.3, lvHeight: 7, stepBoltsTo: 7 }
  expect([
    feetAt(pole, 'below-lv'),
    thighAt(pole, 'below-lv'),
    feetAt(pole, 'above-lv'),
    thighAt(pole, 'above-lv'),
  ]).toEqual([5.2, 6.1, 6.8, 7.7])
})
