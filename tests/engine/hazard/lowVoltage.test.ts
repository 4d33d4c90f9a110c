/**
 * The low-voltage network: its neutral as a ladder of earths, who feeds it, the street lamps' wire, a lead that touches
 * it. By hand: parallel and series resistances (Ohm, Kirchhoff); trade facts are common practice, no source.
 */
import { describe, expect, it } from 'vitest'
import { declaredCorner } from '../../../src/engine/hazard/corner'
import { lowVoltage } from '../../../src/engine/hazard/circuit/lowVoltage'
import { solveInstant, type Instant } from '../../../src/engine/hazard/instant'
import type { LiveMoment } from '../../../src/engine/hazard/liven'
import { complex, magnitude } from '../../../src/engine/math/complex'
import { factor, type Element } from '../../../src/engine/physics/network'
import { findRemovedCause } from '../../../src/engine/site/liveningTraits'
import { liveVoltage } from '../../../src/engine/site/liveness'
import type { Livening, LowVoltage } from '../../../src/engine/site/scenario'
import { startSite } from '../../../src/engine/site/startSite'
import { backFed } from './backFeedSites'
import {
  bladesClosed,
  changed,
  clampOn,
  defect,
  exposureOf,
  guardsOn,
  inScenario,
  isolatedSite,
  leftHandOnB,
  momentOf,
  person,
  sharedCache,
  storyOf,
  touching,
  withRod,
  workerAloft,
  type Change,
} from './sites'

const lvOf = isolatedSite().scenario.lv
const withLv = (change: Partial<LowVoltage>): Change => inScenario(({ lv }) => ({ lv: { ...lv, ...change } }))

function instantOf(moment: LiveMoment, livening = 'none'): Instant {
  const answer = solveInstant(moment, livening, declaredCorner, { cache: sharedCache })
  if (answer.kind !== 'instant') throw new Error(`${answer.reason} at ${answer.node}`)
  return answer
}
const volts = (instant: Instant, node: string): number => {
  const found = instant.nodes.find((it) => it.node === node)
  if (!found) throw new Error(`no node ${node}`)
  return found.size
}

describe('the neutral, earthed again and again', () => {
  it('is a ladder: 10 A into it at the pole, by series and parallel', () => {
    const lv: LowVoltage = {
      ...lvOf,
      sourceImpedance: complex(0.05),
      houseEarths: [
        { distance: 40, resistance: 10, wire: complex(0.001) },
        { distance: 100, resistance: 20, wire: complex(0.001) },
      ],
    }
    const elements: Element[] = [
      ...lowVoltage({ ...isolatedSite().scenario, lv }).filter((it) => !it.id.endsWith('/insulator')),
      { id: 'star-earth', kind: 'impedance', from: 'lv/star', to: '0', impedance: complex(5) },
      { id: 'push', kind: 'current', from: '0', to: 'lv-n', current: complex(10) },
    ]
    const factored = factor({ elements })
    if (factored.kind !== 'factored') throw new Error(factored.reason)
    const solution = factored.solve()
    if ('kind' in solution) throw new Error(solution.reason)
    // beyond 40 m: 10 Ω beside (0.06 + 20) Ω; from the pole 0.04 Ω to it, and 5.05 Ω to the star point
    const outward = 0.04 + 1 / (1 / 10 + 1 / 20.06)
    const whole = 1 / (1 / outward + 1 / 5.05)
    expect(magnitude(solution.voltage('lv-n'))).toBeCloseTo(10 * whole, 6)
  })

  it('carries the rise of a conductor that is bonded to it to every house; many earths make it small', () => {
    const bonded = isolatedSite(clampOn('B-05', 'metal', 'lv-n'), clampOn('B-05', 'line', 'conductor-b'))
    const houses = [30, 60, 90, 120].map((distance) => ({ distance, resistance: 20, wire: complex(0.0005, 0.0003) }))
    const alone = instantOf(momentOf(bonded), 'clash-b')
    const many = instantOf(momentOf(changed(bonded, withLv({ houseEarths: houses }))), 'clash-b')
    expect(volts(many, 'lv-n')).toBeLessThan(0.75 * volts(alone, 'lv-n'))
    // the last house stands at nearly the same potential as the pole
    expect(volts(many, 'lv/neutral-4') / volts(many, 'lv-n')).toBeGreaterThan(0.9)
  })

  it('an earth 3 m from the rod is lifted with it through the soil, one 500 m away is not', () => {
    const driven = (x: number) =>
      isolatedSite(
        withRod,
        clampOn('E-07', 'earth', 'rod/R-1'),
        clampOn('E-07', '2', 'conductor-b'),
        withLv({ houseEarths: [{ distance: 20, resistance: 80, wire: complex(1), at: { x, y: 0 } }] }),
      )
    // the house's own 20 Ω of wire keeps it from being tied to the star point
    const near = instantOf(momentOf(driven(-6.5)), 'clash-b')
    const far = instantOf(momentOf(driven(-500)), 'clash-b')
    expect(volts(near, 'lv/neutral-1')).toBeGreaterThan(3 * volts(far, 'lv/neutral-1'))
  })
})

