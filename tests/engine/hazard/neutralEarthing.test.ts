/**
 * Earth faults on networks of every neutral, against hand calculations by symmetrical components and by one loop. 11 kV:
 * phase voltage 6351 V; source 0.12 + j1.2 Ω in each sequence; station earth 0.5 Ω.
 */
import { describe, expect, it } from 'vitest'
import { feederNode } from '../../../src/engine/hazard/circuit/nodes'
import { resistor } from '../../../src/engine/hazard/circuit/parts'
import { supply } from '../../../src/engine/hazard/circuit/supply'
import {
  add,
  angle,
  complex,
  divide,
  magnitude,
  multiply,
  ONE,
  scale,
  type Complex,
} from '../../../src/engine/math/complex'
import type { Feeder, NeutralEarthing } from '../../../src/engine/site/scenario'
import { marrowBend } from '../../support/marrowBend'
import { alsoLivened, allOf, coilEarthed, neutralOf, unearthed } from '../../support/networks'
import { solveElements } from '../../support/solveElements'
import { bladesClosed, earthedSite, exposureOf, inScenario, leftHandOnB, momentOf, storyOf, unlocked } from './sites'

const phaseVoltage = 11_000 / Math.sqrt(3)
const omega = 2 * Math.PI * 50
const source = complex(0.12, 1.2)

/** Phase A at the end of the feeder to remote earth through `ohm`. */
function earthFault(neutral: NeutralEarthing, change: Partial<Feeder> = {}, ohm = 1e-6): Complex {
  const scenario = marrowBend(1)
  const feeder: Feeder = { ...scenario.feeders[0]!, length: 1, neutral, ...change }
  const toEarth = resistor('fault', feederNode('f1', 'end', 'A'), '0', ohm)
  return solveElements([...supply(scenario, feeder), toEarth]).current('fault')
}

describe('unearthed: the fault current is what the other phases charge', () => {
  const networkCapacitance = 2e-6

  it('3 ω C U for a network of 2 µF a phase: 12 A, 90° ahead', () => {
    const current = earthFault({ kind: 'unearthed' }, { networkCapacitance })
    const charging = 3 * omega * networkCapacitance * phaseVoltage
    expect(charging).toBeCloseTo(11.97, 2)
    expect(magnitude(current) / charging).toBeCloseTo(1, 2)
    expect(angle(current)).toBeCloseTo(Math.PI / 2, 2)
  })

  it('to the last digit with the source in it: 3E/(Z1 + Z2 + Z0), Z1 = Z2 = source beside C, Z0 = C alone', () => {
    const current = earthFault({ kind: 'unearthed' }, { networkCapacitance, length: 1 })
    const charge = complex(0, omega * networkCapacitance)
    const loaded = add(ONE, multiply(charge, source))
    const own = divide(source, loaded)
    const open = divide(complex(phaseVoltage), loaded)
    const byHand = divide(scale(open, 3), add(scale(own, 2), divide(ONE, charge)))
    // a metre of line, 2 mΩ and 30 pF, is the rest
    expect(magnitude(current) / magnitude(byHand)).toBeCloseTo(1, 4)
  })

  it('the line counts too: 4 km by Maxwell, P q = (1, 1, 1) solved by hand, three conductors at 8.5 m', () => {
    const own = Math.log((2 * 8.5) / 0.0045)
    const near = Math.log(Math.sqrt(17 ** 2 + 0.75 ** 2) / 0.75)
    const wide = Math.log(Math.sqrt(17 ** 2 + 1.5 ** 2) / 1.5)
    // outer a, middle b: own·a + near·b + wide·a = 1, 2·near·a + own·b = 1 (times 2πε0)
    const outer = (own - near) / ((own + wide) * own - 2 * near * near)
    const middle = (1 - 2 * near * outer) / own
    // with A at earth, B and C stand at E(B) - E(A) and E(C) - E(A) and charge what belongs to them
    const lineVoltage = (turn: number) => complex(phaseVoltage * (Math.cos(turn) - 1), phaseVoltage * Math.sin(turn))
    const third = (2 * Math.PI) / 3
    const charge = add(scale(lineVoltage(-third), middle), scale(lineVoltage(third), outer))
    const byHand = omega * magnitude(charge) * 2 * Math.PI * 8.8541878e-12 * 4_000
    const current = magnitude(earthFault({ kind: 'unearthed' }, { length: 4_000 }))
    // the rest is the rise over 1.2 Ω of source
    expect(current / byHand).toBeCloseTo(1, 3)
    // some 4 nF a kilometre and phase, as overhead lines have: 0.1 A
    expect(current).toBeGreaterThan(0.08)
    expect(current).toBeLessThan(0.12)
  })
})

