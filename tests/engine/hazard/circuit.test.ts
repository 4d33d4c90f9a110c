/** What becomes which element: parts that are there, states of clamps, spreading, order of building. */
import { describe, expect, it } from 'vitest'
import { buildCircuit } from '../../../src/engine/hazard/circuit/buildCircuit'
import { fittedOf, nodeOfThing } from '../../../src/engine/hazard/circuit/fitted'
import { freshLeads, leads } from '../../../src/engine/hazard/circuit/leads'
import { feedersOf } from '../../../src/engine/site/liveningTraits'
import { spreadingResistance } from '../../../src/engine/hazard/circuit/pole'
import { phasor } from '../../../src/engine/hazard/circuit/phasor'
import { declaredCorner } from '../../../src/engine/hazard/corner'
import { solveInstant } from '../../../src/engine/hazard/instant'
import { cachedGround, createSweepCache } from '../../../src/engine/hazard/sweepCache'
import { magnitude } from '../../../src/engine/math/complex'
import { factor, isUnsolvable, type Element } from '../../../src/engine/physics/network'
import type { Site } from '../../../src/engine/site/site'
import {
  bladesClosed,
  bondOn,
  clampOn,
  defect,
  earthedSite,
  earthsOn,
  inScenario,
  isolatedSite,
  labelled,
  momentOf,
  sharedCache,
  withRod,
  type Change,
} from './sites'

function elementsOf(site: Site, live: readonly string[] = []): readonly Element[] {
  const fitted = fittedOf(site)
  return buildCircuit(site.scenario, fitted, 'none', cachedGround(sharedCache, site.scenario, fitted), live, freshLeads)
    .elements
}

const ids = (site: Site, live?: readonly string[]) => elementsOf(site, live).map((it) => it.id)

function ohm(site: Site, id: string): number {
  const found = elementsOf(site).find((it) => it.id === id)
  if (found?.kind !== 'impedance') throw new Error(`no impedance ${id}`)
  return found.impedance.re
}

describe('an absent part is not in the circuit', () => {
  it('no lead, no rod, no feeder on an isolated bare site', () => {
    const bare = ids(isolatedSite())
    for (const part of ['piece/', 'clamp/', 'fx/', 'f1/', 'clash', 'blade']) {
      expect(
        bare.filter((id) => id.includes(part)),
        part,
      ).toEqual([])
    }
    expect(bare).toContain('pole/arm-bolt')
    expect(bare).toContain('section/shunt-pole')
  })

  it('each fitted thing brings its elements: three pieces and four clamps of a lead, one and two of a bond', () => {
    const fitted = ids(isolatedSite(earthsOn, bondOn))
    expect(fitted.filter((id) => id.startsWith('piece/'))).toEqual([
      'piece/B-02/metal-line',
      'piece/E-07/earth-1',
      'piece/E-07/1-2',
      'piece/E-07/2-3',
    ])
    expect(fitted.filter((id) => id.startsWith('clamp/')).length).toBe(6)
  })

  it('a feeder is there while a blade or a livening joins it', () => {
    const hung = isolatedSite(bladesClosed('switch-27', 'B'))
    expect(ids(hung, ['f1'])).toContain('switch-27/blade-B')
    expect(ids(hung, ['f1'])).not.toContain('switch-27/blade-A')
    expect(ids(hung, [])).not.toContain('switch-27/blade-B')
  })

  it('every livening of the scenario names a feeder of the scenario', () => {
    const { scenario } = isolatedSite()
    for (const livening of scenario.livenings) {
      expect(scenario.feeders.map((it) => it.id)).toEqual(expect.arrayContaining([...feedersOf(scenario, livening)]))
      expect(feedersOf(scenario, livening)).toHaveLength(1)
    }
  })
})