describe('low voltage that a transformer of the section feeds', () => {
  const feeds = backFed({ transformer: { neutralEarth: { resistance: 5 } }, lv: { fedBy: 't1' } })
  const dead = isolatedSite(feeds)

  it('is dead while the line is dead, and so the tester says', () => {
    for (const wire of ['lv-a', 'lv-b', 'lv-c']) {
      expect(volts(instantOf(momentOf(dead)), wire)).toBeLessThan(1e-6)
      expect(liveVoltage(dead, wire)).toBe(0)
    }
  })

  it('comes with the line, at its 230 V', () => {
    const fed = changed(dead, bladesClosed('switch-27', 'A', 'B', 'C'))
    const instant = instantOf(momentOf(fed))
    for (const wire of ['lv-a', 'lv-b', 'lv-c']) expect(volts(instant, wire) / 230).toBeCloseTo(1, 1)
    expect(liveVoltage(fed, 'lv-b')).toBe(230)
  })

  it('lives by itself when somebody feeds its low side, though the carriers are out', () => {
    const out: Change = (site) => ({ ...site, carriers: { t1: 'out' } })
    // the cause of the livening of the line is gone; what is set then is the supply alone
    const site = changed(dead, out)
    expect(findRemovedCause(site, { id: 'set-on', kind: 'back-feed', source: 'set-1' })).toBe('carriers-out')
    const back = instantOf(momentOf(dead), 'set-on')
    expect(volts(back, 'lv-b') / 230).toBeGreaterThan(0.9)
  })

  it('the star point is one: no second earth at the transformer', () => {
    const ids = instantOf(momentOf(dead)).branches.map((it) => it.id)
    expect(ids).not.toContain('t1/neutral-earth')
    const apart = instantOf(momentOf(isolatedSite(backFed()))).branches.map((it) => it.id)
    expect(apart).toContain('t1/neutral-earth')
  })
})

describe('D12 the street lamps come on', () => {
  const lampsOn: Livening = { id: 'dusk', kind: 'street-lamps-on', wire: 'lv-s' }
  const withLamps: Change = (site) => {
    const { lv, livenings } = site.scenario
    const wires = [
      ...lv.wires,
      { id: 'lv-s', phase: 'A', x: 0.5, height: 6.6, lamps: { resistance: 50, cabinet: { x: 30, y: 9 } } } as const,
    ]
    const scenario = { ...site.scenario, lv: { ...lv, wires }, livenings: [...livenings, lampsOn] }
    return { ...site, scenario, mains: startSite(scenario).mains }
  }
  const hand = touching('pw', 'left-hand', { kind: 'lv-wire', id: 'lv-s' })
  const onTheNeutral = touching('pw', 'right-hand', { kind: 'lv-wire', id: 'lv-n' })
  const site = isolatedSite(withLamps, person('pw', { place: { kind: 'pole', station: 'below-lv' }, wears: ['BT-42'] }))

  it('by day the wire hangs on its lamps at nothing, at dusk it is a phase', () => {
    expect(volts(instantOf(momentOf(site)), 'lv-s')).toBeLessThan(0.01)
    expect(liveVoltage(site, 'lv-s')).toBe(0)
    // 4.6 A of lamps through twice 0.058 Ω: half a volt lost
    expect(volts(instantOf(momentOf(site), 'dusk'), 'lv-s')).toBeGreaterThan(228)
    const struck = { ...site, livening: { id: 'dusk', at: 0, cleared: false, provedOff: false } }
    expect(liveVoltage(struck, 'lv-s')).toBe(230)
  })

  it('hand to hand between it and the neutral: nothing by day, 230 V over a body at dusk, nothing clears it', () => {
    const day = storyOf(momentOf(site, hand, onTheNeutral), 'none')
    expect(day.exposures.find((it) => it.person === 'pw')?.bodyCurrent ?? 0).toBeLessThan(0.0005)
    const dusk = storyOf(momentOf(site, hand, onTheNeutral), 'dusk')
    const worker = exposureOf(dusk, 'pw')
    // IEC 60479-1, 5th percentile, hand to hand at 225 V: 950 Ω dry: 0.24 A, and half of that impedance where the thigh
    // on the pole takes its share: at most 0.48 A
    expect(worker.bodyCurrent).toBeGreaterThan(0.24)
    expect(worker.bodyCurrent).toBeLessThan(0.48)
    expect(dusk.clearedBy).toBe('nothing')
  })

  it('fed from the next street it comes on beside wires that are dead, and bonded to the neutral it stays there', () => {
    const ownSupply = inScenario(({ lv }) => ({
      lv: { ...lv, wires: lv.wires.map((it) => (it.lamps ? { ...it, lamps: { ...it.lamps, ownSupply: true } } : it)) },
    }))
    const fed = backFed({ transformer: { neutralEarth: { resistance: 5 } }, lv: { fedBy: 't1' } })
    const dead = (...more: readonly Change[]): typeof site =>
      changed(isolatedSite(), fed, withLamps, ...more, bladesClosed('switch-27'))
    expect(findRemovedCause(dead(), lampsOn)).toBe('low-voltage-dead')
    const own = dead(ownSupply)
    expect(findRemovedCause(own, lampsOn)).toBeUndefined()
    expect(volts(instantOf(momentOf(own), 'dusk'), 'lv-s')).toBeGreaterThan(228)
    expect(volts(instantOf(momentOf(own), 'dusk'), 'lv-a')).toBeLessThan(1)
    const bonds = [clampOn('B-05', 'metal', 'lv-n'), clampOn('B-05', 'line', 'lv-s')]
    // 230 V over twice 0.058 Ω is a short circuit of 2 kA; 2.5 m of 25 mm² has 1.7 + j1.0 mΩ, two clamps 1 mΩ: 6 V
    const shorted = instantOf(momentOf(changed(own, ...bonds)), 'dusk')
    expect(Math.abs(volts(shorted, 'lv-s') - volts(shorted, 'lv-n'))).toBeLessThan(8)
  })

  it('its switch locked in the cabinet takes the cause away', () => {
    expect(findRemovedCause(site, lampsOn)).toBeUndefined()
    const locked = { ...site, mains: { 'lv-s': { position: 'open', lock: 'K-71', lockedBy: 'so' } as const } }
    expect(findRemovedCause(locked, lampsOn)).toBe('street-lamps-locked')
  })
})

