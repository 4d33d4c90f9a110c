/**
 * The same run under three employers' rules, in every place: what reaches people is the same to the last bit, whatever
 * is found fault with. What tests/engine/rules/packs/threePacks.test.ts says of the first place, of all of them.
 */
import { describe, expect, it } from 'vitest'
import { createSweepCache, judgeRun, runTimeline, type Result } from '../../../src/engine'
import { scenarioSlugs } from '../../support/record/shelf'
import { recorded, shippedPack } from '../../support/rules/recorded'

const packs = ['concrete-rod', 'multi-ground', 'two-earths'].map((id) => shippedPack(id))

/** All of a result in which no rule has a say. */
function physicsOf({ visible, told, sweep, unsolved, without, swept }: Result): string {
  return JSON.stringify({ visible, told, sweep, unsolved, without, swept })
}

const findingsOf = ({ findings }: Result): string => findings.map(({ rule, at }) => `${rule} ${at}`).join('\n')

describe.each(scenarioSlugs())('%s', (slug) => {
  it('is found fault with otherwise by another pack, and the same on everybody when the line came alive', () => {
    const { scenario, orders } = recorded('clean-livened', slug)
    const timeline = runTimeline(scenario, orders)
    // A cache each: the answers must not be the same because they were looked up.
    const results = packs.map((pack) => judgeRun(timeline, pack, { sweep: false, cache: createSweepCache() }))
    expect(timeline.struck).not.toBeNull()
    expect(new Set(results.map(physicsOf)).size).toBe(1)
    // Where a rod is driven beside a wooden pole, two of the three may ask the same.
    expect(new Set(results.map(findingsOf)).size).toBeGreaterThan(1)
  })
})

it.each(['kestrel-flat', 'bellweather-farm'])(
  '%s, swept while the earths go on, every event and none: the worst of each person and path',
  (slug) => {
    const { scenario, orders } = recorded('clean', slug)
    const earthed = orders.findIndex((it) => it.do === 'report-earths')
    const timeline = runTimeline({ ...scenario, visible: null }, orders.slice(0, earthed + 1))
    const last = { ...timeline, moments: timeline.moments.slice(-25) }
    const results = packs.map((pack) => judgeRun(last, pack, { sweep: true, cache: createSweepCache() }))
    expect(results[0]!.sweep.length).toBeGreaterThan(1)
    expect(results[0]!.swept.livenings).toBe(scenario.livenings.length + 1)
    expect(new Set(results.map(physicsOf)).size).toBe(1)
  },
  60_000,
)
