/**
 * Back-feed through a transformer of the section, against figures by hand: 5 kVA at 11 kV is 5000 / (√3 × 11 000) =
 * 0.262 A; phase voltage 6351 V. The rule (a small set cannot hold the line up once there are earths between phases, one
 * clamp and a rod take nothing away) is that of the trade, common practice, no source.
 */
import { describe, expect, it } from 'vitest'
import { solveInstant, type Instant } from '../../../src/engine/hazard/instant'
import { declaredCorner } from '../../../src/engine/hazard/corner'
import { magnitude, subtract, type Complex } from '../../../src/engine/math/complex'
import { backFed } from './backFeedSites'
import {
  clampOn,
  coverOn,
  earthedSite,
  exposureOf,
  isolatedSite,
  leftHandOnB,
  momentOf,
  sharedCache,
  storyOf,
  withRod,
  without,
  workerAloft,
  type Change,
} from './sites'
import type { LiveMoment } from '../../../src/engine/hazard/liven'

const rated = 5_000 / (Math.sqrt(3) * 11_000)
const phaseVoltage = 11_000 / Math.sqrt(3)

function instantOf(moment: LiveMoment, livening = 'set-on'): Instant {
  const answer = solveInstant(moment, livening, declaredCorner, { cache: sharedCache })
  if (answer.kind !== 'instant') throw new Error(`${answer.reason} at ${answer.node}`)
  return answer
}

const at = (instant: Instant, node: string): Complex => {
  const found = instant.nodes.find((it) => it.node === node)
  if (!found) throw new Error(`no node ${node}`)
  return found.voltage
}
const amperes = (instant: Instant, id: string): number => {
  const found = instant.branches.find((it) => it.id === id)
  if (!found) throw new Error(`no branch ${id}`)
  return found.size
}
const between = (instant: Instant, a: string, b: string): number =>
  magnitude(subtract(at(instant, `conductor-${a}@pole`), at(instant, `conductor-${b}@pole`)))
const oneClamp: readonly Change[] = [withRod, clampOn('E-07', 'earth', 'rod/R-1'), clampOn('E-07', '2', 'conductor-b')]

describe('fact 8: a generator of a few kVA', () => {
  it('without earths holds the line at full high voltage', () => {
    const instant = instantOf(momentOf(isolatedSite(backFed())))
    for (const [a, b] of [
      ['a', 'b'],
      ['b', 'c'],
      ['c', 'a'],
    ] as const) {
      expect(between(instant, a, b) / 11_000).toBeGreaterThan(0.95)
      expect(between(instant, a, b) / 11_000).toBeLessThan(1.05)
    }
  })

  it('cannot hold it up once there are earths between phases: 0.262 A, and no volts', () => {
    const instant = instantOf(momentOf(earthedSite(backFed())))
    // 1 per unit of its own and 4 % of 25 kVA, 0.8 % of 5 kVA, in series: 0.262 A / 1.008
    for (const phase of ['A', 'B', 'C']) expect(amperes(instant, `t1/carrier-${phase}`)).toBeCloseTo(rated / 1.008, 3)
    for (const id of ['a', 'b', 'c']) expect(magnitude(at(instant, `conductor-${id}@pole`))).toBeLessThan(0.1)
    expect(instant.story.siteRise).toBeLessThan(0.1)
  })

  it('one clamp and a rod on a delta winding collapse nothing: that phase is earthed, the others rise to 11 kV', () => {
    const instant = instantOf(momentOf(isolatedSite(backFed(), ...oneClamp)))
    expect(between(instant, 'a', 'b') / 11_000).toBeGreaterThan(0.95)
    expect(magnitude(at(instant, 'conductor-a@pole')) / 11_000).toBeGreaterThan(0.95)
    expect(magnitude(at(instant, 'conductor-c@pole')) / 11_000).toBeGreaterThan(0.95)
    // only the section's own capacitance returns: 1 km × 2π50 × (5 to 6 nF/km a phase) × 3 × 6351 V is some 30 mA
    expect(amperes(instant, 'clamp/E-07/2')).toBeGreaterThan(0.01)
    expect(amperes(instant, 'clamp/E-07/2')).toBeLessThan(0.06)
    expect(instant.story.siteRise).toBeLessThan(10)
  })

  it('two phases joined: they meet half way, the third stands at 1.5 times phase voltage from them', () => {
    const instant = instantOf(momentOf(earthedSite(backFed(), without('E-07', '3'))))
    expect(between(instant, 'a', 'b')).toBeLessThan(0.1)
    // equal positive and negative sequence: 1.5; charging the section through 1 per unit lifts it by some per cent
    expect(between(instant, 'c', 'a') / phaseVoltage).toBeGreaterThan(1.5 * 0.92)
    expect(between(instant, 'c', 'a') / phaseVoltage).toBeLessThan(1.5 * 1.08)
  })

  it('the worker with a hand on B is the earth of the floating line: its charging current, 30 mA; nothing with earths', () => {
    const bare = storyOf(momentOf(isolatedSite(backFed(), workerAloft), leftHandOnB), 'set-on')
    const worker = exposureOf(bare, 'pw')
    expect(worker.zone).toBe('AC-3')
    expect(worker.bodyCurrent).toBeGreaterThan(0.01)
    expect(worker.bodyCurrent).toBeLessThan(0.06)
    expect(worker.judged).toBeGreaterThan(worker.limit)
    const safe = storyOf(momentOf(earthedSite(backFed(), coverOn()), leftHandOnB), 'set-on')
    expect(safe.exposures.find((it) => it.person === 'pw')?.bodyCurrent ?? 0).toBeLessThan(0.0005)
  })
})
