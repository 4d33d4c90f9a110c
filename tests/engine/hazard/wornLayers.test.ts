/**
 * What is worn over other gear, stood on or laid round the pole, as layers of a body. Plate capacitor by hand:
 * C = ε0 εr A/d; classes by their voltage of use: class 2 holds 17 kV, class 1 7.5 kV, class 0 1 kV (IEC 60903).
 */
import { describe, expect, test } from 'vitest'
import { bodiesAt } from '../../../src/engine/site/bodies'
import type { Site } from '../../../src/engine/site/site'
import { slipsOf } from '../../../src/engine/hazard/slip'
import { declaredCorner } from '../../../src/engine/hazard/corner'
import { fittedThings } from '../../../src/engine/hazard/without'
import { withItems } from '../actions/gearCases'
import {
  defect,
  earthsOn,
  exposureOf,
  isolatedSite,
  leftHandOnB,
  momentOf,
  person,
  rodPlace,
  standsAt,
  storyOf,
  touching,
  workerAloft,
  type Change,
} from './sites'

const gear: Change = (site) =>
  withItems(site, {
    'OS-1': 'overshoes',
    'LP-1': 'leather-protectors',
    'SL-1': 'sleeves',
    'IP-1': 'insulating-platform',
    'BL-1': 'blanket',
  })

const wears = (id: string, ...items: string[]): Change => person(id, { wears: items })
const besideRod = standsAt('gw', rodPlace.x, rodPlace.y + 0.5)
const laid: Change = (site) => ({ ...site, platforms: [{ item: 'IP-1', at: { x: rodPlace.x, y: rodPlace.y + 0.6 } }] })
const handOnRod = touching('gw', 'right-hand', { kind: 'rod', item: 'R-1' })

const ofGw = (...changes: readonly Change[]) =>
  exposureOf(storyOf(momentOf(isolatedSite(gear, earthsOn, besideRod, ...changes), handOnRod)), 'gw')

const throughOf = (site: Site, id: string, limb: string) =>
  bodiesAt(site, [handOnRod])
    .find((it) => it.person === id)!
    .contacts.find((it) => it.limb === limb)!.through

describe('worn over other things', () => {
  test('is a further layer outside of what is under it, in whichever order it was put on', () => {
    const site = isolatedSite(gear, besideRod, wears('gw', 'OS-1', 'LP-1', 'G-21', 'BT-43'), laid)
    expect(throughOf(site, 'gw', 'left-foot')).toEqual(['BT-43', 'OS-1', 'IP-1'])
    expect(throughOf(site, 'gw', 'right-hand')).toEqual(['G-21', 'LP-1'])
  })

  test('overshoes of class 2 leave the charging current of two soles, 67 nS at 50 Hz', () => {
    const bare = ofGw()
    const shod = ofGw(wears('gw', 'OS-1'))
    // Each sole 0.02 m² of 5 mm: 8.854e-12 · 3 · 0.02 / 0.005 = 106 pF; two of them 67 nS at 50 Hz, and 20 nS of leakage.
    const siemens = Math.hypot(2 * Math.PI * 50 * 2 * 1.0625e-10, 2e-8)
    // The voltage told is that of the farther foot; the nearer one, 0.3 m up the slope, stands up to a fifth less.
    const share = shod.bodyCurrent / (shod.prospectiveVoltage * siemens)
    expect(share).toBeGreaterThan(0.9)
    expect(share).toBeLessThan(1)
    expect(bare.bodyCurrent / shod.bodyCurrent).toBeGreaterThan(1000)
    expect(shod.layer).toMatchObject({ item: 'OS-1', did: 'held' })
  })

  test('a torn overshoe lets through at its own foot: 5 kΩ', () => {
    const torn = ofGw(wears('gw', 'OS-1'), defect('OS-1', 'torn-left'))
    expect(torn.bodyCurrent).toBeGreaterThan(ofGw(wears('gw', 'OS-1')).bodyCurrent * 500)
    // Over a boot that holds, the tear is nothing.
    const overBoot = ofGw(wears('gw', 'BT-43', 'OS-1'), defect('OS-1', 'torn-left'))
    expect(overBoot.bodyCurrent).toBeLessThan(0.001)
  })

  test('what is worn on the feet can be taken away to see what it did', () => {
    const kinds = fittedThings(isolatedSite(gear, wears('gw', 'OS-1'), laid)).map((it) => it.kind)
    expect(kinds).toContain('overshoes')
    expect(kinds).toContain('platform')
  })

  test('a wire through the palm of a leather protector: its ohm is gone, the rubber under it stays', () => {
    const whole = ofGw(wears('gw', 'LP-1'))
    const wired = ofGw(wears('gw', 'LP-1'), defect('LP-1', 'wire-in-palm'))
    expect(wired.bodyCurrent).toBeGreaterThan(whole.bodyCurrent)
    expect(wired.bodyCurrent).toBeCloseTo(ofGw().bodyCurrent, 12)
    expect(ofGw(wears('gw', 'G-31', 'LP-1'), defect('LP-1', 'hole')).layer).toMatchObject({ item: 'G-31', did: 'held' })
  })
})

