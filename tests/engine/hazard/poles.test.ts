/**
 * Poles by what they are made of. Hand calculations beside each figure: Ohm's law over the ladder; a disc on a half-space
 * ρ/4b; the soil's matrix of the site (tested by itself in physics/soil) solved for two electrodes by hand. The ohm of wood
 * are working ranges from memory: what is checked is what the model makes of them.
 */
import { describe, expect, it } from 'vitest'
import {
  pole as poleElements,
  poleFootNode,
  poleNode,
  spreadingResistance,
} from '../../../src/engine/hazard/circuit/pole'
import { actions } from '../../../src/engine/actions/registry'
import { woodPerMetre, woodResistivity } from '../../../src/engine/hazard/circuit/poleWood'
import { fittedOf } from '../../../src/engine/hazard/circuit/fitted'
import { declaredCorner, inCorner } from '../../../src/engine/hazard/corner'
import { cachedGround } from '../../../src/engine/hazard/sweepCache'
import { factor, isUnsolvable, REMOTE_EARTH, type Element } from '../../../src/engine/physics/network'
import type { ConcretePole, Pole, SteelPole, WoodPole } from '../../../src/engine/site/pole'
import type { Scenario } from '../../../src/engine/site/scenario'
import type { Site } from '../../../src/engine/site/site'
import {
  bondOn,
  changed,
  clampOn,
  earthedSite,
  exposureOf,
  inScenario,
  leftHandOnB,
  momentOf,
  sharedCache,
  soundScenario,
  storyOf,
  touching,
  voltages,
  type Change,
} from './sites'

const concrete = soundScenario().pole as ConcretePole
const { number, height, armHeight, lvHeight, buttLength, diameter, stepBoltsTo } = concrete
const shape = { number, height, armHeight, lvHeight, buttLength, diameter, stepBoltsTo }
const steel: SteelPole = { kind: 'steel', ...shape, armFixing: 0.01, stepBoltFixing: 0.01 }
const wood: WoodPole = {
  kind: 'wood',
  ...shape,
  armFixing: concrete.armFixing,
  stepBoltFixing: concrete.stepBoltFixing,
  moisture: 'damp',
  treatment: 'oil',
  surface: 'dry',
  arm: 'steel',
}

const standingOn = (made: Pole): Change => inScenario(() => ({ pole: made }))
const withPole = (made: Pole): Scenario => ({ ...soundScenario(), pole: made })
const onSecondLeg = { at: { x: 3, y: 2 }, armFixing: 1_000 }

/** Ohm from the arm to where the pole enters the ground. */
function ohmDown(scenario: Scenario): number {
  const source: Element = { id: 'v', kind: 'voltage', from: 'arm', to: REMOTE_EARTH, voltage: { re: 1, im: 0 } }
  const earth: Element = {
    id: 'e',
    kind: 'impedance',
    from: poleFootNode(scenario),
    to: REMOTE_EARTH,
    impedance: { re: 1e-6, im: 0 },
  }
  const factored = factor({ elements: [...poleElements(scenario), source, earth] })
  if (isUnsolvable(factored)) throw new Error(factored.node)
  const solved = factored.solve()
  if (isUnsolvable(solved)) throw new Error(solved.node)
  return 1 / solved.current('e').re
}

