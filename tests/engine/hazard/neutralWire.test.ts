/**
 * The multi-earthed neutral as a ladder: against the closed form of an infinite ladder, against Kron's reduction where
 * the neutral is at earth potential all along (Kersting, Distribution System Modeling and Analysis), and on the site.
 */
import { describe, expect, it } from 'vitest'
import { feederNode } from '../../../src/engine/hazard/circuit/nodes'
import { idleNeutral } from '../../../src/engine/hazard/circuit/neutralWire'
import { seriesOf } from '../../../src/engine/hazard/circuit/overhead'
import { resistor } from '../../../src/engine/hazard/circuit/parts'
import { supply } from '../../../src/engine/hazard/circuit/supply'
import {
  add,
  angle,
  complex,
  divide,
  magnitude,
  multiply,
  polar,
  scale,
  type Complex,
} from '../../../src/engine/math/complex'
import { kronReduce } from '../../../src/engine/physics/line'
import type { Element } from '../../../src/engine/physics/network'
import type { Feeder, NeutralWire, Scenario } from '../../../src/engine/site/scenario'
import { marrowBend } from '../../support/marrowBend'
import { allOf, alsoLivened, multiEarthed, neutralWire } from '../../support/networks'
import { solveElements } from '../../support/solveElements'
import {
  bladesClosed,
  clampOn,
  earthedSite,
  exposureOf,
  inScenario,
  momentOf,
  storyOf,
  touching,
  voltages,
  type Change,
} from './sites'

function squareRoot(a: Complex): Complex {
  return polar(Math.sqrt(magnitude(a)), angle(a) / 2)
}

function onFeeder(wire: Partial<NeutralWire>, feeder: Partial<Feeder> = {}): { scenario: Scenario; feeder: Feeder } {
  const base = marrowBend(1)
  const scenario = { ...base, ...multiEarthed(wire)(base) }
  return { scenario, feeder: { ...scenario.feeders[0]!, ...feeder } }
}

describe('a long ladder', () => {
  it.each([
    [50, 25, 11_500],
    [100, 5, 20_000],
    [200, 10, 40_000],
  ])('earths every %d m of %d Ω: Z∞ = Z/2 + √(Z²/4 + Z R), from Z∞ = Z + R Z∞/(R + Z∞)', (every, ohm, length) => {
    const { scenario, feeder } = onFeeder({ earthEvery: every, earthResistance: ohm }, { length })
    const drive: Element = { id: 'drive', kind: 'current', from: '0', to: 'neutral@switch-27', current: complex(1) }
    const seen = solveElements([...idleNeutral(scenario, feeder), drive]).voltage('neutral@switch-27')
    const span = scale(seriesOf(scenario, [neutralWire])[0]![0]!, every)
    const half = scale(span, 0.5)
    const closed = add(half, squareRoot(add(multiply(half, half), scale(span, ohm))))
    expect(seen.re).toBeCloseTo(closed.re, 6)
    expect(seen.im).toBeCloseTo(closed.im, 6)
  })

  it('its voltage falls from earth to earth by 1 - Z/Z∞', () => {
    const { scenario, feeder } = onFeeder({ earthEvery: 100, earthResistance: 5 }, { length: 20_000 })
    const drive: Element = { id: 'drive', kind: 'current', from: '0', to: 'neutral@switch-27', current: complex(1) }
    const solution = solveElements([...idleNeutral(scenario, feeder), drive])
    const span = scale(seriesOf(scenario, [neutralWire])[0]![0]!, 100)
    const half = scale(span, 0.5)
    const closed = add(half, squareRoot(add(multiply(half, half), scale(span, 5))))
    const share = add(complex(1), scale(divide(span, closed), -1))
    let expected: Complex = solution.voltage('neutral@switch-27')
    for (const pole of [199, 198, 197]) {
      expected = multiply(expected, share)
      const found = solution.voltage(`neutral@f1-${pole}`)
      expect(magnitude(add(found, scale(expected, -1)))).toBeLessThan(1e-6)
    }
  })
})

describe('coupled with its feeder', () => {
  const shorted = (wire: Partial<NeutralWire>): Complex => {
    const { scenario, feeder } = onFeeder(wire, { length: 1_000, stationEarth: 0.001 })
    const toEarth = resistor('fault', feederNode('f1', 'end', 'A'), '0', 1e-4)
    const atEnd = resistor('end-earth', 'neutral@switch-27', '0', 1e-4)
    return solveElements([...supply(scenario, feeder), toEarth, atEnd]).current('fault')
  }
  const { scenario, feeder } = onFeeder({})
  const wires = [...feeder.conductors, neutralWire]
  const loop = (line: Complex): Complex => add(scale(line, 1_000), complex(0.12, 1.2))

  it('earthed everywhere, it is as if taken out by Kron: Zaa - Zan Zna / Znn', () => {
    const reduced = kronReduce(seriesOf(scenario, wires), 3)[0]![0]!
    const byHand = divide(complex(11_000 / Math.sqrt(3)), loop(reduced))
    const found = shorted({ earthEvery: 5, earthResistance: 0.001 })
    expect(magnitude(found) / magnitude(byHand)).toBeCloseTo(1, 2)
  })

  it('earthed at both ends only, the same: its loop closes through the ground at either end', () => {
    const reduced = kronReduce(seriesOf(scenario, wires), 3)[0]![0]!
    const byHand = divide(complex(11_000 / Math.sqrt(3)), loop(reduced))
    const found = shorted({ earthEvery: 1_000, earthResistance: 1 })
    expect(magnitude(found) / magnitude(byHand)).toBeCloseTo(1, 2)
    // without coupling it would be the line's own impedance: larger by a tenth and more
    const alone = divide(complex(11_000 / Math.sqrt(3)), loop(seriesOf(scenario, wires)[0]![0]!))
    expect(magnitude(found) / magnitude(alone)).toBeGreaterThan(1.05)
  })
})

