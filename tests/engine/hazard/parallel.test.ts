/**
 * A live circuit beside the section, against hand calculations: capacitive pick-up by potential coefficients (Maxwell),
 * induction by the mutual impedance with earth return (Carson, first term), E = Zm I L.
 */
import { describe, expect, it } from 'vitest'
import { actions, type Order } from '../../../src/engine'
import { conductorNode } from '../../../src/engine/hazard/circuit/nodes'
import { faultDrawn, parallelSources } from '../../../src/engine/hazard/circuit/parallel'
import { resistor } from '../../../src/engine/hazard/circuit/parts'
import { section } from '../../../src/engine/hazard/circuit/section'
import { add, complex, divide, magnitude, polar, scale, type Complex } from '../../../src/engine/math/complex'
import type { Solution } from '../../../src/engine/physics/network'
import type { Conductor, ParallelCircuit, Phase, Scenario } from '../../../src/engine/site/scenario'
import { marrowBend } from '../../support/marrowBend'
import { allOf, alsoLivened, besides, besideSection, singleWire } from '../../support/networks'
import { solveElements } from '../../support/solveElements'
import {
  clampOn,
  earthedSite,
  exposureOf,
  inScenario,
  isolatedSite,
  leftHandOnB,
  momentOf,
  othersBooted,
  storyOf,
  voltages,
  withRod,
  workerAloft,
  type Change,
} from './sites'

const omega = 2 * Math.PI * 50
const third = (2 * Math.PI) / 3
const turns: Readonly<Record<Phase, number>> = { A: 0, B: -third, C: third }

/** Flat, 1 m apart, 10 m up, its middle conductor 10 m beside a single wire of the section that hangs 9 m up. */
const flat = (change: Partial<ParallelCircuit> = {}): ParallelCircuit => ({
  ...besideSection,
  id: 'p11',
  voltage: 11_000,
  conductors: besideSection.conductors.map((it, i) => ({ ...it, id: `p11-${it.phase}`, x: 10 + (i - 1), height: 10 })),
  from: -600,
  to: 400,
  loadCurrent: 0,
  ...change,
})

/** One conductor of the section, at the pole's axis. */
function besideOneWire(parallel: ParallelCircuit): Scenario {
  const base = marrowBend(1)
  const scenario = { ...base, ...singleWire(base) }
  const conductors = scenario.conductors.map((it): Conductor => ({ ...it, x: 0, height: 9 }))
  return { ...scenario, conductors, parallels: [parallel] }
}

const at = (place: string): string => conductorNode('conductor-b', place)

function beside(parallel: ParallelCircuit, ...more: Parameters<typeof solveElements>[0]): Solution {
  return solveElements([...section(besideOneWire(parallel)), ...parallelSources(parallel), ...more])
}

/** Times 2πε0: ln D'/D, and ln 2h/r of itself. */
function coefficient(a: { x: number; height: number; radius: number }, b: typeof a): number {
  if (a === b) return Math.log((2 * a.height) / a.radius)
  return Math.log(Math.hypot(a.x - b.x, a.height + b.height) / Math.hypot(a.x - b.x, a.height - b.height))
}

/** Three equations by Cramer's rule. */
function solveThree(rows: readonly (readonly number[])[], right: readonly number[]): readonly number[] {
  const det = (m: readonly (readonly number[])[]): number =>
    [0, 1, 2].reduce(
      (sum, i) =>
        sum + m[0]![i]! * (m[1]![(i + 1) % 3]! * m[2]![(i + 2) % 3]! - m[1]![(i + 2) % 3]! * m[2]![(i + 1) % 3]!),
      0,
    )
  return [0, 1, 2].map((k) => det(rows.map((row, i) => row.map((it, j) => (j === k ? right[i]! : it)))) / det(rows))
}