describe('wood', () => {
  it('is a ladder: arm bolt, 30 kΩ a metre from the arm to the ground, and 0.25 m into it', () => {
    const scenario = withPole(wood)
    expect(ohmDown(scenario)).toBeCloseTo(wood.armFixing + 30_000 * (wood.armHeight + 0.25), -1)
  })

  it('rain lies beside the wood: 30 kΩ ∥ 200 kΩ is 26.1 kΩ, dry wood falls from 1 MΩ to 167 kΩ a metre', () => {
    expect(woodPerMetre({ ...wood, surface: 'wet' })).toBeCloseTo(6e9 / 230_000, 3)
    expect(woodPerMetre({ ...wood, moisture: 'dry', surface: 'wet' })).toBeCloseTo(2e11 / 1.2e6, 3)
  })

  it('wetter, and salt in it, conducts better; what was measured counts before the table', () => {
    const ohm = (it: Partial<WoodPole>) => woodPerMetre({ ...wood, ...it })
    expect(ohm({ moisture: 'soaked' })).toBeLessThan(ohm({ moisture: 'damp' }))
    expect(ohm({ moisture: 'damp' })).toBeLessThan(ohm({ moisture: 'dry' }))
    for (const moisture of ['dry', 'damp', 'soaked'] as const) {
      expect(ohm({ moisture, treatment: 'salt' })).toBeLessThan(ohm({ moisture }))
    }
    expect(ohm({ moisture: 'soaked', resistance: 77 })).toBe(77)
  })

  it('a thigh of 0.03 m² meets it as a disc on wood of 30 kΩ·m × its section: ρ/4b', () => {
    const section = Math.PI * (wood.diameter / 2) ** 2
    expect(woodResistivity(wood)).toBeCloseTo(30_000 * section, 6)
    expect(spreadingResistance(wood, 0.03)).toBeCloseTo((30_000 * section) / (4 * Math.sqrt(0.03 / Math.PI)), 6)
  })

  it('people, arm and wires meet it at their own height; anything else at the nearest metre', () => {
    const scenario = withPole(wood)
    expect(poleNode(scenario, 7.7)).toBe('wood/7.7')
    expect(poleNode(scenario, wood.armHeight)).toBe(`wood/${wood.armHeight}`)
    expect(poleNode(scenario, 3.4)).toBe('wood/3')
    expect(poleNode(scenario, 3.4, 2)).toBe('wood-2/3')
  })

  it('hand on the raised line, thigh on damp wood: what is left of the rise over 7.95 m of it, some 22 mA', () => {
    const site = earthedSite(standingOn(wood))
    const at = voltages(momentOf(site))
    const story = storyOf(momentOf(site, leftHandOnB))
    const worker = exposureOf(story, 'pw')
    expect(worker.path).toBe('hand-thigh')
    const down = 30_000 * (7.7 + 0.25) + spreadingResistance(wood, site.scenario.contact.area.thigh)
    const byHand = (at('conductor-b@pole') - at('butt')) / (down + 0.5 * 575)
    // the boots on the bolts add their capacitance at right angles
    expect(worker.bodyCurrent / byHand).toBeGreaterThan(1)
    expect(worker.bodyCurrent / byHand).toBeLessThan(1.02)
    expect(worker.bodyCurrent).toBeGreaterThan(0.015)
  })

  it('a bonded band below the feet lifts the wood above it: the 22 mA are gone', () => {
    const band = inScenario(() => ({
      metalwork: [{ id: 'band', kind: 'band', height: 6.5, on: 'pole', fixing: 1_000 } as const],
    }))
    const site = earthedSite(
      standingOn(wood),
      band,
      clampOn('B-02', 'metal', 'band'),
      clampOn('B-02', 'line', 'conductor-b'),
    )
    const at = voltages(momentOf(site))
    // 5.7 kV over 6.5 m and more of damp wood: 28 mA through the band's 1 kΩ
    const line = at('conductor-b@pole')
    const rung = at('wood/6.5')
    expect(line - rung).toBeCloseTo((line - at('butt')) * (1_000 / (1_000 + 30_000 * 6.75)), 0)
    // above it only what insulators of 100 MΩ draw, 56 µA each
    expect(rung - at('wood/7.7')).toBeLessThan(4 * 57e-6 * 30_000 * 1.2)
    const worker = exposureOf(storyOf(momentOf(site, leftHandOnB)), 'pw')
    // hand at the line, thigh 1.2 m of wood above the band: over that wood, the band, the thigh's disc and half a body
    const way = 1_000 + 30_000 * 1.2 + spreadingResistance(wood, site.scenario.contact.area.thigh) + 0.5 * 1_750
    expect(worker.bodyCurrent / ((line - at('wood/7.7')) / way)).toBeCloseTo(1, 0)
    expect(worker.bodyCurrent).toBeLessThan(0.001)
    const arm = earthedSite(standingOn(wood), bondOn)
    // bonded at the arm only, the wood beside the thigh has two metres above it and eight below
    expect(exposureOf(storyOf(momentOf(arm, leftHandOnB)), 'pw').bodyCurrent).toBeGreaterThan(0.01)
  })

  it('the corner of moisture multiplies its ohm', () => {
    const wet = inCorner(withPole(wood), { ...declaredCorner, id: 'wet', moisture: 0.1 }).pole
    expect(wet.kind === 'wood' && woodPerMetre(wet)).toBeCloseTo(3_000, 6)
  })

  it('of a wooden arm only the bolt is metal: a hand on it has half a metre of wood before it', () => {
    const hand = touching('pw', 'right-hand', { kind: 'metalwork', id: 'arm' })
    const current = (arm: WoodPole['arm']) => {
      const site = earthedSite(standingOn({ ...wood, moisture: 'soaked', arm }), bondOn)
      return exposureOf(storyOf(momentOf(site, hand)), 'pw').bodyCurrent
    }
    expect(current('wood')).toBeLessThan(0.6 * current('steel'))
  })
})

