/** The sweep: every distinct state, every livening whose cause stands, every corner; the same whatever the order. */
import { describe, expect, it } from 'vitest'
import { cornersOf, declaredCorner, inCorner } from '../../../src/engine/hazard/corner'
import { verdictOf } from '../../../src/engine/hazard/limits'
import { sweep, sweepSteps, type SweptMoment } from '../../../src/engine/hazard/sweep'
import { createSweepCache, type SweepCache } from '../../../src/engine/hazard/sweepCache'
import { stream } from '../../../src/engine/math/random'
import type { Site } from '../../../src/engine/site/site'
import {
  barrierAt,
  bladesClosed,
  bondOn,
  changed,
  circleRound,
  cleanBarrier,
  coverOn,
  earthedSite,
  earthsOn,
  guardsOn,
  inScenario,
  isolatedSite,
  leftHandOnB,
  momentOf,
  othersBooted,
  rodPlace,
  unlocked,
  withRod,
  workerAloft,
} from './sites'

const start = isolatedSite(othersBooted, cleanBarrier, guardsOn())
const { scenario } = start

function at(
  from: number,
  site: Site,
  ...active: Parameters<typeof momentOf> extends [Site, ...infer Rest] ? Rest : never
): SweptMoment {
  return { from, ...momentOf(site, ...active) }
}

const clean: readonly SweptMoment[] = [
  at(0, start),
  at(10, changed(start, withRod)),
  at(20, changed(start, earthsOn, workerAloft, coverOn())),
  at(30, changed(start, earthsOn, workerAloft, coverOn(), bondOn)),
  at(40, changed(start, earthsOn, workerAloft, coverOn(), bondOn), leftHandOnB),
  at(50, changed(start, earthsOn, workerAloft, coverOn(), bondOn)),
]

function cacheOf(moments: readonly SweptMoment[]): SweepCache {
  const cache = createSweepCache()
  sweep({ scenario, moments }, cache)
  return cache
}

describe('corners', () => {
  it('declared first, then the full factorial of low and high', () => {
    const corners = cornersOf(scenario)
    expect(corners.length).toBe(1 + 2 ** scenario.ranges.length)
    expect(corners[0]).toEqual({ id: 'declared', soil: 1, fixing: 1, concrete: 1, contact: 1, moisture: 1 })
    expect(new Set(corners.map((it) => it.id)).size).toBe(corners.length)
    expect(corners.map((it) => it.id)).toContain('concrete-low fixing-high soil-low')
  })

  it('a corner scales what its range is about, and nothing else', () => {
    const corner = { ...declaredCorner, id: 'x', soil: 2, fixing: 3, concrete: 5 }
    const scaled = inCorner(scenario, corner)
    expect(scaled.soil.layers.map((it) => it.resistivity)).toEqual([200, 600])
    expect(scaled.pole).toMatchObject({ armFixing: 3_000, stepBoltFixing: 3_000, concreteResistivity: 1_000 })
    // the stay hangs by a bolt like the arm's
    expect(scaled.stay).toEqual({ ...scenario.stay, fixing: 3 * scenario.stay!.fixing })
    expect({ ...scaled, soil: 0, pole: 0, stay: 0 }).toEqual({ ...scenario, soil: 0, pole: 0, stay: 0 })
  })

  it('no ranges: one corner', () => {
    expect(cornersOf({ ranges: [] }).length).toBe(1)
    expect(() => cornersOf({ ranges: [{ of: 'soil', low: 0, high: 1 }] })).toThrow(/a range of factors/)
  })
})

describe('verdict of corners', () => {
  const ratio = (held: number, failed: number | null = null) => ({ held, failed })

  it('all above is above, none is below, some is marginal', () => {
    expect(verdictOf([ratio(2), ratio(1.1)])).toBe('above')
    expect(verdictOf([ratio(0.2), ratio(0.9)])).toBe('below')
    expect(verdictOf([ratio(0.2), ratio(1.1)])).toBe('marginal')
  })

  it('a layer that may fail is at best marginal, and above only where both ways are', () => {
    expect(verdictOf([ratio(0.1, 50)])).toBe('marginal')
    expect(verdictOf([ratio(0.1, 0.2)])).toBe('marginal')
    expect(verdictOf([ratio(2, 50)])).toBe('above')
  })

  it('a value on its limit is above it: current on line b belongs to AC-3', () => {
    expect(verdictOf([ratio(1)])).toBe('above')
  })
})

