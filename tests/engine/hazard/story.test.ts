/** The story of a livening: relays integrated over re-solves, shots, melting leads, the horizon. */
import { describe, expect, it } from 'vitest'
import { advance, freshBreaker, nextOf, type Breaker } from '../../../src/engine/hazard/protection/breaker'
import { declaredCorner } from '../../../src/engine/hazard/corner'
import { lineOf } from '../../../src/engine/hazard/liven'
import type { LineStory } from '../../../src/engine/hazard/lineStory'
import { isUnsolvable } from '../../../src/engine/physics/network'
import type { Site } from '../../../src/engine/site/site'
import {
  bladesClosed,
  bondOn,
  changed,
  clampOn,
  coverOn,
  defect,
  earthedSite,
  exposureOf,
  inScenario,
  isolatedSite,
  labelled,
  leftHandOnB,
  momentOf,
  othersBooted,
  sharedCache,
  soundScenario,
  storyOf,
  unlocked,
  withRod,
  workerAloft,
  type Change,
} from './sites'

const feeder = soundScenario().feeders.find((it) => it.id === 'fx')!

/** IEC 60255-151 standard inverse. */
const inverse = (pickup: number, multiplier: number, current: number): number =>
  (multiplier * 0.14) / ((current / pickup) ** 0.02 - 1)

const reclosing: Change = (site) => ({ ...site, paper: { ...site.paper, recloseBlocked: {} } })

function line(site: Site, livening = 'clash-b'): LineStory {
  const answer = lineOf(site, livening, declaredCorner, sharedCache)
  if (isUnsolvable(answer)) throw new Error(answer.reason)
  return answer
}

describe('a breaker with its relays', () => {
  const currents = (residual: number, phase = residual) => ({ residual, phase })

  it('opens 60 ms after the earth-fault relay has made its travel', () => {
    let breaker = freshBreaker(feeder, true)
    const operates = nextOf(breaker, 0, currents(70))
    expect(operates).toBeCloseTo(inverse(40, 0.2, 70), 5)
    breaker = advance(breaker, 0, operates, currents(70))
    expect(breaker).toMatchObject({ isClosed: true, operated: 'earth-fault' })
    const opens = nextOf(breaker, operates, currents(70))
    expect(opens - operates).toBeCloseTo(0.06, 9)
    expect(advance(breaker, operates, opens, currents(70))).toMatchObject({ isClosed: false, recloseAt: null })
  })

  it('adds up travel at changing currents: Σ dt/t(I) = 1 (IEEE C37.112)', () => {
    const first = 1.2
    const half = advance(freshBreaker(feeder, true), 0, first, currents(70))
    const left = (1 - first / inverse(40, 0.2, 70)) * inverse(40, 0.2, 300)
    expect(nextOf(half, first, currents(300))).toBeCloseTo(first + left, 5)
  })

  it('at or below pickup it never operates, and loses the travel it has unless its data says otherwise', () => {
    const travelAfter = (reset: 'at-once' | 'kept'): readonly number[] => {
      const half = advance(freshBreaker({ ...feeder, relayReset: reset }, true), 0, 1, currents(70))
      expect(half.relays[0]!.travel).toBeCloseTo(1 / inverse(40, 0.2, 70), 9)
      expect(nextOf(half, 1, currents(40))).toBe(Infinity)
      return advance(half, 1, 9, currents(40)).relays.map((it) => it.travel)
    }
    expect(travelAfter('at-once')).toEqual([0, 0])
    expect(travelAfter('kept')[0]).toBeCloseTo(1 / inverse(40, 0.2, 70), 9)
  })

  it('the faster of the two relays trips: overcurrent 400 A × 0.1 at 1500 A', () => {
    const breaker = freshBreaker(feeder, true)
    const next = nextOf(breaker, 0, currents(30, 1_500))
    expect(next).toBeCloseTo(inverse(400, 0.1, 1_500), 5)
    expect(advance(breaker, 0, next, currents(30, 1_500)).operated).toBe('overcurrent')
  })

  it('recloses after its dead time unless that is blocked, each shot from rest, then stays open', () => {
    const shot = (breaker: Breaker, now: number): { breaker: Breaker; now: number } => {
      const operates = nextOf(breaker, now, currents(70))
      const tripped = advance(breaker, now, operates, currents(70))
      const opens = nextOf(tripped, operates, currents(70))
      return { breaker: advance(tripped, operates, opens, currents(70)), now: opens }
    }
    const once = shot(freshBreaker(feeder, false), 0)
    expect(once.breaker.recloseAt).toBeCloseTo(once.now + feeder.recloseDeadTimes[0]!, 6)
    const again = advance(once.breaker, once.now, once.breaker.recloseAt!, currents(0))
    expect(again).toMatchObject({ isClosed: true, operated: null })
    expect(again.relays.map((it) => it.travel)).toEqual([0, 0])
    expect(shot(again, once.breaker.recloseAt!).breaker).toMatchObject({ isClosed: false, recloseAt: null })
  })
})

