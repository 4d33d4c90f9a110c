/**
 * Ways to come alive that are no clash (procedure D). Hand calculations beside each: phase voltage over what it meets, with
 * the rod's 81.2 Ω, the neutral's 6.35 Ω, the station's 0.5 Ω and line and source of 2.8 + j4.5 Ω (marrow-bend's crossing
 * feeder), or the soil's matrix of the site solved by hand.
 */
import { describe, expect, it } from 'vitest'
import { fittedOf } from '../../../src/engine/hazard/circuit/fitted'
import { declaredCorner } from '../../../src/engine/hazard/corner'
import { liven } from '../../../src/engine/hazard/liven'
import { chargeLeft } from '../../../src/engine/hazard/storedCharge'
import { sweep } from '../../../src/engine/hazard/sweep'
import { cachedGround } from '../../../src/engine/hazard/sweepCache'
import type { Livening } from '../../../src/engine/site/livening'
import { findRemovedCause } from '../../../src/engine/site/liveningTraits'
import type { Scenario } from '../../../src/engine/site/scenario'
import type { Site } from '../../../src/engine/site/site'
import {
  bladesClosed,
  changed,
  earthedSite,
  exposureOf,
  inScenario,
  isolatedSite,
  momentOf,
  sharedCache,
  soundScenario,
  standsAt,
  storyOf,
  touching,
  unlocked,
  voltages,
  type Change,
} from './sites'

const phaseVoltage = 11_000 / Math.sqrt(3)
/** Ohm before a fault on the crossing feeder: neutral, station, line and source. */
const before = { re: 6.35 + 0.5 + 2.8, im: 4.5 }

const struck = (livening: Livening, more: (scenario: Scenario) => Partial<Scenario> = () => ({})): Change =>
  inScenario((scenario) => ({ livenings: [...scenario.livenings, livening], ...more(scenario) }))

/** Ampere of phase voltage through what is before and `ohm`. */
const through = (ohm: number, volts = phaseVoltage) => volts / Math.sqrt((before.re + ohm) ** 2 + before.im ** 2)

/** The soil's ohm between two electrodes of a site. */
function soilOhm(site: Site, a: string, b: string): number {
  const ground = cachedGround(sharedCache, site.scenario, fittedOf(site))
  const place = (node: string) => ground.electrodes.findIndex((it) => it.node === node)
  return ground.resistance[place(a)]![place(b)]!
}

describe('by a switch', () => {
  it('D3 one blade falls shut, though its handle is locked: one phase on the rod, as by the hand calculation', () => {
    const site = earthedSite(struck({ id: 'e', kind: 'blade-shut', switch: 'switch-27', phase: 'B' }))
    const story = storyOf(momentOf(site), 'e')
    const hung = storyOf(momentOf(earthedSite(bladesClosed('switch-27', 'B'))), 'none')
    expect(story.siteRise).toBe(hung.siteRise)
    // 81.2 Ω against some 10 Ω before it: nine tenths of phase voltage
    expect(story.siteRise / phaseVoltage).toBeCloseTo(0.89, 1)
    expect(voltages(momentOf(site), 'e')('conductor-a@pole')).toBeLessThan(1.001 * story.siteRise)
  })

  it('D17 from afar: all three, unless the switch is on local; a lock alone does not hold it', () => {
    const remote: Livening = { id: 'e', kind: 'remote-close', switch: 'switch-31' }
    const local = earthedSite(struck(remote))
    const control = (to: 'local' | 'remote'): Change => {
      return (site) => ({
        ...site,
        switches: { ...site.switches, 'switch-31': { ...site.switches['switch-31']!, control: to } },
      })
    }
    expect(findRemovedCause(local, remote)).toBe('switch-local')
    const afar = changed(local, control('remote'))
    expect(afar.switches['switch-31']?.lock).not.toBeNull()
    expect(findRemovedCause(afar, remote)).toBeUndefined()
    const story = storyOf(momentOf(afar), 'e')
    // balanced on a complete set: the star stays at earth, the relay sees the short circuit
    expect(story.siteRise).toBeLessThan(0.03 * phaseVoltage)
    expect(story.clearedBy).toBe('overcurrent')
    const byHand = storyOf(momentOf(changed(afar, unlocked('switch-31'))), 'switch-31-closed')
    expect(story.liveCurrent).toBe(byHand.liveCurrent)
  })

  it('D18 another crew: all three, unless the handle is locked', () => {
    const other: Livening = { id: 'e', kind: 'other-crew-closes', switch: 'switch-27' }
    const locked = earthedSite(struck(other))
    expect(findRemovedCause(locked, other)).toBe('switch-locked')
    expect(storyOf(momentOf(locked), 'e').clearedBy).toBe('not-live')
    const open = changed(locked, unlocked('switch-27'))
    expect(storyOf(momentOf(open), 'e')).toMatchObject({
      liveCurrent: storyOf(momentOf(open), 'switch-27-closed').liveCurrent,
      clearedBy: 'overcurrent',
    })
  })
})

