// What the soil does at one instant, against what the theory of earth electrodes says of any site.

import { expect, test } from 'vitest'
import { declaredCorner, groundHazard, isUnsolvable, type GroundPoint } from '../../../src/engine'
import { sharedCache } from '../../engine/hazard/sites'
import { alongLine, groundReport, overRectangle, surfaceCsv } from '../../../src/reports/ground'
import { instantCases, solveCase } from '../../support/netlistInstants'

const found = instantCases.find((it) => it.id === 'earths-on-bare-pole')!

function reportAt(places: readonly GroundPoint[]) {
  const hazard = groundHazard(found.moment(), found.livening, declaredCorner, { cache: sharedCache })
  if (isUnsolvable(hazard)) throw new Error(hazard.reason)
  return groundReport(solveCase(found, []).instant, hazard, places)
}

/** Phasors of a report: magnitude and degrees to a pair. */
function phasor(size: number, degrees: number): readonly [number, number] {
  const turn = (degrees * Math.PI) / 180
  return [size * Math.cos(turn), size * Math.sin(turn)]
}

test('each electrode stands at what the matrix and all currents say: V = R I', () => {
  const { electrodes, mutualOhm } = reportAt([])
  const currents = electrodes.map((it) => phasor(it.currentA, it.currentAngleDeg))
  electrodes.forEach((it, i) => {
    const [re, im] = phasor(it.voltageV, it.voltageAngleDeg)
    const along = (part: 0 | 1) => mutualOhm[i]!.reduce((sum, ohm, j) => sum + ohm * currents[j]![part], 0)
    expect(along(0)).toBeCloseTo(re, 6)
    expect(along(1)).toBeCloseTo(im, 6)
  })
  expect(electrodes.find((it) => it.id === 'rod/R-1')!.voltageV).toBeGreaterThan(1000)
  mutualOhm.forEach((row, i) => row.forEach((ohm, j) => expect(ohm).toBeCloseTo(mutualOhm[j]![i]!, 9)))
})

test('far away the site is one point on the lower layer: V = ρ2 I / 2πr (Sunde 1949, the field of a point far out)', () => {
  const far = { x: -1500, y: 0 }
  const { electrodes, surface } = reportAt([far])
  const sum = electrodes
    .map((it) => phasor(it.currentA, it.currentAngleDeg))
    .reduce(([re, im], [a, b]) => [re + a, im + b] as const, [0, 0] as const)
  const expected = (300 * Math.hypot(...sum)) / (2 * Math.PI * 1500)
  expect(surface[0]!.voltageV / expected).toBeCloseTo(1, 2)
})

test('the surface beside the rod is lower than the rod and falls outwards', () => {
  const line = alongLine({ from: { x: -4, y: 0 }, to: { x: -20, y: 0 }, step: 0.5 })
  const { electrodes, surface } = reportAt(line)
  const volts = surface.map((it) => it.voltageV)
  expect(volts[0]).toBeLessThan(electrodes.find((it) => it.id === 'rod/R-1')!.voltageV)
  volts.slice(1).forEach((volt, k) => expect(volt).toBeLessThan(volts[k]!))
})

test('places: both ends, never further apart than the step', () => {
  const line = alongLine({ from: { x: 0, y: 0 }, to: { x: 3, y: 4 }, step: 1.5 })
  expect(line).toEqual([0, 1.25, 2.5, 3.75, 5].map((at) => ({ x: (3 * at) / 5, y: (4 * at) / 5 })))
  const grid = overRectangle({ from: { x: 0, y: 0 }, to: { x: 1, y: 2 }, step: 1 })
  expect(grid.map(({ x, y }) => `${x} ${y}`)).toEqual(['0 0', '1 0', '0 1', '1 1', '0 2', '1 2'])
  expect(alongLine({ from: { x: 2, y: 2 }, to: { x: 2, y: 2 }, step: 1 })).toHaveLength(2)
})

test('the surface as a table', () => {
  const report = reportAt([{ x: 1, y: 2 }])
  const { voltageV, angleDeg } = report.surface[0]!
  expect(surfaceCsv(report)).toBe(`xM,yM,voltageV,angleDeg\n1,2,${voltageV},${angleDeg}\n`)
})

test('the limits are those of IEEE Std 80 at 50 kg: step to touch as 1000 + 6 ρ to 1000 + 1.5 ρ', () => {
  const { tolerable, format, version } = reportAt([])
  expect([format, version]).toEqual(['earths-on/ground', 1])
  expect(tolerable.stepV / tolerable.touchV).toBeCloseTo(1600 / 1150, 9)
  expect(tolerable.durationS).toBeGreaterThan(0)
})

test('what only lies in the field of the rod needs no barrier of its own; the barrier as drawn encloses the rod’s zone', () => {
  const { electrodes, barrier, tolerableContour } = reportAt([])
  const distanceOf = (id: string) => electrodes.find((it) => it.id === id)!.safeDistanceM
  // ρI/2πr(r + 1) of a point on 100 to 300 Ω·m, 70 A, 116 V: between 2.6 and 4.9 m
  expect(distanceOf('rod/R-1')).toBeGreaterThan(2.6)
  expect(distanceOf('rod/R-1')).toBeLessThan(4.9)
  expect(distanceOf('lv/star')).toBe(0)
  expect(tolerableContour).toHaveLength(1)
  expect(barrier.isEnclosing).toBe(true)
  expect(barrier.sticksOut).toEqual([])
  expect(barrier.worstPace!.voltageV).toBeGreaterThan(0)
})

test('a hand on the rod: its own voltage less the ground’s, far above what is tolerable', () => {
  const { touches, electrodes, tolerable } = reportAt([])
  const rod = touches.find((it) => it.id === 'rod/R-1')!
  expect(rod.voltageV).toBeCloseTo(electrodes.find((it) => it.id === 'rod/R-1')!.voltageV, 6)
  expect(rod.touchV).toBeLessThan(rod.voltageV)
  expect(rod.touchV).toBeGreaterThan(10 * tolerable.touchV)
  expect(rod.isTolerable).toBe(false)
})