/** Volts of a wire without charge: V = Σ P(wire, k) q(k), the charges those of the parallel circuit by itself. */
function pickedUp(parallel: ParallelCircuit, voltageOf: (phase: Phase) => Complex): Complex {
  const { conductors } = parallel
  const rows = conductors.map((a) => conductors.map((b) => coefficient(a, b)))
  const charge = (part: 're' | 'im') =>
    solveThree(
      rows,
      conductors.map((it) => voltageOf(it.phase)[part]),
    )
  const wire = { x: 0, height: 9, radius: 0.0045 }
  const seen = (part: 're' | 'im') => charge(part).reduce((sum, q, k) => sum + q * coefficient(wire, conductors[k]!), 0)
  return complex(seen('re'), seen('im'))
}

const balanced = (phase: Phase): Complex => polar(11_000 / Math.sqrt(3), turns[phase])

describe('capacitive pick-up', () => {
  it('a wire with no earth beside a balanced circuit: 163 V, whatever its length', () => {
    const parallel = flat()
    const found = beside(parallel).voltage(at('pole'))
    const byHand = pickedUp(parallel, balanced)
    // its ends fall on the section's own: each such place is a centimetre without it
    expect(magnitude(found) / magnitude(byHand)).toBeCloseTo(1, 4)
    // an independent calculation of the same geometry, with another radius, gives 163 V
    expect(magnitude(found)).toBeGreaterThan(155)
    expect(magnitude(found)).toBeLessThan(175)
  })

  it('beside it over half of its length only: half the voltage', () => {
    const found = beside(flat({ from: -100 })).voltage(at('pole'))
    expect(magnitude(found) / magnitude(pickedUp(flat(), balanced))).toBeCloseTo(0.5, 2)
  })

  it('one earth takes it away: the charging current is some tenths of a milliampere a kilometre', () => {
    const earthed = beside(flat(), resistor('earth', at('pole'), '0', 100))
    expect(magnitude(earthed.voltage(at('pole')))).toBeLessThan(0.1)
    // short-circuit current is ω times the wire's own capacitance times the voltage that it had
    const wire = { x: 0, height: 9, radius: 0.0045 }
    const farad = (1_000 * 2 * Math.PI * 8.8541878e-12) / coefficient(wire, wire)
    const byHand = omega * farad * magnitude(pickedUp(flat(), balanced))
    expect(magnitude(earthed.current('earth')) / byHand).toBeCloseTo(1, 1)
    expect(magnitude(earthed.current('earth')) * 1_000).toBeCloseTo(0.32, 1)
  })

  it('displaced by an earth fault of that network its phases stand at 0, √3 and √3: several times as much', () => {
    const change = allOf(
      singleWire,
      ({ conductors }) => ({ conductors: conductors.map((it) => ({ ...it, x: 0, height: 9 })), parallels: [flat()] }),
      alsoLivened({ id: 'displaced', kind: 'pick-up', parallel: 'p11', phase: 'A' }),
    )
    const moment = momentOf(isolatedSite(inScenario(change)))
    const displaced = (phase: Phase) => add(balanced(phase), scale(balanced('A'), -1))
    const byHand = magnitude(pickedUp(flat(), displaced))
    const found = voltages(moment, 'displaced')('conductor-b@pole')
    expect(found / byHand).toBeCloseTo(1, 3)
    expect(found).toBeGreaterThan(3 * voltages(moment, 'none')('conductor-b@pole'))
    expect(storyOf(moment, 'displaced').duration).toBe(0.5)
  })
})