describe('steel', () => {
  const bare = earthedSite(standingOn(steel))

  it('is one node with no surface of its own: hand to thigh is half a body, over the butt’s resistance alone', () => {
    const site = bare
    const ground = cachedGround(sharedCache, site.scenario, fittedOf(site))
    const rod = ground.electrodes.findIndex((it) => it.node === 'rod/R-1')
    const butt = ground.electrodes.findIndex((it) => it.node === 'steel')
    const at = voltages(momentOf(site))
    const open = at('conductor-b@pole') - at('steel')
    const worker = exposureOf(storyOf(momentOf(site, leftHandOnB)), 'pw')
    const [self, own, mutual] = [
      ground.resistance[butt]![butt]!,
      ground.resistance[rod]![rod]!,
      ground.resistance[rod]![butt]!,
    ]
    // the rod's side of the loop: the rod beside the source's 9.2 Ω, which carries nearly all
    const source = (9.2 * own) / (9.2 + own)
    const byHand = open / (0.5 * 575 + self - (mutual * mutual) / own + source)
    expect(worker.path).toBe('hand-thigh')
    expect(worker.bodyCurrent / byHand).toBeCloseTo(1, 1)
  })

  it('bonded, its whole length is at the line’s voltage', () => {
    const at = voltages(momentOf(changed(bare, bondOn)))
    expect(Math.abs(at('conductor-b@pole') - at('steel'))).toBeLessThan(5)
    expect(exposureOf(storyOf(momentOf(changed(bare, bondOn), leftHandOnB)), 'pw').bodyCurrent).toBeLessThan(0.02)
  })
})

describe('concrete with an earth conductor cast in', () => {
  const earthed: ConcretePole = { ...concrete, integralEarth: { terminal: 0.01, height: 8.3 } }
  const clamped: Change = (site) =>
    [clampOn('B-02', 'metal', 'terminal'), clampOn('B-02', 'line', 'conductor-b')].reduce((it, make) => make(it), site)

  it('bonded at its terminal the cage is at the line’s voltage, without one only as far as the arm’s 1 kΩ lets it', () => {
    const shareOf = (site: Site) => {
      const at = voltages(momentOf(site))
      return at('cage') / at('conductor-b@pole')
    }
    expect(shareOf(earthedSite(standingOn(earthed), clamped))).toBeGreaterThan(0.999)
    expect(shareOf(earthedSite(bondOn))).toBeLessThan(0.3)
  })

  it('a corroded terminal of 1 kΩ is worth what the arm’s bolt is', () => {
    const corroded = earthedSite(standingOn({ ...earthed, integralEarth: { terminal: 1_000, height: 8.3 } }), clamped)
    const arm = earthedSite(bondOn)
    expect(voltages(momentOf(corroded))('cage')).toBeCloseTo(voltages(momentOf(arm))('cage'), -1)
  })
})