describe('arc-suppression coil', () => {
  const networkCapacitance = 4e-6
  const coil = (tuning: number, lossResistance = 600): NeutralEarthing => ({
    kind: 'arc-suppression-coil',
    tuning,
    lossResistance,
  })
  const charging = 3 * omega * networkCapacitance * phaseVoltage

  it('tuned exactly only its losses are left: U/R, in phase with the voltage', () => {
    const current = earthFault(coil(1), { networkCapacitance })
    // 1 % for the source's 1.2 Ω and the station's 0.5 Ω beside 600 Ω and 265 Ω
    expect(magnitude(current) / (phaseVoltage / 600)).toBeCloseTo(1, 2)
    expect(Math.abs(angle(current))).toBeLessThan(0.02)
    expect(charging).toBeCloseTo(23.9, 1)
  })

  it('off tune by a tenth the residual grows by a tenth of the capacitive current, at right angles', () => {
    for (const tuning of [0.9, 1.1]) {
      const current = earthFault(coil(tuning), { networkCapacitance })
      expect(magnitude(current) / Math.hypot(phaseVoltage / 600, 0.1 * charging)).toBeCloseTo(1, 2)
      expect(Math.sign(current.im)).toBe(tuning < 1 ? 1 : -1)
    }
  })

  it('without losses it would be a lossless resonance: nothing is left to flow', () => {
    expect(magnitude(earthFault(coil(1, 1e7), { networkCapacitance }))).toBeLessThan(0.2)
  })
})

describe('reactor, resistor, solid: one loop', () => {
  it.each([
    ['reactor', { kind: 'reactor', impedance: complex(0.5, 12) } as const, complex(0.5, 12)],
    ['resistor', { kind: 'resistor', resistance: 6.35 } as const, complex(6.35)],
    ['solid', { kind: 'solid' } as const, complex(0)],
  ])('%s: U over source, neutral, station earth and fault', (_, neutral, ohm) => {
    const loop = add(add(source, ohm), complex(0.5 + 1))
    const current = earthFault(neutral, {}, 1)
    expect(magnitude(current) / (phaseVoltage / magnitude(loop))).toBeCloseTo(1, 2)
    expect(angle(current)).toBeCloseTo(-angle(loop), 2)
  })
})

describe('9 a coil-earthed network feeds 5 to 20 A for minutes', () => {
  const coilFed = allOf(
    coilEarthed(),
    alsoLivened({ id: 'one-blade', kind: 'coil-fed', switch: 'switch-27', phase: 'B' }),
  )
  const site = earthedSite(inScenario(coilFed), unlocked('switch-27'))

  it('the site rises to current times rod, hundreds of volts, and nothing clears it', () => {
    const story = storyOf(momentOf(site), 'one-blade')
    // 600 Ω of losses and 81.2 Ω of rod: 6351/681 = 9.3 A, 757 V
    expect(story.liveCurrent).toBeCloseTo(phaseVoltage / (600 + 81.2), 1)
    expect(story.siteRise / (story.liveCurrent * 81.2)).toBeCloseTo(1, 2)
    expect(story.clearedBy).toBe('nothing')
    expect(story.duration).toBe(60)
  })

  it('long enough for fibrillation; a pace at the barrier is judged at the longest time', () => {
    const story = storyOf(momentOf(site, leftHandOnB), 'one-blade')
    expect(exposureOf(story, 'pw').zone).toBe('AC-4.3')
    const pace = exposureOf(story, 'bystander', 'bystander-pace')
    // IEEE 80, 50 kg, surface 100 Ω·m, 5 s the longest that it is used for: (1000 + 6·100)·0.116/√5 = 83 V
    expect(pace.limit).toBeCloseTo((1_600 * 0.116) / Math.sqrt(5), 0)
    expect(pace.beyondRange).toBe(true)
  })

  it('the cause is gone once the switch is locked', () => {
    const locked = storyOf(momentOf(earthedSite(inScenario(coilFed))), 'one-blade')
    expect(locked.liveCurrent).toBe(0)
  })
})

describe('unearthed on the site', () => {
  const site = earthedSite(inScenario(unearthed), bladesClosed('switch-27', 'B'))

  it('a set on a live phase draws the capacitive current, and no relay sees it: 3ωC behind 81.2 Ω of rod', () => {
    const story = storyOf(momentOf(site), 'none')
    // 4 µF and 5 km of line at 4 to 5 nF a kilometre; 2.3 + j4.5 Ω of source and line in the way
    const limit = magnitude(add(complex(81.2 + 2.3, 4.5), divide(ONE, complex(0, 3 * omega * 4.025e-6))))
    expect(story.liveCurrent / (phaseVoltage / limit)).toBeCloseTo(1, 2)
    expect(story.clearedBy).toBe('nothing')
  })

  it('a reactor of 20 Ω on the site: the rod still limits', () => {
    const story = storyOf(
      momentOf(
        earthedSite(
          inScenario(neutralOf({ kind: 'reactor', impedance: complex(0.3, 20) })),
          bladesClosed('switch-27', 'B'),
        ),
      ),
      'none',
    )
    const loop = magnitude(complex(81.2 + 0.5 + 0.3 + 3.1, 20 + 4.7))
    expect(story.liveCurrent / (phaseVoltage / loop)).toBeCloseTo(1, 2)
  })
})