describe('leads', () => {
  it('25 mm² of copper is 0.69 mΩ a metre at 20 °C (17.241 nΩ·m, IEC 60028)', () => {
    expect(ohm(isolatedSite(earthsOn), 'piece/E-07/earth-1')).toBeCloseTo((12 * 17.241e-9) / 25e-6, 9)
  })

  it('reactance about 0.3 to 0.5 mΩ a metre at 50 Hz (0.26–0.48 by spacing, physics reference 4.10)', () => {
    const found = leads(50, fittedOf(isolatedSite(earthsOn)), freshLeads).find((it) => it.id === 'piece/E-07/1-2')
    if (found?.kind !== 'impedance') throw new Error('no piece')
    expect(found.impedance.im / 1.5).toBeGreaterThan(0.0003)
    expect(found.impedance.im / 1.5).toBeLessThan(0.0005)
  })

  it('16 mm² has 25/16 of the resistance, strands that do not carry their share of it', () => {
    const good = ohm(isolatedSite(earthsOn), 'piece/E-07/1-2')
    expect(ohm(isolatedSite(earthsOn, labelled('E-07', { area: 16 })), 'piece/E-07/1-2') / good).toBeCloseTo(25 / 16, 9)
    expect(ohm(isolatedSite(earthsOn, defect('E-07', 'bird-caged-strands')), 'piece/E-07/1-2') / good).toBeCloseTo(
      1 / 0.6,
      9,
    )
  })

  it('a lead that is clamped at one end only is metal at that potential: its free end follows', () => {
    const site = isolatedSite(withRod, clampOn('E-07', '1', 'conductor-b'), bladesClosed('switch-27', 'B'))
    const answer = solveInstant(momentOf(site), 'none', declaredCorner)
    if (answer.kind !== 'instant') throw new Error(answer.reason)
    const size = (node: string) => answer.nodes.find((it) => it.node === node)?.size
    expect(size('lead/E-07/earth')).toBeCloseTo(size('conductor-b@pole')!, 3)
    expect(size('rod/R-1')).toBeLessThan(1)
  })
})

describe('clamp seats', () => {
  const seat = (site: Site, end: string) => ohm(site, `clamp/E-07/${end}`)
  const on = (state: Parameters<typeof clampOn>[3]) => isolatedSite(withRod, clampOn('E-07', '1', 'conductor-a', state))

  it('good 0.5 mΩ; hand-tight, unbrushed and both are milliohms to tens of milliohms, in that order', () => {
    const good = seat(on({}), '1')
    const loose = seat(on({ turns: 2 }), '1')
    const oxide = seat(on({ brushed: false }), '1')
    const both = seat(on({ brushed: false, turns: 2 }), '1')
    expect(good).toBe(0.0005)
    expect(loose).toBeGreaterThan(good)
    expect(oxide).toBeGreaterThan(loose)
    expect(both).toBeGreaterThan(oxide)
    expect(both).toBeLessThanOrEqual(0.05)
  })

  it('a tug finds a loose clamp, it does not tighten it', () => {
    expect(seat(on({ turns: 2, tugged: true }), '1')).toBe(seat(on({ turns: 2, tugged: false }), '1'))
  })

  it('defects of lead and rod reach their own clamp only', () => {
    const whole = isolatedSite(earthsOn)
    const painted = isolatedSite(earthsOn, defect('E-07', 'painted-earth-seat'))
    expect(seat(painted, 'earth')).toBeGreaterThan(0.05)
    expect(seat(painted, '1')).toBe(seat(whole, '1'))
    expect(seat(isolatedSite(earthsOn, defect('R-1', 'rusty-seat')), 'earth')).toBe(seat(painted, 'earth'))
    expect(
      seat(isolatedSite(earthsOn, defect('E-07', 'small-range'), labelled('E-07', { jawTo: 0.004 })), '1'),
    ).toBeGreaterThan(0.0005)
    expect(seat(isolatedSite(earthsOn, defect('E-07', 'bent-eye-1')), '1')).toBeGreaterThan(0.0005)
    expect(seat(isolatedSite(earthsOn, defect('E-07', 'bent-eye')), '1')).toBe(seat(whole, '1'))
  })

  it('a clamp on something that is no metal of the site is our own mistake', () => {
    expect(() => nodeOfThing(isolatedSite(), 'barrier')).toThrow(/a thing that a clamp can be on/)
  })
})

describe('concrete', () => {
  const { pole } = isolatedSite().scenario

  it('a thigh of 0.03 m² on 30 mm of 200 Ω·m: the slab, 200 Ω, is smaller than the half-space, 512 Ω', () => {
    expect(spreadingResistance(pole, 0.03)).toBeCloseTo((200 * 0.03) / 0.03, 9)
  })

  it('a finger of 1 cm²: the half-space ρ/4b takes over', () => {
    const area = 1e-4
    expect(spreadingResistance(pole, area)).toBeCloseTo(200 / (4 * Math.sqrt(area / Math.PI)), 6)
  })
})

