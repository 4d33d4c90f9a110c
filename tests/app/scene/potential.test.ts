import { expect, test } from 'vitest'
import { contourInterval, groundTop } from '../../../src/app/stores/contours'
import {
  crossingAt,
  distanceAt,
  farthest,
  fieldOf,
  type GroundElectrode,
  nearest,
  paceAt,
  points,
  potentialAt,
} from '../../../src/app/scene/ground/potential'

/**
 * A rod of length L in uniform soil as a line source from the surface down: V(r) = ρI/(2πL) · asinh(L/r). Textbook
 * (Sunde, Earth Conduction Effects; from memory). 100 Ω·m, 1.8 m, 70 A: 837 V at 1 m by hand.
 */
const ohm = (r: number): number => (100 / (2 * Math.PI * 1.8)) * Math.asinh(1.8 / r)
const radii = Array.from({ length: 33 }, (_, k) => 0.008 * Math.exp(0.4 * k))
const rod: GroundElectrode = { x: 2, z: -1, amperes: 70, radii, ohm: radii.map(ohm) }
const field = fieldOf([rod])

test('the figures on the ground are those of the formula, to two thousandths', () => {
  expect(potentialAt(field, 3, -1).volts).toBeCloseTo(837, -1)
  let worst = 0
  for (let r = 0.1; r < 55; r *= 1.05) {
    const exact = 70 * ohm(r)
    worst = Math.max(worst, Math.abs(potentialAt(field, 2 + r, -1).volts - exact) / exact)
  }
  expect(worst).toBeLessThan(2e-3)
})

test('the table spans what is drawn, dense where it is steep', () => {
  expect(distanceAt(0)).toBe(0)
  expect(distanceAt(points - 1)).toBeCloseTo(farthest, 9)
  expect(distanceAt(1)).toBeLessThan(nearest)
})

test('a pace is the difference over one metre towards the rod', () => {
  // By hand: 70·ohm(3.5) − 70·ohm(4.5) = 304.6 − 240.8 V.
  const byHand = 70 * (ohm(3.5) - ohm(4.5))
  expect(byHand).toBeCloseTo(64, 0)
  expect(paceAt(field, 2 + 4, -1)).toBeCloseTo(byHand, 0)
})

test('the line of a level lies where the level is, in every direction', () => {
  for (const bearing of [0, 1, 2.5, 4]) {
    const at = crossingAt((x, z) => potentialAt(field, x, z).volts, 500, rod.x, rod.z, bearing)!
    expect(potentialAt(field, at.x, at.z).volts).toBeCloseTo(500, 3)
    // asinh(1.8/r) = 500/619 gives r = 2.00 m.
    expect(Math.hypot(at.x - rod.x, at.z - rod.z)).toBeCloseTo(2, 1)
  }
  expect(crossingAt((x, z) => potentialAt(field, x, z).volts, 1e6, rod.x, rod.z, 0)).toBeNull()
})

test('contours step by 1, 2 or 5 and there are 15 to 30 of them, as near as that ladder comes', () => {
  for (let top = 3; top < 20_000; top *= 1.07) {
    const step = contourInterval(top)
    expect(top / step).toBeLessThanOrEqual(34)
    expect(top / step).toBeGreaterThanOrEqual(13.5)
    expect([1, 2, 5]).toContain(Math.round(step / 10 ** Math.floor(Math.log10(step) + 1e-9)))
  }
})

test('two electrodes add up', () => {
  const both = fieldOf([rod, { ...rod, x: -2, amperes: 5 }])
  const alone = fieldOf([{ ...rod, x: -2, amperes: 5 }])
  const sum = potentialAt(field, 0.7, 0.4).volts + potentialAt(alone, 0.7, 0.4).volts
  expect(potentialAt(both, 0.7, 0.4).volts).toBeCloseTo(sum, 6)
})

test('the top of the ground is what stands 0.3 m from the strongest electrode, whatever its place in the list', () => {
  // By hand: 70 A · 100/(2π·1.8) · asinh(1.8/0.3) = 1 542 V.
  const table = { size: 70, radii, ohm: radii.map(ohm) }
  expect(groundTop([{ ...table, size: 1 }, table])).toBeCloseTo(1542, -2)
  expect(groundTop([])).toBe(0)
})
