/** What a defect of a thing does to who touches it, solved: ohms by hand (the sizes of the defects are experience, no source). */
import { expect, test } from 'vitest'
import { fittedLead } from '../../../src/engine/hazard/circuit/fitted'
import { conductorAtPole } from '../../../src/engine/hazard/circuit/nodes'
import type { Site } from '../../../src/engine/site/site'
import { withItem } from '../../support/placedItem'
import {
  bondOn,
  defect,
  earthsOn,
  exposureOf,
  isolatedSite,
  momentOf,
  standsAt,
  storyOf,
  touching,
  voltages,
  withRod,
  type Change,
} from './sites'

const lineUp: Change = (site) => ({
  ...site,
  items: {
    ...site.items,
    'Z-1': { ...site.items['Z-1']!, where: { ...site.items['Y-1']!.where, kind: 'aloft' } } as Site['items'][string],
  },
})
const haulers = (...changes: readonly Change[]) =>
  momentOf(
    isolatedSite(earthsOn, bondOn, standsAt('gw', 0.5, 1.2), lineUp, ...changes),
    touching('gw', 'right-hand', { kind: 'handline' }),
  )

test('a handline with a wire in its core brings the arm down to the hands that haul; a dry one brings nothing', () => {
  const dry = storyOf(haulers()).exposures.filter((it) => it.person === 'gw' && it.path === 'handline-feet')
  expect(dry).toEqual([])
  const wired = exposureOf(storyOf(haulers(defect('Z-1', 'conductive-core'))), 'gw', 'handline-feet')
  // The bonded arm stands at the rise of the site, 5.7 kV; a body of 575 Ω at that voltage and two feet on 300 Ωm soil.
  expect(wired.prospectiveVoltage).toBeGreaterThan(1_000)
  expect(wired.bodyCurrent).toBeGreaterThan(0.5)
})

/** The set in place of the lead, each tail on the conductor that the lead was on. */
const bySet =
  (...defects: readonly string[]): Change =>
  (site) => {
    const set = withItem(earthsOn(withRod(site)), 'E-30', 'earth-set', { kind: 'fitted' }, { defects })
    return { ...set, rods: set.rods.slice(0, 1), clamps: set.clamps.map((it) => ({ ...it, lead: 'E-30' })) }
  }

test('a tail whose crimp slips lifts its own conductor by its 20 mΩ and no other', () => {
  const lifted = (...defects: readonly string[]) => {
    const volt = voltages(momentOf(isolatedSite(bySet(...defects))))
    return volt(conductorAtPole('conductor-b')) - volt('rod/R-1')
  }
  const sound = lifted()
  // 70 A through the rod (pinned figure): 1.4 V across 20 mΩ in the tail of B, through which B is livened.
  expect(lifted('clamp-slip-2') - sound).toBeCloseTo(1.4, 0)
  expect(Math.abs(lifted('clamp-slip-3') - sound)).toBeLessThan(0.01)
  // 50 mΩ at the boss are in the way of all three.
  expect(lifted('loose-boss') - sound).toBeCloseTo(3.5, 0)
})

test('a spring clamp is seated by one push; a weak spring sits as loose as a screw turned by hand, and only its own clamp', () => {
  const seat = (end: string, ...defects: readonly string[]) => {
    const lead = withItem(earthsOn(isolatedSite()), 'E-40', 'spring-lead', { kind: 'fitted' }, { defects })
    const clamps = lead.clamps.map((it) => ({ ...it, lead: 'E-40', turns: 1 }))
    const fitted = fittedLead({ ...lead, clamps }, 'E-40')
    return fitted.clamps.find((it) => it.end === end)!
  }
  expect(seat('2')).toMatchObject({ resistance: 0.0005, isTight: true })
  expect(seat('2', 'weak-spring-2').isTight).toBe(false)
  expect(seat('2', 'weak-spring-2').resistance).toBeGreaterThan(0.0005)
  expect(seat('1', 'weak-spring-2')).toMatchObject({ resistance: 0.0005, isTight: true })
})
