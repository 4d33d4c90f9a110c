/** What a livening's story says of its own course, and what has reached whom by one of its seconds. */
import { describe, expect, it } from 'vitest'
import { declaredCorner } from '../../../src/engine/hazard/corner'
import type { Story } from '../../../src/engine/hazard/exposure'
import { liven } from '../../../src/engine/hazard/liven'
import { exposuresUntil } from '../../../src/engine/hazard/soFar'
import { isUnsolvable } from '../../../src/engine/physics/network'
import type { Site } from '../../../src/engine/site/site'
import { earthedSite, isolatedSite, leftHandOnB, momentOf, sharedCache, soundScenario, type Change } from './sites'

const reclosing: Change = (site) => ({ ...site, paper: { ...site.paper, recloseBlocked: {} } })
const feeder = soundScenario().feeders.find((it) => it.id === 'fx')!

function told(site: Site): Story {
  const story = liven(momentOf(site, leftHandOnB), 'clash-b', declaredCorner, sharedCache)
  if (story.kind !== 'story') throw new Error(story.reason)
  return story
}

function reached(site: Site, second: number) {
  const found = exposuresUntil(momentOf(site, leftHandOnB), 'clash-b', declaredCorner, second, sharedCache)
  if (isUnsolvable(found)) throw new Error(found.reason)
  return found
}

const ofWorker = (site: Site, second: number) => reached(site, second).find(({ person }) => person === 'pw')

describe('happenings', () => {
  it('without reclose: the relay, and the breaker its own 60 ms later; then it is over', () => {
    const { happenings, end } = told(earthedSite())
    expect(happenings.map(({ what }) => what)).toEqual(['relay-operates', 'breaker-opens'])
    expect(happenings[0]).toMatchObject({ of: 'fx', by: 'earth-fault' })
    expect(happenings[1]!.at - happenings[0]!.at).toBeCloseTo(feeder.breakerTime, 9)
    expect(happenings[1]!.at).toBe(end)
  })

  it('with reclose: after each dead time of the scenario it is closed again, and each shot ends with its relay', () => {
    const { happenings, shots } = told(earthedSite(reclosing))
    const closes = happenings.filter(({ what }) => what === 'breaker-recloses').map(({ at }) => at)
    const opens = happenings.filter(({ what }) => what === 'breaker-opens').map(({ at }) => at)
    expect(closes).toEqual(shots.slice(1).map(({ from }) => from))
    expect(opens).toEqual(shots.map(({ to }) => to))
    expect(closes.map((at, i) => at - opens[i]!)).toEqual(
      feeder.recloseDeadTimes.map((dead) => expect.closeTo(dead, 5)),
    )
  })

  it('in time, whatever they are', () => {
    const at = told(earthedSite(reclosing)).happenings.map((it) => it.at)
    expect([...at].sort((a, b) => a - b)).toEqual(at)
  })
})

describe('what has reached a person so far', () => {
  it('nothing at second 0; the whole of it at the end', () => {
    const site = earthedSite()
    const whole = told(site)
    expect(reached(site, 0)).toEqual([])
    expect(reached(site, whole.end)).toEqual(whole.exposures)
  })

  it('the same current for as long as it has flowed, so the zone only gets worse', () => {
    const site = earthedSite()
    const zones = [0.05, 0.2, 0.5, 1, 2].map((second) => {
      const exposure = ofWorker(site, second)!
      expect(exposure.duration).toBeCloseTo(second, 6)
      expect(exposure.bodyCurrent).toBe(ofWorker(site, 2)!.bodyCurrent)
      return exposure.zone
    })
    expect([...zones].sort()).toEqual(zones)
  })

  it('between two shots it is what the first one did', () => {
    const site = earthedSite(reclosing)
    const [first, second] = told(site).shots
    const inBetween = (first!.to + second!.from) / 2
    expect(ofWorker(site, inBetween)).toMatchObject({ duration: expect.closeTo(first!.to, 6), shots: { count: 1 } })
    expect(ofWorker(site, second!.to)!.shots.count).toBe(2)
  })

  it('of a section that nothing feeds: nobody has got anything', () => {
    expect(reached(isolatedSite(), 0)).toEqual([])
  })
})