describe('shots', () => {
  it('reclose blocked: one shot; not blocked: a second one after 5 s, judged as a shock of its own', () => {
    const site = earthedSite(bondOn)
    const blocked = line(site)
    const open = line(changed(site, reclosing))
    expect(blocked.phases.filter((it) => it.isLive).length).toBe(1)
    expect(open.phases.map((it) => it.isLive)).toEqual([true, false, true])
    expect(open.phases[1]!.to - open.phases[1]!.from).toBeCloseTo(5, 5)
    expect(open.duration).toBeCloseTo(blocked.duration, 3)
    expect(open.end).toBeCloseTo(2 * blocked.end + 5, 2)
    expect(open).toMatchObject({ cleared: true, clearedBy: 'earth-fault' })
    const story = storyOf(momentOf(changed(site, reclosing), leftHandOnB))
    expect(exposureOf(story, 'pw').duration).toBeCloseTo(blocked.duration, 3)
  })

  it('every event on a whole microsecond', () => {
    for (const phase of line(changed(earthedSite(bondOn), reclosing)).phases) {
      expect(Math.abs(phase.to * 1e6 - Math.round(phase.to * 1e6))).toBeLessThan(1e-3)
    }
  })
})

describe('leads in the fault', () => {
  const bolted = unlocked('switch-27')
  /** A lead of 1 mm²: (226·1)² ln((234.5 + 1083)/254.5) / I² is its melting time. */
  const thin = labelled('E-07', { area: 1 })
  const meltingTime = (current: number): number => (226 ** 2 * Math.log((234.5 + 1_083) / 254.5)) / current ** 2

  it('25 mm² carries three phases at 1.6 kA until the relay, unharmed', () => {
    const story = storyOf(momentOf(earthedSite(bondOn, bolted)), 'switch-27-closed')
    expect(story.meltedItems).toEqual([])
    expect(story.carriedBy).toContain('E-07')
  })

  it('1 mm² melts between the phases first, and what it held together comes apart', () => {
    const site = earthedSite(bondOn, coverOn(), bolted, thin)
    const story = line(site, 'switch-27-closed')
    const before = story.phases[0]!
    expect(before.to).toBeCloseTo(meltingTime(1_600), 2)
    expect(story.gone.length).toBeGreaterThan(0)
    expect(story.gone.every((id) => id.startsWith('piece/E-07/'))).toBe(true)
    expect(storyOf(momentOf(site, leftHandOnB), 'switch-27-closed').meltedItems).toEqual(['E-07'])
    const size = (volt: { re: number; im: number }) => Math.hypot(volt.re, volt.im)
    const at = (phase: (typeof story.phases)[number]) => size(phase.view.voltage('conductor-a@pole'))
    expect(at(before)).toBeLessThan(500)
    expect(at(story.phases[1]!)).toBeGreaterThan(2_000)
  })

  it('heating goes on through the shots: a section that just survives one shot melts in the second', () => {
    const shots = (area: number) => line(earthedSite(bondOn, bolted, labelled('E-07', { area })), 'switch-27-closed')
    // I²t of one shot at 1.6 kA and 0.56 s is 1.4e6 A²s: about 4.1 mm² of copper melts in one, 5.9 mm² in two
    const survives = shots(8)
    expect(survives.gone).toEqual([])
    const between = shots(5)
    expect(between.gone.length).toBeGreaterThan(0)
    const melted = between.phases.find((it, i) => i > 0 && it.isLive && between.phases[i - 1]?.isLive)
    expect(melted?.shot).toBe(2)
  })

  it('a clamp set by hand on an oxidised seat burns off: 20 mΩ at 1.6 kA takes its 50 kJ in about a second', () => {
    const loose = changed(
      isolatedSite(
        withRod,
        clampOn('E-07', 'earth', 'rod/R-1'),
        clampOn('E-07', '1', 'conductor-a', { brushed: false }),
        clampOn('E-07', '2', 'conductor-b', { brushed: false, turns: 2 }),
        clampOn('E-07', '3', 'conductor-c'),
      ),
      bolted,
      inScenario(({ feeders }) => ({
        feeders: feeders.map((it) => ({ ...it, overcurrent: { ...it.overcurrent, multiplier: 1 } })),
      })),
    )
    const story = line(loose, 'switch-27-closed')
    expect(story.gone).toContain('clamp/E-07/2')
    expect(story.phases[0]!.to).toBeGreaterThan(0.8)
    expect(story.phases[0]!.to).toBeLessThan(1.2)
  })
})

