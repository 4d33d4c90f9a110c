/** How much each thing mattered: every combination against a fresh solve, and what must come out of the shares. */
import { describe, expect, it } from 'vitest'
import { cornersOf, declaredCorner } from '../../../src/engine/hazard/corner'
import { liven, type LiveMoment } from '../../../src/engine/hazard/liven'
import { judgedOf, mostDivided, protectiveThings, sharesOf, type Shares } from '../../../src/engine/hazard/share'
import { createSweepCache } from '../../../src/engine/hazard/sweepCache'
import { withoutThing, type FittedThing } from '../../../src/engine/hazard/without'
import type { JudgedPerson } from '../../../src/engine/hazard/share'
import {
  bondOn,
  changed,
  clampOn,
  coverOn,
  earthedSite,
  exposureOf,
  inScenario,
  leftHandOnB,
  momentOf,
  person,
  standsAt,
  storyOf,
  touching,
  type Change,
} from './sites'

const worker: JudgedPerson = { person: 'pw', path: 'hand-thigh', livening: 'clash-b', layers: 'hold' }
const walker: JudgedPerson = { person: 'bystander', path: 'bystander-pace', livening: 'clash-b', layers: 'hold' }

/** Ten things: lead, rod, bond, cover, two guards, three pairs of boots, barrier; gloves stay off. */
const tenThings: Change = (site) => changed(site, bondOn, coverOn(), person('pw', { wears: ['BT-42'] }))
const ten = momentOf(earthedSite(tenThings), leftHandOnB)

function shared(moment: LiveMoment, whom: JudgedPerson, corner = declaredCorner): Shares {
  const answer = sharesOf(moment, whom, corner)
  if (answer.kind !== 'shares') throw new Error(`${answer.node}: ${answer.reason}`)
  return answer
}

const shareOf = ({ shares }: Shares, kind: FittedThing['kind'], item?: string): number => {
  const found = shares.find(({ thing }) => thing.kind === kind && (item === undefined || thing.item === item))
  if (found === undefined) throw new Error(`no ${kind} among ${JSON.stringify(shares)}`)
  return found.share
}

const total = ({ shares }: Shares): number => shares.reduce((sum, it) => sum + it.share, 0)

describe('what counts as protective', () => {
  it('leads whole, bond, rod, earths at the switches, cover, guards, boots, gloves, barrier', () => {
    const earthed: Change = (site) => ({
      ...site,
      switches: {
        ...site.switches,
        'switch-27': { ...site.switches['switch-27']!, earth: { item: 'IE-1', resistance: 2 } },
      },
    })
    const kinds = protectiveThings(momentOf(earthedSite(tenThings, earthed, person('so', { wears: ['G-31'] })))).map(
      (it) => it.kind,
    )
    expect(kinds.sort()).toEqual([
      'barrier',
      'bond',
      'boots',
      'boots',
      'boots',
      'cover',
      'gloves',
      'guard',
      'guard',
      'isolation-earth',
      'lead',
      'rod',
    ])
  })
})

describe('combinations', () => {
  it('of ten things each is what a fresh solve of the site without the others gives, to the bit', () => {
    const things = protectiveThings(ten)
    expect(things.length).toBe(10)
    const cache = createSweepCache()
    let checked = 0
    // every seventh of the 1024: a step prime to 2 meets each thing, and each pair, fitted and not
    for (let set = 0; set < 1024; set += 7) {
      const moment = things.filter((_, i) => (set & (1 << i)) === 0).reduce(withoutThing, ten)
      const fresh = liven(moment, 'clash-b', declaredCorner)
      if (fresh.kind !== 'story') throw new Error(fresh.reason)
      const judged = fresh.exposures.find((it) => it.person === 'pw')?.judged ?? 0
      expect(judgedOf(moment, worker, declaredCorner, cache), `set ${set}`).toBe(judged)
      checked += 1
    }
    expect(checked).toBe(147)
  })
})