describe('induction', () => {
  /** 500 m of flat() against the wire, ohm: earth of 300 Ω·m. */
  const mutual = (distance: number, length: number): Complex =>
    scale(
      complex((omega * 4e-7 * Math.PI) / 8, 50 * 4e-7 * Math.PI * Math.log((658.87 * Math.sqrt(6)) / distance)),
      length,
    )
  const own = (length: number): Complex => add(mutual(0.0034, length), complex(0.0006 * length))
  const faulted = flat({ faultCurrent: 100 })
  const fault = faultDrawn(faulted, 'B')
  const distance = Math.hypot(10, 1)

  it('100 A back through the ground: E = Zm I L, some 30 V a kilometre at 10 m, all of it at the far end of one earth', () => {
    const solution = beside(faulted, fault, resistor('earth', at('switch-27'), '0', 1))
    const still = beside(faulted, resistor('earth', at('switch-27'), '0', 1))
    const found = add(solution.voltage(at('switch-31')), scale(still.voltage(at('switch-31')), -1))
    const byHand = magnitude(mutual(distance, 1_000)) * 100
    expect(magnitude(found) / byHand).toBeCloseTo(1, 2)
    // a textbook rule of thumb; 28.9 V by an independent calculation in 100 Ω·m
    expect(byHand).toBeGreaterThan(28)
    expect(byHand).toBeLessThan(33)
    expect(magnitude(solution.voltage(at('switch-27')))).toBeLessThan(0.01)
  })

  it('two earths close the loop: I = E / (Zself L + R1 + R2); more earths, more current', () => {
    const loopOf = (ohm: number): number => {
      const ends = [resistor('one', at('switch-27'), '0', ohm), resistor('two', at('switch-31'), '0', ohm)]
      const induced = beside(faulted, fault, ...ends).current('one')
      return magnitude(add(induced, scale(beside(faulted, ...ends).current('one'), -1)))
    }
    for (const ohm of [10, 1, 0.1]) {
      const byHand = divide(scale(mutual(distance, 1_000), 100), add(own(1_000), complex(2 * ohm)))
      expect(loopOf(ohm) / magnitude(byHand)).toBeCloseTo(1, 2)
    }
    expect(loopOf(0.1)).toBeGreaterThan(10 * loopOf(10))
  })

  it('a balanced load induces the difference of its three distances only', () => {
    const loaded = flat({ loadCurrent: 100 })
    const found = beside(loaded, resistor('earth', at('switch-27'), '0', 1)).voltage(at('switch-31'))
    const parts = loaded.conductors.map((it) => {
      const each = mutual(Math.hypot(it.x, 1), 1_000)
      const turn = polar(100, turns[it.phase])
      return complex(each.re * turn.re - each.im * turn.im, each.re * turn.im + each.im * turn.re)
    })
    const byHand = magnitude(parts.reduce(add))
    expect(magnitude(found) / byHand).toBeCloseTo(1, 1)
    expect(byHand).toBeLessThan(2)
  })
})

describe('on the site', () => {
  const network = inScenario(
    allOf(
      besides(),
      alsoLivened(
        { id: 'fault-beside', kind: 'induction', parallel: 'p33', phase: 'A' },
        { id: 'displaced', kind: 'pick-up', parallel: 'p33', phase: 'A' },
      ),
    ),
  )

  it('a dead line with no earth stands at hundreds of volts beside 33 kV; touched, it gives milliamperes', () => {
    const bare = isolatedSite(network, workerAloft, othersBooted)
    expect(voltages(momentOf(bare), 'none')('conductor-b@pole')).toBeGreaterThan(200)
    const worker = exposureOf(storyOf(momentOf(bare, leftHandOnB), 'none'), 'pw')
    expect(worker.bodyCurrent).toBeGreaterThan(0.0001)
    expect(worker.bodyCurrent).toBeLessThan(0.02)
    const set = earthedSite(network)
    expect(voltages(momentOf(set), 'none')('conductor-b@pole')).toBeLessThan(5)
  })

  it('a fault of 2 kA beside it: an earth at the far switch alone leaves the induced voltage at the pole', () => {
    const farEarth: Change = (site) => ({
      ...site,
      switches: {
        ...site.switches,
        'switch-27': { ...site.switches['switch-27']!, earth: { item: 'E-21', resistance: 5 } },
      },
    })
    const far = isolatedSite(network, workerAloft, othersBooted, farEarth)
    const at = voltages(momentOf(far), 'fault-beside')
    // 500 m together between switch and pole: 0.3 Ω/km · 2 kA
    expect(at('conductor-b@pole')).toBeGreaterThan(200)
    expect(at('conductor-b@pole')).toBeLessThan(400)
    const story = storyOf(momentOf(far, leftHandOnB), 'fault-beside')
    expect(story.duration).toBe(0.5)
    expect(exposureOf(story, 'pw').prospectiveVoltage).toBeGreaterThan(150)
    // an earth at the pole as well carries the loop's current: the local rod is at a good part of the voltage
    const both = isolatedSite(
      network,
      workerAloft,
      othersBooted,
      farEarth,
      withRod,
      clampOn('E-07', 'earth', 'rod/R-1'),
      clampOn('E-07', '2', 'conductor-b'),
    )
    expect(storyOf(momentOf(both), 'fault-beside').siteRise).toBeGreaterThan(100)
  })

  it('its voltages and the crossing’s are solved as one network: a clash beside it changes little of either', () => {
    const plain = storyOf(momentOf(earthedSite()), 'clash-b')
    const with33 = storyOf(momentOf(earthedSite(network)), 'clash-b')
    expect(with33.siteRise / plain.siteRise).toBeCloseTo(1, 2)
    expect(with33.siteRise).not.toBe(plain.siteRise)
  })
})

