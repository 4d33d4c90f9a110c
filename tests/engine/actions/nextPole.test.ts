/**
 * Earths at the first pole do not reach the next one: the line there rises with them, the pole there stays with its soil.
 * That earths belong at each position is 29 CFR 1926.954(f) of old and common practice; the figures are worked by hand.
 */
import { describe, expect, test } from 'vitest'
import { believe, bodiesAt, type Site } from '../../../src/engine'
import { clampOn, changed, exposureOf, storyOf, touching, voltages, type Change } from '../hazard/sites'
import { withItem } from '../../support/placedItem'
import { atNextPole } from './nextPoleCases'

const handOnB = touching('pw', 'left-hand', { kind: 'conductor', id: 'conductor-b', at: 'next' })
const worst = (site: Site) => exposureOf(storyOf({ site, bodies: bodiesAt(site, [handOnB]) }), 'pw')

describe('the next pole', () => {
  test('its line rises with the earths of the first, its own steel does not', () => {
    const at = voltages({ site: atNextPole(), bodies: [] })
    // 60 m of line between: some volts of its drop.
    expect(Math.abs(at('conductor-b@next') - at('conductor-b@pole')) / at('conductor-b@pole')).toBeLessThan(0.02)
    // Soil 60 m from the rod: 70 A · 100 Ωm / (2π · 60 m) is of the order of 20 V.
    expect(at('cage-3')).toBeLessThan(100)
  })

  test('a hand on the line against the thigh on its concrete is far above the limit, whatever is earthed 60 m away', () => {
    const found = worst(atNextPole())
    expect(found.path).toBe('hand-thigh')
    expect(found.judged).toBeGreaterThan(10 * found.limit)
  })

  test('the cover of the first pole is not round this one; its own is', () => {
    const covered: Change = (site) => ({
      ...withItem(site, 'C-9', 'pole-cover', { kind: 'fitted' }),
      cover: { item: 'C-9', from: 6.9, to: 8.7, checked: true, pole: 'next' },
    })
    const site = changed(atNextPole(), covered)
    const through = bodiesAt(site)
      .find((it) => it.person === 'pw')!
      .contacts.find((it) => it.limb === 'thigh')!.through
    expect(through).toEqual(['C-9'])
    expect(
      bodiesAt(atNextPole())
        .find((it) => it.person === 'pw')!
        .contacts.find((it) => it.limb === 'thigh')!.through,
    ).toEqual([])
    expect(worst(site).judged).toBeLessThan(worst(atNextPole()).judged)
  })

  test('a bond from its arm to its line makes the two one', () => {
    const bonded = changed(
      withItem(atNextPole(), 'B-9', 'bond-lead', { kind: 'fitted' }),
      clampOn('B-9', 'metal', 'arm@next'),
      clampOn('B-9', 'line', 'conductor-b@next'),
    )
    const at = voltages({ site: bonded, bodies: [] })
    expect(Math.abs(at('arm@next') - at('conductor-b@next'))).toBeLessThan(1)
    expect(believe(bonded).nextConductors.map((it) => it.id)).toEqual([
      'conductor-a@next',
      'conductor-b@next',
      'conductor-c@next',
    ])
  })
})
