/**
 * Paths up the pole and at its foot, each by Ohm's law over what lies in the way: half a hand-to-hand impedance a limb
 * (575 Ω above 1 kV, IEC 60479-1, 5th percentile), the concrete under thigh and hand, the fixing of a step bolt, the butt.
 */
import { describe, expect, it } from 'vitest'
import { fittedOf } from '../../../src/engine/hazard/circuit/fitted'
import { spreadingResistance } from '../../../src/engine/hazard/circuit/pole'
import { exposurePaths, pathBetween } from '../../../src/engine/hazard/paths'
import { cachedGround } from '../../../src/engine/hazard/sweepCache'
import type { Site } from '../../../src/engine/site/site'
import { english } from '../../../src/text'
import { allOf, multiEarthed } from '../../support/networks'
import {
  bladesClosed,
  changed,
  coverOn,
  defect,
  earthedSite,
  exposureOf,
  inScenario,
  leftHandOnB,
  momentOf,
  person,
  sharedCache,
  standsAt,
  storyOf,
  touching,
  voltages,
} from './sites'

const limb = 0.5 * 575

function soilOhm(site: Site, node: string): number {
  const ground = cachedGround(sharedCache, site.scenario, fittedOf(site))
  const place = ground.electrodes.findIndex((it) => it.node === node)
  return ground.resistance[place]![place]!
}

describe('up the pole', () => {
  it('barefoot on one bolt, a hand on the line: 1 kΩ of bolt, 0.75 of the body, the butt (paths 3, 6)', () => {
    const site = earthedSite(coverOn(), person('pw', { wears: [], place: { kind: 'pole', station: 'above-lv' } }))
    const at = voltages(momentOf(site))
    const worker = exposureOf(storyOf(momentOf(site, leftHandOnB)), 'pw')
    expect(worker.path).toBe('hand-feet')
    const way = site.scenario.pole.stepBoltFixing + 1.5 * limb + soilOhm(site, 'cage')
    expect(worker.bodyCurrent / ((at('conductor-b@pole') - at('cage')) / way)).toBeCloseTo(1, 1)
  })

  it('a stick with a wet core, 500 kΩ, in both hands, a thigh on the concrete: 10 mA through the stick (path 9)', () => {
    const site = earthedSite(defect('S-12', 'wet-core'))
    const hands = (['left-hand', 'right-hand'] as const).map((hand) =>
      touching('pw', hand, { kind: 'conductor', id: 'conductor-b' }, 'S-12'),
    )
    const at = voltages(momentOf(site))
    const worker = exposureOf(storyOf(momentOf(site, ...hands)), 'pw')
    expect(worker.path).toBe('stick')
    const thigh = spreadingResistance(site.scenario.pole, site.scenario.contact.area.thigh)
    // below 25 V inside the layers a body has 1750 Ω from hand to hand
    const way = 500_000 + 0.25 * 1_750 + thigh + soilOhm(site, 'cage')
    expect(worker.bodyCurrent / ((at('conductor-b@pole') - at('cage')) / way)).toBeCloseTo(1, 2)
  })

  it('between the line and its neutral, covered: both hands, nothing else (path 2)', () => {
    const network = inScenario(allOf(multiEarthed()))
    const site = earthedSite(network, bladesClosed('switch-27', 'B'), coverOn())
    const hands = [
      touching('pw', 'left-hand', { kind: 'conductor', id: 'conductor-b' }),
      touching('pw', 'right-hand', { kind: 'conductor', id: 'neutral' }),
    ] as const
    const worker = exposureOf(storyOf(momentOf(site, ...hands), 'none'), 'pw')
    expect(worker.path).toBe('phase-neutral')
    const at = voltages(momentOf(site), 'none')
    expect(worker.prospectiveVoltage).toBeGreaterThan(at('conductor-b@pole') - at('neutral@pole') - 1)
    // hand to hand 575 Ω between two stiff points: the rod's line side and the ladder
    expect(worker.bodyCurrent * 575).toBeLessThan(worker.prospectiveVoltage)
    expect(worker.bodyCurrent * 700).toBeGreaterThan(worker.prospectiveVoltage)
  })
})

describe('on the ground', () => {
  it('a hand on the foot of the pole, barefoot beside the rod: the ground’s rise less the cage’s (path 12)', () => {
    const site = earthedSite(standsAt('gw', -1, 0), person('gw', { wears: [] }))
    const stands = changed(site, standsAt('gw', -1, 0))
    const hand = touching('gw', 'right-hand', { kind: 'pole', height: 1.4 })
    const at = voltages(momentOf(stands))
    const worker = exposureOf(storyOf(momentOf(stands, hand)), 'gw')
    expect(worker.path).toBe('hand-pole-feet')
    const ground = cachedGround(sharedCache, stands.scenario, fittedOf(stands))
    const rod = ground.electrodes.findIndex((it) => it.node === 'rod/R-1')
    const rodCurrent = at('rod/R-1') / ground.resistance[rod]![rod]!
    // feet 0.3 m apart towards the rod: the nearer one has most
    const near = ground.system.mutualTo({ x: -1.15, y: 0 })[rod]! * rodCurrent
    const open = Math.abs(near - at('cage'))
    expect(worker.prospectiveVoltage / open).toBeCloseTo(1, 0)
    expect(worker.prospectiveVoltage).toBeGreaterThan(0.8 * open)
  })
})

it('arc flash and a thrown lead are told in words: a path that joins no contacts and has no number (path 22)', () => {
  const path = exposurePaths.find((it) => it.rows.includes(22))!
  expect(path.limit).toBe('words')
  const touch = (on: 'conductor' | 'ground') => ({
    limb: 'left-hand' as const,
    on,
    isThroughStick: false,
    point: { kind: 'node' as const, node: 'x' },
    series: 0,
    sharedSeries: null,
    lead: null,
    layers: [],
  })
  expect(pathBetween(touch('conductor'), touch('ground')).id).not.toBe(path.id)
  expect(english['path.arc-flash']).toMatch(/not computed/)
  expect(english['path.arc-flash']).not.toMatch(/\d/)
})