describe('a feeder that goes on past the section on the same poles', () => {
  const conductors = besideSection.conductors.map((it, i) => ({
    ...it,
    id: `fx-on-${it.phase}`,
    x: i - 1,
    height: 9.6,
  }))
  const goesOn = inScenario(besides({ id: 'fx-on', feeder: 'fx', voltage: 11_000, conductors, loadCurrent: 100 }))
  const out: Change = (site) => ({ ...site, feedersOut: ['fx'] })

  it('is alive from its own source: the section picks up kilovolts a metre below it, nothing once it is out', () => {
    const alive = voltages(momentOf(isolatedSite(goesOn)), 'none')
    // E - I Z over 4 km of line with 100 A of balanced load, 0.7 + j0.4 Ω a kilometre and the source
    expect(alive('fx-on-A@crossing') / (11_000 / Math.sqrt(3))).toBeGreaterThan(0.93)
    expect(alive('fx-on-A@crossing') / (11_000 / Math.sqrt(3))).toBeLessThan(0.99)
    expect(alive('conductor-a@pole')).toBeGreaterThan(300)
    const dead = voltages(momentOf(isolatedSite(goesOn, out)), 'none')
    expect(dead('fx-on-A@crossing')).toBeLessThan(1)
    expect(dead('conductor-a@pole')).toBeLessThan(1)
  })

  it('its own conductor falls: the fault runs on beside the section to where it fell, and its relay takes it off', () => {
    const plain = storyOf(momentOf(earthedSite()), 'clash-b')
    const story = storyOf(momentOf(earthedSite(goesOn)), 'clash-b')
    // the rod rules the loop: what its load leaves of the voltage, and 540 m more of line
    const left = voltages(momentOf(isolatedSite(goesOn)), 'none')('fx-on-B@crossing') / (11_000 / Math.sqrt(3))
    expect(story.liveCurrent / plain.liveCurrent / left).toBeCloseTo(1, 2)
    expect(story.clearedBy).toBe('earth-fault')
    // its reclosing is blocked for the job: tripped, it stays dead, and so does what goes on of it
    expect(story.end).toBeLessThan(10)
  })
})

describe('a detector on a line that no blade feeds', () => {
  const reading = (change: Parameters<typeof besides>[0], ...more: readonly Change[]): string | undefined => {
    const site = isolatedSite(inScenario(besides(change)), workerAloft, othersBooted, ...more)
    const order: Order = { at: 0, who: 'pw', do: 'test', on: 'conductor-b', with: 'D-04', values: {} }
    return actions
      .get('test')!
      .apply(site, order)
      .evidence.findLast((it) => it.by === 'test')?.says
  }

  it('indicates what 66 kV a metre and a half away lifts it to, is silent once it is earthed or where 485 V is too little', () => {
    const close = {
      voltage: 66_000,
      conductors: besideSection.conductors.map((it) => ({ ...it, x: it.x - 8.2, height: 10 })),
    }
    expect(reading(close)).toBe('test.indicates')
    expect(reading(close, withRod, clampOn('E-07', 'earth', 'rod/R-1'), clampOn('E-07', '2', 'conductor-b'))).toBe(
      'test.silent',
    )
    expect(reading({})).toBe('test.silent')
  })
})