describe('an insulating platform', () => {
  test('is under whoever stands still on it, not under a pace and not a metre away', () => {
    const on = isolatedSite(gear, besideRod, laid)
    expect(throughOf(on, 'gw', 'left-foot')).toEqual(['IP-1'])
    const walking = bodiesAt(on, [], ['gw']).find((it) => it.person === 'gw')!
    expect(walking.contacts.flatMap((it) => it.through)).toEqual([])
    expect(
      throughOf(isolatedSite(gear, laid, standsAt('gw', rodPlace.x, rodPlace.y + 1.6)), 'gw', 'left-foot'),
    ).toEqual([])
  })

  test('of class 2 holds the rise; cut through it is 5 kΩ; soaked 50 kΩ', () => {
    const sound = ofGw(laid)
    expect(sound.layer).toMatchObject({ item: 'IP-1', did: 'held' })
    const cut = ofGw(laid, defect('IP-1', 'cut'))
    const wet = ofGw(laid, defect('IP-1', 'wet'))
    // Two feet through 5 kΩ or 50 kΩ each: 2.5 and 25 kΩ before the body.
    expect(wet.bodyCurrent / (wet.prospectiveVoltage / 25_000)).toBeGreaterThan(0.85)
    expect(wet.bodyCurrent / (wet.prospectiveVoltage / 25_000)).toBeLessThan(1)
    expect(cut.bodyCurrent).toBeGreaterThan(wet.bodyCurrent * 5)
    expect(sound.bodyCurrent).toBeLessThan(wet.bodyCurrent / 10)
  })
})

describe('a blanket round the pole', () => {
  const aloft = (...changes: readonly Change[]) =>
    exposureOf(
      storyOf(
        momentOf(
          isolatedSite(
            gear,
            earthsOn,
            workerAloft,
            (site) => ({
              ...site,
              cover: { item: 'BL-1', from: 7.3, to: 8.2, checked: true },
            }),
            ...changes,
          ),
          leftHandOnB,
        ),
      ),
      'pw',
    )

  test('of class 1 holds the rise between hand and thigh; a wire through it is 1 kΩ', () => {
    const sound = aloft()
    const holed = aloft(defect('BL-1', 'wire-hole'))
    expect(holed.path).toBe('hand-thigh')
    expect(holed.bodyCurrent).toBeGreaterThan(0.5)
    expect(sound.bodyCurrent).toBeLessThan(0.02)
  })
})

test('a sleeve is between a slipping forearm and what it falls on; above the cuff of a glove it is bare without one', () => {
  const slips = (...changes: readonly Change[]) => {
    const site = isolatedSite(gear, earthsOn, workerAloft, ...changes)
    return slipsOf(momentOf(site, leftHandOnB), 'pw', 'clash-b', declaredCorner).flatMap((it) =>
      'limb' in it && it.limb === 'right-hand' ? [it.through] : [],
    )
  }
  const gloved = slips(wears('pw', 'BT-42', 'G-21'))
  expect(gloved).toContainEqual(['G-21'])
  expect(gloved).toContainEqual([])
  const sleeved = slips(wears('pw', 'BT-42', 'G-21', 'SL-1'))
  expect(sleeved).toContainEqual(['SL-1'])
  expect(sleeved).not.toContainEqual([])
})