describe('by a conductor', () => {
  it('D6 a 33 kV phase onto another phase of the section: its own voltage and relays, 19.05 kV over 90.9 Ω', () => {
    const higher = struck(
      {
        id: 'e',
        kind: 'conductor-falls',
        feeder: 'fx',
        phase: 'A',
        onto: 'conductor-b',
        at: 'crossing',
        impedance: 0.001,
      },
      ({ feeders }) => ({ feeders: feeders.map((it) => (it.id === 'fx' ? { ...it, voltage: 33_000 } : it)) }),
    )
    const site = earthedSite(higher)
    const story = storyOf(momentOf(site), 'e')
    expect(story.liveCurrent / through(81.2, 33_000 / Math.sqrt(3))).toBeCloseTo(1, 1)
    expect(story.siteRise / (81.2 * story.liveCurrent)).toBeCloseTo(1, 1)
    expect(story.siteRise).toBeGreaterThan(16_000)
    expect(findRemovedCause({ ...site, feedersOut: ['fx'] }, site.scenario.livenings.at(-1)!)).toBe(
      'crossing-taken-out',
    )
  })

  it('D7 a jumper swings back at the pole: the same loop without the span to the crossing', () => {
    const site = earthedSite(struck({ id: 'e', kind: 'jumper-back', feeder: 'fx', phase: 'B', impedance: 0.1 }))
    const story = storyOf(momentOf(site), 'e')
    const clash = storyOf(momentOf(site), 'clash-b')
    expect(story.liveCurrent / through(81.2)).toBeCloseTo(1, 1)
    // 11 kV phase over 91 Ω loses some tenths of an ohm of span: less than one in a hundred
    expect(story.liveCurrent).toBeGreaterThan(clash.liveCurrent)
    expect(story.liveCurrent / clash.liveCurrent).toBeLessThan(1.01)
  })
})

describe('into the soil of the site', () => {
  const earth = { id: 'next-pole', kind: 'earth', at: { x: 6, y: 8 }, resistance: 10 } as const
  const withEarth = () => ({ grounds: [earth] })

  it('D26 a flashover on the next pole: I = V / |before + 10 Ω|, the site’s rod is lifted by their mutual ohm', () => {
    const fault: Livening = {
      id: 'e',
      kind: 'neighbour-fault',
      feeder: 'fx',
      phase: 'B',
      thing: 'next-pole',
      impedance: 0.001,
    }
    const site = earthedSite(struck(fault, withEarth))
    const story = storyOf(momentOf(site), 'e')
    expect(story.liveCurrent / through(10)).toBeCloseTo(1, 2)
    const at = voltages(momentOf(site), 'e')
    expect(at('ground/next-pole')).toBeCloseTo(10 * story.liveCurrent, -1)
    // its rod is a part of the 10 Ω: of the current, 10 Ω over the rod's own
    const own = soilOhm(site, 'ground/next-pole/rod', 'ground/next-pole/rod')
    const inRod = (story.liveCurrent * 10) / own
    expect(at('rod/R-1') / (inRod * soilOhm(site, 'rod/R-1', 'ground/next-pole/rod'))).toBeCloseTo(1, 1)
    // nothing of it is on the line but what the rod brings there
    expect(at('conductor-b@pole')).toBeCloseTo(at('rod/R-1'), 0)
  })

  it('D21 a conductor on the ground over 1 kΩ: six amperes, no relay, and a pace beside it for as long as it lies', () => {
    const fallen: Livening = {
      id: 'e',
      kind: 'conductor-down',
      feeder: 'fx',
      phase: 'B',
      thing: 'next-pole',
      impedance: 1_000,
    }
    const site = earthedSite(
      struck(fallen, () => ({ grounds: [{ ...earth, resistance: 200 }] })),
      standsAt('gw', 6, 9),
      (it) => ({ ...it, persons: { ...it.persons, gw: { ...it.persons['gw']!, wears: [] } } }),
    )
    const story = storyOf(momentOf(site), 'e')
    expect(story.liveCurrent).toBeCloseTo(through(1_200), 1)
    expect(story).toMatchObject({ clearedBy: 'nothing', duration: 60 })
    expect(exposureOf(story, 'gw').path).toBe('pace')
    expect(exposureOf(story, 'bystander', 'bystander-pace').prospectiveVoltage).toBeGreaterThan(30)
  })

  it('D22 the boom touches a live phase: the truck rises to I times what its pads have, the man at its door between', () => {
    const touchesBoom: Livening = { id: 'e', kind: 'boom-touches', feeder: 'fx', phase: 'B', impedance: 0.001 }
    const pads = [
      { x: -1, y: -2, radius: 0.2 },
      { x: 1, y: -2, radius: 0.2 },
      { x: -1, y: 2, radius: 0.2 },
      { x: 1, y: 2, radius: 0.2 },
    ]
    const site = earthedSite(
      struck(touchesBoom, () => ({ truck: { tyres: 1e6, outriggers: pads } })),
      (it) => ({ ...it, truck: { x: 9, y: 0 } }),
      standsAt('gw', 11, 0),
    )
    const own = soilOhm(site, 'truck', 'truck')
    // four discs ρ/4b of 0.2 m in parallel, and less for each other: IEEE 80's spreading of a disc
    expect(own).toBeGreaterThan(100 / (4 * 0.2) / 4)
    const story = storyOf(momentOf(site, touching('gw', 'right-hand', { kind: 'truck' })), 'e')
    expect(story.liveCurrent / through(own)).toBeCloseTo(1, 2)
    const at = voltages(momentOf(site), 'e')
    expect(at('truck')).toBeCloseTo(own * story.liveCurrent, -1)
    expect(exposureOf(story, 'gw')).toMatchObject({ path: 'hand-truck-feet' })
    expect(exposureOf(story, 'bystander', 'bystander-touch').prospectiveVoltage).toBeGreaterThan(1_000)
  })

  it('D1 an insulator breaks as a switch is worked: its handle’s 20 Ω, and the operator with both feet before it', () => {
    const insulator: Livening = { id: 'e', kind: 'handle-live', switch: 'switch-27', phase: 'B', impedance: 0.001 }
    const site = isolatedSite(
      struck(insulator, ({ switches }) => ({
        switches: switches.map((it) => (it.id === 'switch-27' ? { ...it, handleEarth: 20 } : it)),
      })),
      (it) => ({
        ...it,
        persons: { ...it.persons, so: { ...it.persons['so']!, place: { kind: 'switch', id: 'switch-27' } } },
      }),
    )
    const hand = touching('so', 'right-hand', { kind: 'handle', id: 'switch-27' })
    const story = storyOf(momentOf(site, hand), 'e')
    const at = voltages(momentOf(site, hand), 'e')
    expect(at('switch-27/handle')).toBeCloseTo(20 * story.liveCurrent, -1)
    const operator = exposureOf(story, 'so')
    expect(operator.path).toBe('handle-feet')
    // the ground half a metre from the rod has most of its rise left: the operator gets the rest
    expect(operator.prospectiveVoltage).toBeGreaterThan(0.4 * at('switch-27/handle'))
    expect(operator.prospectiveVoltage).toBeLessThan(at('switch-27/handle'))
    const onMat: Change = (it) => ({
      ...it,
      persons: { ...it.persons, so: { ...it.persons['so']!, onMat: true } },
      items: Object.fromEntries(
        Object.entries(it.items).map(([id, item]) => [
          id,
          item.type === 'operator-mat' ? { ...item, where: { kind: 'fitted' as const } } : item,
        ]),
      ),
    })
    const held = storyOf(momentOf(changed(site, onMat), hand), 'e')
    expect(held.exposures.find((it) => it.person === 'so')?.bodyCurrent ?? 0).toBeLessThan(0.001)
  })
})

