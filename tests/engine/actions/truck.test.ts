/**
 * The truck and its bucket in the circuit: on wheels or on pads, bonded or not, the liner whole or cracked. Figures by hand
 * stand beside each; that a bonded truck is no safe thing to step off is DOE-HDBK-1092-2004 §7.5 and 29 CFR 1910.269
 * appendix C.
 */
import { describe, expect, test } from 'vitest'
import { actions, bodiesAt, type Order, type Site } from '../../../src/engine'
import { fittedOf } from '../../../src/engine/hazard/circuit/fitted'
import { done } from '../../support/cleanStages'
import { withItem } from '../../support/placedItem'
import { changed, exposureOf, person, standsAt, storyOf, touching, voltages, type Change } from '../hazard/sites'
import { besidePole, inBucket, stands, withTruck } from './truckCases'

const hands: Change = person('gw', { holds: [], wears: [] })

/** The moment in which somebody does this. */
function during(site: Site, who: string, act: string) {
  const order: Order = { at: site.time, who, do: act, on: 'bucket', values: {} }
  return { site, bodies: bodiesAt(site, actions.get(act)!.contacts!(site, order)) }
}

describe('the truck', () => {
  const beside: readonly Change[] = [hands, (it) => ({ ...it, truck: { x: 2, y: 2 } }), standsAt('gw', 2, 0.8)]
  const bonded = (site: Site): Site => {
    const there = withItem(changed(site, standsAt('gw', 2.6, -2.35)), 'V-1', 'truck-bond-lead', { kind: 'tarp' })
    const on = done(there, 'gw', 'bond-truck', { with: 'V-1', on: 'rod/R-1', values: { turns: 6 } })
    return changed(on, standsAt('gw', 2, 0.8))
  }

  test('stands on its pads once the outriggers are down, before that on wheels behind its tyres', () => {
    expect(fittedOf(withTruck()).truck?.isOnPads).toBe(true)
    const onWheels = withTruck(stands({ outriggers: 'up' }))
    expect(fittedOf(onWheels).truck?.isOnPads).toBe(false)
    // Behind 1 MΩ nothing is drawn: it has the soil's own voltage beside it, not the line's.
    const at = voltages({ site: onWheels, bodies: [] })
    expect(at('truck')).toBeLessThan(1000)
  })

  test('bonded to the rod it has the rod’s rise, and whoever steps on it takes that from hand to feet (path 14)', () => {
    const site = bonded(withTruck(...beside))
    const at = voltages({ site, bodies: [] })
    // 10 m of 25 mm² are 6.9 mΩ and some reactance: with less than 150 A into the pads within 1.5 V of the rod.
    expect(Math.abs(at('truck') - at('rod/R-1'))).toBeLessThan(1.5)
    const stepping = exposureOf(storyOf(during(site, 'gw', 'enter-bucket')), 'gw', 'hand-truck-feet')
    expect(stepping.judged).toBeGreaterThan(stepping.limit)
  })

  test('a platform under the feet holds that back', () => {
    const site = bonded(withTruck(...beside))
    const laid: Site = {
      ...withItem(site, 'N-9', 'insulating-platform', { kind: 'fitted' }, { label: { class: '2' } }),
      platforms: [{ item: 'N-9', at: { x: 2, y: 0.8 } }],
    }
    const stepping = storyOf(during(laid, 'gw', 'enter-bucket')).exposures.find((it) => it.person === 'gw')
    expect(stepping?.judged ?? 0).toBeLessThan(stepping?.limit ?? 1)
  })
})

describe('the bucket', () => {
  const site = withTruck(hands, inBucket, stands({ bucket: besidePole }))
  const onB = touching('pw', 'left-hand', { kind: 'conductor', id: 'conductor-b' })
  const worst = (it: Site) => exposureOf(storyOf({ site: it, bodies: bodiesAt(it, [onB]) }), 'pw', 'hand-bucket')

  test('a sound liner and boom let a hand on the raised line carry microamperes (path 10)', () => {
    // 5.7 kV over 1 GΩ of boom and 1 GΩ of liner is 2.9 µA.
    expect(worst(site).bodyCurrent).toBeLessThan(10e-6)
  })

  test('a cracked liner on a dirty boom is a way to the soil, whatever the truck was bonded to', () => {
    const dirty = withItem(site, 'U-1', 'bucket-boom', { kind: 'truck' }, { defects: ['liner-crack', 'dirty-boom'] })
    const bare = changed(dirty, person('pw', { wears: [] }))
    // 5.7 kV over 5 MΩ and a kilohm is 1.1 mA.
    expect(worst(bare).bodyCurrent).toBeGreaterThan(0.9e-3)
    expect(worst(bare).bodyCurrent).toBeLessThan(1.3e-3)
    expect(worst(dirty).bodyCurrent).toBeLessThan(worst(bare).bodyCurrent)
  })

  test('whoever works from it touches no pole: no thigh on concrete', () => {
    const body = bodiesAt(site).find((it) => it.person === 'pw')!
    expect(body.contacts.map((it) => it.on.kind)).toEqual(['bucket', 'bucket'])
  })
})
