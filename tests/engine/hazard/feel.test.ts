/** Feelers: a pace or a touch anywhere, against what the public gets and against the ground's own potentials. */
import { describe, expect, it } from 'vitest'
import { declaredCorner } from '../../../src/engine/hazard/corner'
import type { Exposure } from '../../../src/engine/hazard/exposure'
import { feel } from '../../../src/engine/hazard/feel'
import { groundVoltages } from '../../../src/engine/hazard/ground/groundHazard'
import { isUnsolvable } from '../../../src/engine/physics/network'
import { earthedSite, isolatedSite, momentOf, rodPlace, sharedCache } from './sites'

const moment = momentOf(earthedSite())

function felt(kind: 'pace' | 'touch', x: number, y: number, at = moment): Exposure | null {
  const answer = feel(at, 'clash-b', declaredCorner, { kind, at: { x, y } }, sharedCache)
  if (answer !== null && isUnsolvable(answer)) throw new Error(answer.reason)
  return answer
}

function groundAt(x: number, y: number): number {
  const grid = { from: { x, y }, step: 1, columns: 1, rows: 1 }
  const volts = groundVoltages(moment, 'clash-b', declaredCorner, grid, sharedCache)
  if (isUnsolvable(volts)) throw new Error(volts.reason)
  return volts[0]!
}

describe('a pace', () => {
  it('straight away from the rod, on the side where nothing else lies, is what the ground falls by', () => {
    for (const out of [2, 4, 8]) {
      const falls = groundAt(rodPlace.x - out, 0) - groundAt(rodPlace.x - out - 1, 0)
      const towards = groundAt(rodPlace.x - out + 1, 0) - groundAt(rodPlace.x - out, 0)
      // Towards the rod the ground is steeper: the worst direction is that one.
      expect(felt('pace', rodPlace.x - out, 0)!.prospectiveVoltage).toBeCloseTo(towards, 0)
      expect(towards).toBeGreaterThan(falls)
    }
  })

  it('further out is milder, and far away next to nothing', () => {
    const volts = [2, 4, 8, 16].map((out) => felt('pace', rodPlace.x - out, 0)!.prospectiveVoltage)
    expect([...volts].sort((a, b) => b - a)).toEqual(volts)
    expect(felt('pace', rodPlace.x - 60, 0)!.zone).toMatch(/AC-[12]/)
  })

  it('runs from foot to foot, is judged by the tolerable step, and nothing that is worn holds it', () => {
    expect(felt('pace', rodPlace.x - 3, 0)).toMatchObject({ shockPath: 'foot-foot', layer: null })
    const { limit, judged, prospectiveVoltage, duration } = felt('pace', rodPlace.x - 3, 0)!
    expect(judged).toBe(prospectiveVoltage)
    // IEEE 80 (from memory): (1000 + 6 · 100 ohm·m) · 0.116 / √t
    expect(limit).toBeCloseTo((1600 * 0.116) / Math.sqrt(duration), 6)
  })
})

describe('a touch', () => {
  it('of the rod is its rise less the ground under the feet', () => {
    const site = felt('touch', rodPlace.x - 1, 0)!
    expect(site.shockPath).toBe('left-hand-feet')
    // Nine tenths of the phase voltage on the rod (hand calculation: 70 A on 81 ohm), a metre away most of it is gone.
    expect(site.prospectiveVoltage).toBeGreaterThan(2500)
    expect(site.prospectiveVoltage).toBeLessThan(5700)
    expect(site.zone).toBe('AC-4.3')
  })

  it('needs something within an arm of there', () => {
    expect(felt('touch', rodPlace.x - 4, 0)).toBeNull()
  })
})

it('without a source nothing is felt', () => {
  const quiet = momentOf(isolatedSite((site) => ({ ...site, feedersOut: ['fx'] })))
  expect(felt('pace', rodPlace.x - 1, 0, quiet)).toBeNull()
})