describe('10 a multi-earthed neutral bonded in', () => {
  const network = inScenario(multiEarthed())
  const alive = bladesClosed('switch-27', 'B')
  const neutralOn: Change = (site) =>
    [clampOn('B-02', 'metal', 'neutral'), clampOn('B-02', 'line', 'conductor-b')].reduce((now, on) => on(now), site)
  const apart = momentOf(earthedSite(network, alive))
  const bonded = momentOf(earthedSite(network, alive, neutralOn))

  it('larger current, quick trip, lower rise', () => {
    const before = storyOf(apart, 'none')
    const after = storyOf(bonded, 'none')
    // apart: 81.2 Ω of rod in the loop; bonded: some ohm of line and neutral
    expect(before.liveCurrent).toBeLessThan(80)
    expect(after.liveCurrent).toBeGreaterThan(10 * before.liveCurrent)
    expect(after.duration).toBeLessThan(before.duration / 3)
    expect(after.siteRise).toBeLessThan(before.siteRise / 5)
    // IEC 60255-151, 0.14 · 0.2 / (M^0.02 - 1) with M = I/40 A, and 60 ms of the breaker
    const multiple = after.liveCurrent / 40
    expect(after.duration).toBeCloseTo((0.14 * 0.2) / (Math.pow(multiple, 0.02) - 1) + 0.06, 1)
  })

  it('the rise is exported: hundreds of metres away the neutral stands at a good part of it', () => {
    const at = voltages(bonded, 'none')
    const rise = at('neutral@pole')
    expect(rise).toBeCloseTo(at('rod/R-1'), -1)
    expect(at('neutral@switch-31')).toBeGreaterThan(0.5 * rise)
    expect(at('neutral@f2-20')).toBeGreaterThan(10)
    // and falls with distance
    expect(at('neutral@switch-31')).toBeLessThan(rise)
    expect(at('neutral@f2-20')).toBeLessThan(at('neutral@switch-31'))
    // apart, the neutral carries only what the soil and the line couple into it
    expect(voltages(apart, 'none')('neutral@pole')).toBeLessThan(0.3 * rise)
  })

  it('hand to hand between set and neutral: thousands of volts apart, a few bonded', () => {
    const hands = [
      touching('pw', 'left-hand', { kind: 'conductor', id: 'conductor-b' }),
      touching('pw', 'right-hand', { kind: 'conductor', id: 'neutral' }),
    ] as const
    const before = storyOf(momentOf(earthedSite(network, alive), ...hands), 'none')
    expect(exposureOf(before, 'pw').prospectiveVoltage).toBeGreaterThan(4_000)
    const after = storyOf(momentOf(earthedSite(network, alive, neutralOn), ...hands), 'none')
    expect(exposureOf(after, 'pw', 'hand-thigh').prospectiveVoltage).toBeLessThan(700)
  })
})

describe('an earth fault elsewhere raises the neutral', () => {
  const network = inScenario(
    allOf(
      multiEarthed(),
      alsoLivened({ id: 'elsewhere', kind: 'neutral-raised', feeder: 'f2', phase: 'B', impedance: 1 }),
    ),
  )
  const moment = momentOf(earthedSite(network))

  it('by tens to a thousand volts, until that feeder trips; the line itself stays dead', () => {
    const story = storyOf(moment, 'elsewhere')
    const at = voltages(moment, 'elsewhere')
    expect(at('neutral@switch-31')).toBeGreaterThan(at('neutral@pole'))
    expect(at('neutral@pole')).toBeGreaterThan(10)
    expect(at('neutral@pole')).toBeLessThan(1_000)
    expect(story.clearedBy).toBe('earth-fault')
    expect(story.duration).toBeLessThan(1)
    // the rod beside the pole's own earth is lifted by the soil between them only
    expect(at('conductor-b@pole')).toBeLessThan(0.2 * at('neutral@pole'))
  })

  it('a hand on it and a thigh on the pole: what the butt does not share of the rise', () => {
    const worker = exposureOf(
      storyOf(
        momentOf(earthedSite(network), touching('pw', 'left-hand', { kind: 'conductor', id: 'neutral' })),
        'elsewhere',
      ),
      'pw',
    )
    const at = voltages(moment, 'elsewhere')
    expect(worker.prospectiveVoltage / (at('neutral@pole') - at('cage'))).toBeCloseTo(1, 1)
    expect(worker.zone).toBe('AC-4.3')
  })

  it('does not happen while that feeder is out', () => {
    const out: Change = (site) => ({ ...site, feedersOut: ['f2'] })
    expect(storyOf(momentOf(earthedSite(network, out)), 'elsewhere').liveCurrent).toBe(0)
  })
})