describe('what is told in words', () => {
  const stroke: Livening = { id: 'stroke', kind: 'lightning' }
  const bank: Extract<Livening, { kind: 'stored-charge' }> = {
    id: 'bank',
    kind: 'stored-charge',
    capacitance: 10e-6,
    voltage: 11_000,
    phases: ['A', 'B', 'C'],
    discharge: 6e6,
  }

  it.each([stroke, bank])(
    'D15, D27 $kind: cannot be computed, never a number, and no part of the sweep',
    (livening) => {
      const site = earthedSite(struck(livening))
      expect(liven(momentOf(site), livening.id, declaredCorner)).toMatchObject({
        kind: 'unsolvable',
        reason: 'not-computed',
        node: livening.id,
      })
      const run = { scenario: site.scenario, moments: [{ from: 0, ...momentOf(site) }] }
      const found = sweep(run, sharedCache, undefined, [declaredCorner])
      expect(found.unsolved).toEqual([])
      expect(found.worst.map((it) => it.livening)).not.toContain(livening.id)
    },
  )

  it('D27 a bank of 3 × 10 µF at 11 kV: crest 8.98 kV, 1.21 kJ; after one time constant of 60 s 3.30 kV and 164 J', () => {
    // ½CV² with V = 11 kV √2/√3, three of them; e⁻¹ of the volts, e⁻² of the joules
    const fresh = chargeLeft(bank, 0)
    expect(fresh.voltage).toBeCloseTo(8_981.5, 0)
    expect(fresh.energy).toBeCloseTo(3 * 0.5 * 10e-6 * 8_981.46 ** 2, 0)
    const later = chargeLeft(bank, 60)
    expect(later.voltage / fresh.voltage).toBeCloseTo(Math.exp(-1), 9)
    expect(later.energy / fresh.energy).toBeCloseTo(Math.exp(-2), 9)
    const { id, kind, capacitance, voltage, phases } = bank
    expect(chargeLeft({ id, kind, capacitance, voltage, phases }, 3_600).voltage).toBe(fresh.voltage)
  })
})

it('marrow-bend itself has none of these', () => {
  expect([...new Set(soundScenario().livenings.map((it) => it.kind))].sort()).toEqual([
    'clash',
    'clash-two',
    'switch-closed',
  ])
})