describe('how it ends', () => {
  it('nothing clears it: the horizon, marked so', () => {
    const poor = inScenario(() => ({ soil: { layers: [{ resistivity: 1_300 }] } }))
    const story = line(earthedSite(poor))
    expect(story).toMatchObject({ cleared: false, clearedBy: 'nothing', duration: 60, end: 60 })
  })

  it('no source reaches the section: not live, whatever the low voltage does', () => {
    const story = line(earthedSite(bondOn), 'none')
    expect(story).toMatchObject({ clearedBy: 'not-live', liveCurrent: 0, feeders: [] })
  })

  it('a livening without its cause is the supply as set: locked switch, source taken out, source proved off', () => {
    const site = earthedSite(bondOn)
    expect(line(site, 'switch-27-closed').clearedBy).toBe('not-live')
    expect(line(changed(site, unlocked('switch-27')), 'switch-27-closed').clearedBy).toBe('overcurrent')
    const out: Change = (it) => ({ ...it, feedersOut: ['fx'] })
    expect(line(changed(site, out)).clearedBy).toBe('not-live')
    const provedOff: Change = (it) => ({ ...it, livening: { id: 'clash-a', at: 1, cleared: true, provedOff: true } })
    expect(line(changed(site, provedOff)).clearedBy).toBe('not-live')
  })

  it('the tie switch closed brings the neighbour’s feeder, a hung blade there one phase of it', () => {
    expect(line(changed(earthedSite(bondOn), unlocked('switch-31')), 'switch-31-closed').feeders).toEqual(['f2'])
    expect(line(earthedSite(bondOn, bladesClosed('switch-31', 'C')), 'none').feeders).toEqual(['f2'])
  })

  it('two feeders at once, each with its own breaker: it ends with the slower one', () => {
    const story = line(earthedSite(bondOn, bladesClosed('switch-27', 'A')), 'clash-b')
    expect(story.feeders).toEqual(['f1', 'fx'])
    expect(story.cleared).toBe(true)
    expect(story.phases.filter((it) => it.isLive).length).toBeGreaterThanOrEqual(1)
  })

  it('unearthed neutral: a few tenths of an ampere of capacitance, never cleared', () => {
    const unearthed = inScenario(({ feeders }) => ({
      feeders: feeders.map((it) => ({ ...it, neutral: { kind: 'unearthed' } as const })),
    }))
    const story = line(earthedSite(bondOn, unearthed))
    expect(story.clearedBy).toBe('nothing')
    // 4 km of line at about 4.5 pF/m to earth and phase: 3·ω·C0·V is 0.1 A
    expect(story.liveCurrent).toBeGreaterThan(0.05)
    expect(story.liveCurrent).toBeLessThan(0.3)
  })
})

describe('what a fault leaves on the gear', () => {
  it('lead, bond and rod that carried it are named; a lead that hangs free is not', () => {
    const story = storyOf(momentOf(earthedSite(bondOn), leftHandOnB))
    expect(story.carriedBy).toEqual(['B-02', 'E-07', 'R-1'])
    const free = isolatedSite(withRod, othersBooted, workerAloft, clampOn('E-07', '1', 'conductor-b'))
    expect(storyOf(momentOf(free)).carriedBy).toEqual([])
  })

  it('a painted rod seat adds its 0.3 Ω and nothing else at 70 A', () => {
    const bright = storyOf(momentOf(earthedSite(bondOn)))
    const rusty = storyOf(momentOf(earthedSite(bondOn, defect('R-1', 'rusty-seat'))))
    expect(rusty.liveCurrent).toBeLessThan(bright.liveCurrent)
    expect(rusty.liveCurrent / bright.liveCurrent).toBeGreaterThan(0.99)
  })
})
