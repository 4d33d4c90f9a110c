/** The frozen instant for drawing, the grid of the ground, slips and "without it". */
import { describe, expect, it } from 'vitest'
import { declaredCorner } from '../../../src/engine/hazard/corner'
import { groundVoltages } from '../../../src/engine/hazard/ground/groundHazard'
import { solveInstant, type Instant } from '../../../src/engine/hazard/instant'
import type { LiveMoment } from '../../../src/engine/hazard/liven'
import { slipsOf, type Slip } from '../../../src/engine/hazard/slip'
import { fittedThings, withoutEach, type WithoutThing } from '../../../src/engine/hazard/without'
import {
  bondOn,
  changed,
  coverOn,
  earthedSite,
  leftHandOnB,
  momentOf,
  person,
  rodPlace,
  sharedCache,
  standsAt,
  storyOf,
} from './sites'

const clean = earthedSite(bondOn, coverOn())
const working = momentOf(clean, leftHandOnB)

function instantOf(moment: LiveMoment, second?: number): Instant {
  const options = second === undefined ? { cache: sharedCache } : { cache: sharedCache, second }
  const answer = solveInstant(moment, 'clash-b', declaredCorner, options)
  if (answer.kind !== 'instant') throw new Error(`${answer.reason} at ${answer.node}`)
  return answer
}

describe('an instant', () => {
  const instant = instantOf(working)
  const branch = (id: string) => instant.branches.find((it) => it.id === id)!.size

  it('is plain data: it survives JSON', () => {
    expect(JSON.parse(JSON.stringify(instant))).toEqual(instant)
  })

  it('the fault runs through clash, lead and rod; the bond carries the pole’s share', () => {
    expect(branch('clash-B')).toBeCloseTo(instant.story.liveCurrent, 9)
    expect(branch('clamp/E-07/earth')).toBeGreaterThan(0.9 * branch('clash-B'))
    expect(branch('piece/B-02/metal-line')).toBeCloseTo(branch('pole/arm-bolt'), 1)
    expect(branch('piece/E-07/2-3')).toBeLessThan(0.1)
  })

  it('each electrode has its amperes and a falling table of volts per ampere', () => {
    const rod = instant.electrodes.find((it) => it.node === 'rod/R-1')!
    expect(rod.size).toBeGreaterThan(60)
    expect(rod.at).toEqual(rodPlace)
    expect(rod.radii.length).toBe(rod.ohm.length)
    rod.ohm.slice(1).forEach((value, i) => expect(value).toBeLessThanOrEqual(rod.ohm[i]!))
  })

  it('the site rise is the rod’s voltage, amperes times the rod’s 81 Ω and a little of the pole’s', () => {
    const rod = instant.nodes.find((it) => it.node === 'rod/R-1')!
    expect(rod.size).toBeCloseTo(instant.story.siteRise, 6)
  })

  it('carries the exposures and the limit of the public at the actual time', () => {
    expect(instant.exposures).toEqual(storyOf(working).exposures)
    expect(instant.tolerable.step).toBeCloseTo((0.116 * 1_600) / Math.sqrt(instant.story.duration), 6)
  })

  it('a second between two shots is drawn dead', () => {
    const reclosing = momentOf(
      changed(clean, (site) => ({ ...site, paper: { ...site.paper, recloseBlocked: {} } })),
      leftHandOnB,
    )
    const dead = instantOf(reclosing, 4)
    expect(dead.from).toBeGreaterThan(2)
    expect(dead.nodes.find((it) => it.node === 'rod/R-1')?.size).toBeLessThan(1)
  })
})

describe('the ground as a grid', () => {
  it('row by row from its corner, highest at the rod', () => {
    const grid = { from: { x: -5.5, y: -2 }, step: 0.5, columns: 9, rows: 9 }
    const volts = groundVoltages(working, 'clash-b', declaredCorner, grid, sharedCache)
    if (!(volts instanceof Float64Array)) throw new Error(volts.reason)
    expect(volts.length).toBe(81)
    const highest = volts.indexOf(Math.max(...volts))
    expect([highest % 9, Math.floor(highest / 9)]).toEqual([4, 4])
    expect(volts[highest]! / storyOf(working).siteRise).toBeCloseTo(1, 4)
  })
})