describe('D25 a lead touches the low voltage', () => {
  const touched: Livening = { id: 'touch', kind: 'lead-on-low-voltage', wire: 'lv-b', impedance: 0.01 }
  const asked: Change = inScenario(({ livenings }) => ({ livenings: [...livenings, touched] }))
  const hoisted: Change = (site) => ({
    ...site,
    items: { ...site.items, 'E-07': { ...site.items['E-07']!, where: { kind: 'handline' } } },
  })
  const routed =
    (route: string): Change =>
    (site) => ({ ...site, written: { ...site.written, 'route:E-07': route } })
  const atRod = [withRod, clampOn('E-07', 'earth', 'rod/R-1')]
  const hanging = isolatedSite(asked, hoisted, ...atRod)

  it('while it is hoisted: lead and rod at 230 V over rod and neutral earth, 81.2 and 5 Ω', () => {
    const instant = instantOf(momentOf(hanging), 'touch')
    const current = 230 / (81.2 + 5)
    expect(instant.story.siteRise / (81.2 * current)).toBeCloseTo(1, 1)
    expect(instant.story.liveCurrent).toBeCloseTo(current, 0)
    expect(instant.story.clearedBy).toBe('nothing')
  })

  it('and whoever has it in the hand below has 230 V to the ground; its own earth end still free', () => {
    const free = isolatedSite(asked, hoisted, person('gw', { place: { kind: 'ground', at: { x: -3.5, y: 0.6 } } }))
    const onLead = touching('gw', 'right-hand', { kind: 'lead', item: 'E-07', end: 'earth' })
    const shoes = storyOf(momentOf(free, onLead), 'touch')
    const worker = exposureOf(shoes, 'gw')
    expect(worker.prospectiveVoltage).toBeGreaterThan(200)
    expect(worker.prospectiveVoltage).toBeLessThan(232)
    expect(worker.judged).toBeGreaterThan(worker.limit)
  })

  it.each([
    ['the wire is guarded', [guardsOn()], 'wire-guarded'],
    ['the lead is laid clear of it', [routed('clear-of-lv')], 'no-lead-at-the-wires'],
  ] as const)('not when %s', (_, changes, fact) => {
    expect(findRemovedCause(hanging, touched)).toBeUndefined()
    expect(findRemovedCause(changed(hanging, ...changes), touched)).toBe(fact)
  })

  it('clamped and laid over the wires: only where its jacket is cut', () => {
    const clamped = isolatedSite(asked, ...atRod, clampOn('E-07', '1', 'conductor-a'), routed('over-lv'))
    expect(findRemovedCause(clamped, touched)).toBe('no-lead-at-the-wires')
    const cut = changed(clamped, defect('E-07', 'cut-jacket'))
    expect(findRemovedCause(cut, touched)).toBeUndefined()
    // the conductor it is clamped to comes alive at low voltage with the site
    expect(volts(instantOf(momentOf(cut), 'touch'), 'conductor-a@pole')).toBeGreaterThan(200)
  })
})

describe('D28 the wrong feeder was opened and tested', () => {
  it('needs no event: the supply as it is set has the worker on a live conductor', () => {
    // the tie's feeder was taken for the supply: switch 31 is open and locked, switch 27 never opened
    const wrong = isolatedSite(workerAloft, bladesClosed('switch-27', 'A', 'B', 'C'))
    expect(liveVoltage(wrong, 'conductor-b')).toBeCloseTo(11_000 / Math.sqrt(3), 6)
    const touched = storyOf(momentOf(wrong, leftHandOnB), 'none')
    const worker = exposureOf(touched, 'pw')
    expect(worker.judged).toBeGreaterThan(worker.limit)
    expect(worker.zone).toMatch(/^AC-4/)
  })
})