describe('a double pole', () => {
  const double = earthedSite(standingOn({ ...concrete, secondLeg: onSecondLeg }))

  it('has two butts in the soil; between them what the rod couples, less what the arm evens out', () => {
    const ground = cachedGround(sharedCache, double.scenario, fittedOf(double))
    const index = (node: string) => ground.electrodes.findIndex((it) => it.node === node)
    const [rod, first, second] = [index('rod/R-1'), index('cage'), index('cage-2')]
    const r = ground.resistance
    const at = voltages(momentOf(double))
    const rodCurrent = at('rod/R-1') / r[rod]![rod]!
    // I through arm and bolts closes the loop: (m1 - m2) I_rod = I (1 kΩ + 1 kΩ + r11 + r22 - 2 r12)
    const open = (r[rod]![first]! - r[rod]![second]!) * rodCurrent
    const loop = concrete.armFixing + onSecondLeg.armFixing
    const soil = r[first]![first]! + r[second]![second]! - 2 * r[first]![second]!
    const tied = open * (loop / (loop + soil))
    expect(at('cage') - at('cage-2')).toBeCloseTo(tied, 0)
    expect(tied).toBeGreaterThan(50)
  })

  it('leg to leg is a path of its own: a hand on one, a thigh on the other (path 11)', () => {
    const climbing = [
      touching('pw', 'left-hand', { kind: 'pole', height: 7.7 }),
      touching('pw', 'thigh', { kind: 'pole', height: 7.7, leg: 2 }),
      touching('pw', 'left-foot', { kind: 'step-bolt', height: 6.8, leg: 2 }),
      touching('pw', 'right-foot', { kind: 'step-bolt', height: 6.8, leg: 2 }),
    ]
    const at = voltages(momentOf(double))
    const worker = exposureOf(storyOf(momentOf(double, ...climbing)), 'pw')
    expect(worker.path).toBe('leg-leg')
    expect(worker.prospectiveVoltage).toBeCloseTo(at('cage') - at('cage-2'), 0)
    // hand 0.01 m² and thigh 0.03 m² of concrete, half a body, and the soil of both butts
    const { area } = double.scenario.contact
    const way = spreadingResistance(concrete, area.hand) + spreadingResistance(concrete, area.thigh)
    expect(worker.bodyCurrent).toBeLessThan(worker.prospectiveVoltage / way)
    expect(worker.bodyCurrent).toBeGreaterThan(worker.prospectiveVoltage / (way + 1_100))
  })

  it('with its legs in reach of both arms it is climbed by both; further apart by one', () => {
    const order = { at: 0, who: 'pw', do: 'climb', values: { to: 'below-lv' } } as const
    const legsHeld = (y: number) => {
      const site = earthedSite(standingOn({ ...concrete, secondLeg: { ...onSecondLeg, at: { x: 0, y } } }))
      const acts = actions.get('climb')!.contacts!(site, order)
      return acts.map(({ contact: { on } }) => (on.kind === 'step-bolt' ? (on.leg ?? 1) : 0))
    }
    expect(legsHeld(1.4)).toEqual([1, 2])
    expect(legsHeld(2)).toEqual([1, 1])
  })

  it('of wood has two ladders', () => {
    const site = earthedSite(standingOn({ ...wood, secondLeg: onSecondLeg }))
    const at = voltages(momentOf(site))
    expect(at('wood-2/0')).toBeGreaterThan(0)
    expect(at('butt-2')).toBeGreaterThan(0)
  })
})

describe('metal on the pole', () => {
  it('a lamp bracket on the neutral stands at the neutral’s voltage beside a raised line (path 5)', () => {
    const bracket = inScenario(() => ({
      metalwork: [{ id: 'lamp', kind: 'lamp-bracket', height: 8, on: 'lv-n', fixing: 0.1 } as const],
    }))
    const site = earthedSite(bracket)
    const at = voltages(momentOf(site))
    expect(at('metal/lamp')).toBeCloseTo(at('lv-n'), 1)
    const hand = touching('pw', 'right-hand', { kind: 'metalwork', id: 'lamp' })
    const worker = exposureOf(storyOf(momentOf(site, leftHandOnB, hand)), 'pw')
    expect(worker.path).toBe('hand-metalwork')
    expect(worker.prospectiveVoltage).toBeCloseTo(at('conductor-b@pole') - at('lv-n'), -2)
    expect(worker.zone).toBe('AC-4.3')
  })

  it('a cable sheath with 10 Ω of its own, bonded in, shares the fault with the rod: 81 Ω ∥ 10 Ω', () => {
    const sheath = inScenario(() => ({
      metalwork: [{ id: 'sheath', kind: 'cable-sheath', height: 8, on: 'arm', fixing: 0.001, earth: 10 } as const],
    }))
    const site = earthedSite(sheath, bondOn)
    const both = (81.2 * 10) / 91.2
    // phase voltage over both and the 9.2 + j4.5 Ω before them; the cage adds a little
    const byHand = (6351 * both) / Math.sqrt((both + 9.65) ** 2 + 4.5 ** 2)
    expect(storyOf(momentOf(site)).siteRise / byHand).toBeCloseTo(1, 1)
  })
})