describe('electrodes', () => {
  it('the far earth of the neutral keeps its stated 5 Ω and lifts the site by a few per cent of that', () => {
    const site = isolatedSite(withRod)
    const { electrodes, resistance } = cachedGround(sharedCache, site.scenario, fittedOf(site))
    const far = electrodes.findIndex((it) => it.node === 'lv/star')
    const rod = electrodes.findIndex((it) => it.node === 'rod/R-1')
    expect(resistance[far]![far]).toBe(5)
    // 60 m away every electrode is a point: ρ/2πs, between the upper and the lower soil
    expect(resistance[rod]![far]).toBeGreaterThan(100 / (2 * Math.PI * 60))
    expect(resistance[rod]![far]).toBeLessThan(300 / (2 * Math.PI * 60))
    expect(resistance[rod]![far]).toBeCloseTo(resistance[far]![rod]!, 9)
  })

  it('half the depth: 1.76 times the resistance in even soil (Dwight), less where the lower soil is the worse one', () => {
    const uniform = inScenario(() => ({ soil: { layers: [{ resistivity: 100 }] } }))
    const rodOhm = (depth: number, ...changes: readonly Change[]) => {
      const drive: Change = (it) => ({ ...it, rods: [{ item: 'R-1', at: { x: -3.5, y: 0 }, depth }] })
      const site = isolatedSite(drive, ...changes)
      const ground = cachedGround(sharedCache, site.scenario, fittedOf(site))
      const index = ground.electrodes.findIndex((it) => it.node === 'rod/R-1')
      return ground.resistance[index]![index]!
    }
    const dwight = (length: number) => (100 / (2 * Math.PI * length)) * (Math.log((8 * length) / 0.016) - 1)
    const even = rodOhm(0.9, uniform) / rodOhm(1.8, uniform)
    expect(Math.abs(even / (dwight(0.9) / dwight(1.8)) - 1)).toBeLessThan(0.03)
    const layered = rodOhm(0.9) / rodOhm(1.8)
    expect(layered).toBeGreaterThan(1)
    expect(layered).toBeLessThan(even)
  })
})

describe('the whole', () => {
  it('the order in which things were fitted reaches no bit of the answer', () => {
    const forth = earthedSite(bondOn)
    const back = { ...forth, clamps: [...forth.clamps].reverse() }
    expect(fittedOf(back)).toEqual(fittedOf(forth))
    const elements = elementsOf(forth, ['fx'])
    const one = factor({ elements })
    const two = factor({ elements: [...elements].reverse() })
    if (isUnsolvable(one) || isUnsolvable(two)) throw new Error('a sound circuit')
    const a = one.solve()
    const b = two.solve()
    if (isUnsolvable(a) || isUnsolvable(b)) throw new Error('a sound circuit')
    for (const node of one.nodes) expect(a.voltage(node)).toEqual(b.voltage(node))
  })

  it('phase voltages are 6351 V, 120° apart, and sum to nothing', () => {
    const emfs = (['A', 'B', 'C'] as const).map((phase) => phasor(11_000 / Math.sqrt(3), phase))
    for (const emf of emfs) expect(magnitude(emf)).toBeCloseTo(11_000 / Math.sqrt(3), 9)
    expect(emfs.reduce((sum, it) => sum + it.re, 0)).toBeCloseTo(0, 9)
    expect(emfs.reduce((sum, it) => sum + it.im, 0)).toBeCloseTo(0, 9)
  })

  it('currents of an instant close at every node of the site (Kirchhoff), to a millionth of the fault', () => {
    const answer = solveInstant(momentOf(earthedSite(bondOn)), 'clash-b', declaredCorner, { cache: createSweepCache() })
    if (answer.kind !== 'instant') throw new Error(answer.reason)
    for (const node of ['arm', 'lead/E-07/1', 'lead/E-07/2', 'rod/R-1', 'cage']) {
      let re = 0
      let im = 0
      for (const branch of answer.branches) {
        const sign = branch.from === node ? 1 : branch.to === node ? -1 : 0
        re += sign * branch.current.re
        im += sign * branch.current.im
      }
      for (const electrode of answer.electrodes.filter((it) => it.node === node)) {
        re += electrode.current.re
        im += electrode.current.im
      }
      expect(Math.hypot(re, im), node).toBeLessThan(1e-4)
    }
  })
})
