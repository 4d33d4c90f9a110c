/** The worst instant of a run: by verdict, then by value over limit; in the corner and the way of its layers that made it. */
import { describe, expect, it } from 'vitest'
import { worstInstant } from '../../../src/engine/debrief/worstInstant'
import type { WorstExposure } from '../../../src/engine/hazard/exposure'
import type { Moment, Timeline } from '../../../src/engine/timeline/timeline'
import type { Site } from '../../../src/engine/site/site'
import { bondOn, coverOn, earthedSite, exposureOf, leftHandOnB, momentOf, storyOf } from '../hazard/sites'

const covered = earthedSite(bondOn, coverOn())
const bare = earthedSite(bondOn)
const unbonded = earthedSite()

function momentAt(from: number, site: Site, ...also: readonly Site[]): Moment {
  return { from, to: from + 10, busy: [], ...momentOf(site, leftHandOnB), also } as unknown as Moment
}

const timeline = {
  scenario: covered.scenario,
  moments: [momentAt(0, covered), momentAt(10, bare), momentAt(20, bare, unbonded), momentAt(30, unbonded, bare)],
} as unknown as Timeline

const exposure = exposureOf(storyOf(momentOf(covered, leftHandOnB)), 'pw')

const worst = (at: number, verdict: WorstExposure['verdict'], ratios: WorstExposure['ratios']): WorstExposure => {
  return { person: 'pw', path: 'hand-thigh', verdict, at, livening: 'clash-b', exposure, ratios }
}

describe('worst instant', () => {
  it('above goes before marginal, whatever their values; then the larger value', () => {
    const found = worstInstant(timeline, [
      worst(0, 'marginal', { declared: 900 }),
      worst(10, 'above', { declared: 2, 'soil-low': 3 }),
      worst(20, 'above', { declared: 2.5 }),
    ])
    expect(found).toMatchObject({ at: 10, whom: { person: 'pw', livening: 'clash-b', layers: 'hold' } })
  })

  it('names the corner of the largest value, and that its layers had failed', () => {
    const ratios = {
      declared: 0.1,
      'concrete-low fixing-high soil-low': 0.2,
      'concrete-high fixing-low soil-high fails': 7,
    }
    const found = worstInstant(timeline, [worst(0, 'marginal', ratios)])
    expect(found?.corner).toMatchObject({ id: 'concrete-high fixing-low soil-high', concrete: 2, fixing: 0.1 })
    expect(found?.whom.layers).toBe('fail')
  })

  it('of a joint being made it takes the state that was the worse for that person', () => {
    const judged = (site: Site): number => exposureOf(storyOf(momentOf(site, leftHandOnB)), 'pw').judged
    const worse = judged(bare) > judged(unbonded) ? bare : unbonded
    expect(judged(bare)).not.toBe(judged(unbonded))
    for (const at of [20, 30]) {
      expect(worstInstant(timeline, [worst(at, 'above', { declared: 2 })])?.moment.site).toBe(worse)
    }
  })

  it('nothing reached anybody: there is none', () => {
    expect(worstInstant(timeline, [])).toBeUndefined()
  })
})