describe('sweep', () => {
  const cache = createSweepCache()
  const answer = sweep({ scenario, moments: clean }, cache)

  it('the clean states stay below for everybody, in every corner', () => {
    expect(answer.unsolved).toEqual([])
    expect(answer.worst.length).toBeGreaterThan(2)
    for (const worst of answer.worst) {
      expect(worst.verdict, `${worst.person} ${worst.path}`).toBe('below')
      expect(Object.keys(worst.ratios).length).toBe(9)
    }
  })

  it('counts distinct states: the bonded one is met twice', () => {
    expect(answer).toMatchObject({ states: 5, livenings: scenario.livenings.length + 1, corners: 9 })
  })

  it('bare thigh and hand on B is above in every corner, and says when and by which event', () => {
    const bare = at(60, changed(start, earthsOn, workerAloft), leftHandOnB)
    const found = sweep({ scenario, moments: [...clean, bare] }, cache).worst.find((it) => it.path === 'hand-thigh')
    expect(found).toMatchObject({ person: 'pw', verdict: 'above', at: 60 })
    expect(found?.livening).toMatch(/^clash/)
  })

  it('a hung blade needs no event: above with the supply as it is set', () => {
    const hung = at(60, changed(isolatedSite(workerAloft, othersBooted), bladesClosed('switch-27', 'B')), leftHandOnB)
    const found = sweep({ scenario, moments: [hung] }, cache).asSet.find((it) => it.person === 'pw')
    expect(found).toMatchObject({ path: 'hand-thigh', verdict: 'above', livening: 'none' })
    expect(answer.asSet.filter((it) => it.verdict !== 'below')).toEqual([])
  })

  it('a class 0 cover is marginal by its layer, named with both ratios', () => {
    const zero = at(60, changed(start, earthsOn, workerAloft, bondOn, coverOn('C-16')), leftHandOnB)
    const found = sweep({ scenario, moments: [zero] }, cache).worst.find((it) => it.person === 'pw')
    expect(found?.verdict).toBe('marginal')
    expect(found?.ratios['declared']).toBeLessThan(1)
    expect(found?.ratios['declared fails']).toBeGreaterThan(1)
  })

  it('a barrier 3 m from the rod is above for the public', () => {
    const near = at(60, changed(earthedSite(bondOn), barrierAt(circleRound(rodPlace, 3))))
    const found = sweep({ scenario, moments: [near] }, cache).worst.find((it) => it.path === 'bystander-pace')
    expect(found?.verdict).toBe('above')
  })

  it('a switch left unlocked adds its own event', () => {
    const open = at(60, changed(earthedSite(bondOn, coverOn()), unlocked('switch-27')), leftHandOnB)
    const before = cache.lines.size
    sweep({ scenario, moments: [open] }, cache)
    expect(cache.lines.size).toBeGreaterThan(before)
  })

  it('the same whatever the order of the states, the cache, or what was solved before', () => {
    const again = sweep({ scenario, moments: clean }, cache)
    const fresh = sweep({ scenario, moments: clean })
    const backwards = createSweepCache()
    sweep({ scenario, moments: [...clean].reverse() }, backwards)
    const after = sweep({ scenario, moments: clean }, backwards)
    expect(JSON.stringify(again)).toBe(JSON.stringify(answer))
    expect(JSON.stringify(fresh)).toBe(JSON.stringify(answer))
    expect(JSON.stringify(after)).toBe(JSON.stringify(answer))
  })

  it('the same bytes with moments and livenings in another order, in the run and in the scenario', () => {
    const order = stream(7, 'sweep')
    const shuffled = <T>(list: readonly T[]): T[] => {
      const out = [...list]
      for (let i = out.length - 1; i > 0; i--) {
        const j = order.below(i + 1)
        ;[out[i], out[j]] = [out[j]!, out[i]!]
      }
      return out
    }
    for (let round = 0; round < 2; round++) {
      const other = { ...scenario, livenings: shuffled(scenario.livenings) }
      const moments = shuffled(clean).map((it) => ({ ...it, site: { ...it.site, scenario: other } }))
      expect(moments.map((it) => it.from)).not.toEqual(clean.map((it) => it.from))
      expect(JSON.stringify(sweep({ scenario: other, moments }))).toBe(JSON.stringify(answer))
    }
  })

  it('ended between two states and begun again it gives the same bytes, and solves nothing twice', () => {
    const kept = createSweepCache()
    const steps = sweepSteps({ scenario, moments: clean }, kept)
    expect([steps.next().value, steps.next().value]).toEqual([
      { done: 1, total: 5 },
      { done: 2, total: 5 },
    ])
    const solved = kept.states.size
    expect(solved).toBe(2)
    const told: number[] = []
    const whole = sweep({ scenario, moments: clean }, kept, (done) => told.push(done))
    expect(JSON.stringify(whole)).toBe(JSON.stringify(answer))
    expect(told).toEqual([1, 2, 3, 4, 5])
    expect(kept.lines.size).toBe(cacheOf(clean).lines.size)
  })

  it('a second sweep with the same cache solves nothing', () => {
    const lines = cache.lines.size
    const answers = cache.answers.size
    sweep({ scenario, moments: clean }, cache)
    expect([cache.lines.size, cache.answers.size]).toEqual([lines, answers])
  })

  it('a quick look at the declared corner gives that corner’s numbers', () => {
    const quick = sweep({ scenario, moments: clean }, cache, undefined, [declaredCorner])
    expect(quick.corners).toBe(1)
    const whole = sweep({ scenario, moments: clean }, cache)
    for (const it of quick.worst) {
      expect(Object.keys(it.ratios)).toEqual(['declared'])
      const same = whole.worst.find((other) => other.person === it.person && other.path === it.path)
      expect(Object.values(it.ratios)[0]!).toBeLessThanOrEqual(Math.max(...Object.values(same!.ratios)))
    }
  })

  it('tells how far it is', () => {
    const told: [number, number][] = []
    sweep({ scenario, moments: clean }, cache, (done, total) => told.push([done, total]))
    expect(told).toEqual([1, 2, 3, 4, 5].map((done) => [done, 5]))
  })

  it('what cannot be solved is listed with its moment, livening and corner; what it leaves is never below', () => {
    // a source of nothing: two ideal voltages through no impedance at all
    const broken = inScenario(({ feeders }) => ({
      feeders: feeders.map((it) => ({ ...it, sourceImpedance: { re: Number.NaN, im: 0 } })),
    }))
    const site = changed(earthedSite(bondOn, coverOn()), broken)
    const found = sweep({ scenario: site.scenario, moments: [at(7, site, leftHandOnB)] })
    expect(found.unsolved.length).toBeGreaterThan(0)
    expect(found.unsolved[0]).toMatchObject({ kind: 'unsolvable', at: 7, corner: 'declared' })
    expect(found.unsolved.map((it) => it.livening)).toContain('clash-b')
    expect(found.worst.filter((it) => it.livening.startsWith('clash'))).toEqual([])
  })
})
