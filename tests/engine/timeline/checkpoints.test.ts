/** Parts of the job start on a site that the clean run prepared; what each must hold is common practice, no source. */
import { describe, expect, test } from 'vitest'
import { openingAt, openTimeline, parts, runTimeline, type Part, type Site } from '../../../src/engine'
import { recorded } from '../../support/cleanStages'
import { marrowBend } from '../../support/marrowBend'

const orders = recorded('clean').entries.map((it) => it.order)

function opening(part: Part, seed = 1): Site {
  const found = openingAt(marrowBend(seed), orders, part)
  if (!found) throw new Error(part)
  return found.site
}

describe('parts of the job', () => {
  test.each(parts)('%s can be reached', (part) => {
    expect(opening(part).scenario.seed).toBe(1)
  })

  test('gear: briefed and signed on, nothing signed out', () => {
    const site = opening('gear')
    expect(Object.values(site.persons).every((it) => it.briefed && it.signedOn)).toBe(true)
    expect(Object.values(site.items).some((it) => it.bookedOut)).toBe(false)
  })

  test('isolated: switch open, locked, permit held, nothing on the ground yet', () => {
    const site = opening('isolated')
    expect(site.switches['switch-27']).toMatchObject({ handle: 'open', lock: 'K-71' })
    expect([site.paper.permit, site.rods, site.barrier]).toEqual(['held', [], null])
  })

  test('below LV: the pole worker stands there, rod and earth end are in, no guard yet', () => {
    const site = opening('below-lv')
    expect(site.persons['pw']?.place).toEqual({ kind: 'pole', station: 'below-lv' })
    expect([site.rods.length, site.clamps.length, site.guards.length]).toEqual([1, 1, 0])
  })

  test('earths on: three conductor clamps, no cover', () => {
    const site = opening('earths-on')
    expect([site.clamps.length, site.cover]).toEqual([4, null])
  })

  test('work done: insulator replaced, everything still on', () => {
    const site = opening('work-done')
    expect([site.insulator, site.clamps.length, site.cover !== null]).toEqual(['replaced', 6, true])
  })

  test('what the prepared crew uses is sound, what still lies on the truck is as drawn', () => {
    // Seed 1 draws the holed boots BT-42, which the clean run wears, and S-12 out of test, which it leaves.
    const site = opening('earths-on')
    expect(site.items['BT-42']?.defects).toEqual([])
    expect(site.items['S-12']?.defects).toContain('out-of-test')
  })

  test('a run goes on from there: the rest of the clean run finishes the job', () => {
    const site = opening('earths-on', 2)
    const rest = orders.filter((it) => it.at >= site.time)
    const timeline = runTimeline(marrowBend(2), rest, site)
    expect(timeline.entries.filter((it) => it.outcome === 'refused')).toEqual([])
    expect(timeline.end.paper.closed).toBe(true)
    expect(openTimeline(marrowBend(2), site).moments).toHaveLength(1)
  })

  test('a clean run that never gets there prepares nothing', () => {
    expect(openingAt(marrowBend(1), orders.slice(0, 40), 'work-done')).toBeUndefined()
  })
})