describe('slips', () => {
  const slips = (moment: LiveMoment, who: string) =>
    slipsOf(moment, who, 'clash-b', declaredCorner, sharedCache).filter((it): it is Slip => 'on' in it)

  it('at work the free hand and the leg are tried, worst first, never the contacts in force', () => {
    const found = slips(working, 'pw')
    expect(found.length).toBeGreaterThan(2)
    expect(found.some((it) => it.limb === 'left-hand')).toBe(false)
    expect(found.map((it) => it.on.kind)).toContain('lv-wire')
    const ratios = found.map((it) => (it.exposure.ifItFails ?? it.exposure).judged / it.exposure.limit)
    expect([...ratios].sort((a, b) => b - a)).toEqual(ratios)
  })

  it('an unguarded wire beside the leg is the worst slip there is: the live low voltage is remote earth', () => {
    const open = momentOf(
      changed(clean, (site) => ({ ...site, guards: [] })),
      leftHandOnB,
    )
    const worst = slips(open, 'pw')[0]!
    expect(worst.on.kind).toBe('lv-wire')
    expect(worst.exposure.path).toBe('low-voltage')
    expect(worst.exposure.zone).toBe('AC-4.3')
  })

  it('on the ground: the rod within reach, and nothing when one stands away from everything', () => {
    const beside = momentOf(changed(clean, standsAt('gw', rodPlace.x, 0.6), person('gw', { wears: [] })))
    expect(slips(beside, 'gw').map((it) => it.on.kind)).toContain('rod')
    expect(slips(momentOf(changed(clean, standsAt('gw', -10, 8))), 'gw')).toEqual([])
  })
})

describe('without each fitted thing', () => {
  const all = withoutEach(working, 'clash-b', declaredCorner, sharedCache)
  const of = (kind: string, item?: string): WithoutThing => {
    const found = all.find((it) => it.thing.kind === kind && (item === undefined || it.thing.item === item))
    if (found === undefined) throw new Error(`no ${kind} ${item}`)
    return found
  }
  const ratio = (thing: WithoutThing, who: string, which: 'withIt' | 'withoutIt') => {
    const exposure = thing.persons.find((it) => it.person === who)?.[which]
    return exposure ? exposure.judged / exposure.limit : 0
  }

  it('names every lead, clamp, bond, cover, guard, pair of boots and the barrier', () => {
    const kinds = fittedThings(clean).map((it) => it.kind)
    for (const kind of ['lead', 'bond', 'clamp', 'cover', 'guard', 'boots', 'gloves', 'barrier'])
      expect(kinds).toContain(kind)
    expect(kinds.filter((it) => it === 'clamp').length).toBe(4)
  })

  it('without the cover the pole worker is killed; without the barrier the public is', () => {
    expect(ratio(of('cover'), 'pw', 'withIt')).toBeLessThan(1)
    expect(ratio(of('cover'), 'pw', 'withoutIt')).toBeGreaterThan(100)
    expect(ratio(of('barrier'), 'bystander', 'withoutIt')).toBeGreaterThan(1)
  })

  it('without his boots the pole worker’s feet are on the bolts: above; without another’s nothing changes for him', () => {
    expect(ratio(of('boots', 'BT-42'), 'pw', 'withoutIt')).toBeGreaterThan(10)
    expect(ratio(of('boots', 'BT-41'), 'pw', 'withoutIt')).toBe(ratio(of('boots', 'BT-41'), 'pw', 'withIt'))
  })

  it('without the lead the line stands at full voltage: more for him, and the public has only the bond’s 6 A at the butt', () => {
    expect(ratio(of('lead'), 'pw', 'withoutIt')).toBeGreaterThan(ratio(of('lead'), 'pw', 'withIt'))
    expect(ratio(of('lead'), 'bystander', 'withoutIt')).toBeLessThan(0.2 * ratio(of('lead'), 'bystander', 'withIt'))
  })
})