describe('shares', () => {
  const worth = shared(ten, worker)

  it('sum to the whole reduction, for everybody and in every corner', () => {
    for (const whom of [worker, walker]) {
      for (const corner of cornersOf(ten.site.scenario).slice(0, 3)) {
        const found = shared(ten, whom, corner)
        const scale = Math.max(found.withNone, ...found.shares.map((it) => Math.abs(it.share)))
        expect(Math.abs(total(found) - (found.withNone - found.withAll)) / scale).toBeLessThan(1e-12)
        expect(found.corner).toBe(corner.id)
      }
    }
  })

  it('begin and end with what the story says: everything fitted, and nothing', () => {
    expect(worth.withAll).toBe(exposureOf(storyOf(ten), 'pw').judged)
    const bare = protectiveThings(ten).reduce(withoutThing, ten)
    expect(worth.withNone).toBe(exposureOf(storyOf(bare), 'pw').judged)
  })

  it('rod and lead are one way to earth: they share evenly, but for what each does by itself', () => {
    // a rod without a lead is metal in the soil, a lead without a rod joins phases of which one is live: under 0.1 %
    const public_ = shared(ten, walker)
    for (const found of [worth, public_]) {
      expect(Math.abs(shareOf(found, 'rod') / shareOf(found, 'lead') - 1)).toBeLessThan(1e-3)
    }
  })

  it('a guard on a wire that nobody touches mattered nothing, exactly; nor the barrier to who is aloft', () => {
    expect(shareOf(worth, 'guard', 'L-51')).toBe(0)
    expect(shareOf(worth, 'guard', 'L-52')).toBe(0)
    expect(shareOf(worth, 'barrier')).toBe(0)
    expect(shareOf(shared(ten, walker), 'cover')).toBe(0)
  })

  it('hand on the conductor, thigh on concrete: cover and boots did nearly all of it, the cover most', () => {
    expect(shareOf(worth, 'cover') + shareOf(worth, 'boots', 'BT-42')).toBeGreaterThan(0.8 * worth.withNone)
    expect(shareOf(worth, 'cover')).toBeGreaterThan(2 * shareOf(worth, 'boots', 'BT-42'))
  })

  it('two things by hand: each gets half of what it does first and half of what it does second', () => {
    const two = momentOf(
      changed(earthedSite(coverOn()), (site) => ({ ...site, guards: [], barrier: null, clamps: [], rods: [] })),
      leftHandOnB,
    )
    const bootsOnly: LiveMoment = {
      ...two,
      site: { ...two.site, persons: { ...two.site.persons, ...unbooted(two, 'pic', 'gw') } },
    }
    const pw: Change = person('pw', { wears: ['BT-42'] })
    const moment = momentOf(changed(bootsOnly.site, pw), leftHandOnB)
    const things = protectiveThings(moment)
    expect(things.map((it) => it.kind)).toEqual(['cover', 'boots'])
    const [cover, boots] = things as [FittedThing, FittedThing]
    const at = (...away: FittedThing[]) => exposureOrNothing(away.reduce(withoutThing, moment))
    const [both, noCover, noBoots, none] = [at(), at(cover), at(boots), at(cover, boots)]
    const found = shared(moment, worker)
    expect(shareOf(found, 'cover')).toBeCloseTo(0.5 * (none - noBoots) + 0.5 * (noCover - both), 12)
    expect(shareOf(found, 'boots')).toBeCloseTo(0.5 * (none - noCover) + 0.5 * (noBoots - both), 12)
  })

  it('a thing can make it worse: earths at the pole put the pace at the barrier there', () => {
    const public_ = shared(ten, walker)
    expect(public_.withNone).toBeLessThan(public_.withAll)
    expect(shareOf(public_, 'lead')).toBeLessThan(0)
    expect(shareOf(public_, 'barrier')).toBeGreaterThan(0)
  })

  it('a layer between use and proof voltage counts as holding or as failing, as asked', () => {
    const moment = momentOf(earthedSite(bondOn, coverOn('C-16'), person('pw', { wears: ['BT-42'] })), leftHandOnB)
    const holds = shared(moment, worker)
    const fails = shared(moment, { ...worker, layers: 'fail' })
    expect(holds.withAll).toBeLessThan(0.001)
    expect(fails.withAll).toBe(exposureOf(storyOf(moment), 'pw').ifItFails!.judged)
    expect(shareOf(fails, 'cover')).toBeLessThan(0.1 * shareOf(holds, 'cover'))
  })
})

describe('more than ten things', () => {
  const crowded = momentOf(
    changed(
      earthedSite(bondOn, coverOn()),
      clampOn('E-09', '1', 'conductor-a'),
      person('pw', { wears: ['BT-42', 'W-1'] }),
      person('gw', { wears: ['BT-43', 'W-2'] }),
      person('so', { wears: ['G-31'] }),
      standsAt('gw', -3, 1),
    ),
    leftHandOnB,
    touching('gw', 'right-hand', { kind: 'lead', item: 'E-07', end: 'earth' }, 'W-2'),
  )

  it('the ten with the largest effect are divided among; the others are named and stay on', () => {
    const found = shared(crowded, worker)
    expect(protectiveThings(crowded).length).toBeGreaterThan(mostDivided)
    expect(found.shares.length).toBe(mostDivided)
    expect(found.undivided.length).toBe(protectiveThings(crowded).length - mostDivided)
    const kept = found.shares.map((it) => it.thing.kind)
    for (const kind of ['cover', 'lead', 'rod', 'bond'] as const) expect(kept).toContain(kind)
    expect(found.withAll).toBe(exposureOf(storyOf(crowded), 'pw').judged)
    expect(total(found)).toBeCloseTo(found.withNone - found.withAll, 10)
  })
})

describe('no answer', () => {
  it('a combination that cannot be solved leaves no shares, and says where', () => {
    const broken = inScenario(({ feeders }) => ({
      feeders: feeders.map((it) => ({ ...it, sourceImpedance: { re: Number.NaN, im: 0 } })),
    }))
    const answer = sharesOf(momentOf(earthedSite(tenThings, broken), leftHandOnB), worker, declaredCorner)
    expect(answer).toMatchObject({ kind: 'unsolvable' })
  })
})

function unbooted({ site }: LiveMoment, ...ids: readonly string[]) {
  return Object.fromEntries(ids.map((id) => [id, { ...site.persons[id]!, wears: [] }]))
}

function exposureOrNothing(moment: LiveMoment): number {
  return storyOf(moment).exposures.find((it) => it.person === 'pw')?.judged ?? 0
}
