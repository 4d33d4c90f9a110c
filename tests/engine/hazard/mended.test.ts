/**
 * Faults that were once in the model, one test each: what a part left out, or counted twice, when two parts came together.
 * Bounds are from the networks' own voltages: nothing behind a 11 kV source and plain capacitances stands above twice its
 * phase-to-phase voltage.
 */
import { describe, expect, it } from 'vitest'
import { fittedOf } from '../../../src/engine/hazard/circuit/fitted'
import { spreadingResistance } from '../../../src/engine/hazard/circuit/pole'
import { section } from '../../../src/engine/hazard/circuit/section'
import { declaredCorner } from '../../../src/engine/hazard/corner'
import { lineOf, liven } from '../../../src/engine/hazard/liven'
import type { LineStory } from '../../../src/engine/hazard/lineStory'
import { pickedUpVoltage } from '../../../src/engine/hazard/pickedUp'
import { devicesOf } from '../../../src/engine/hazard/protection/devicesOf'
import { sweep } from '../../../src/engine/hazard/sweep'
import { createSweepCache, type SweepCache } from '../../../src/engine/hazard/sweepCache'
import { magnitude } from '../../../src/engine/math/complex'
import { bodiesAt } from '../../../src/engine/site/bodies'
import { judgeRun } from '../../../src/engine/debrief/judgeRun'
import type { WoodPole } from '../../../src/engine/site/pole'
import { liveVoltage } from '../../../src/engine/site/liveness'
import type { Livening, ParallelCircuit, Transformer } from '../../../src/engine/site/scenario'
import type { Site } from '../../../src/engine/site/site'
import { runTimeline } from '../../../src/engine/timeline/fold'
import { afterStrike } from '../../../src/engine/timeline/strike'
import { allOf, alsoLivened, besides, coilEarthed, multiEarthed } from '../../support/networks'
import type { Pack } from '../../../src/engine/rules/finding'
import type { Timeline } from '../../../src/engine/timeline/timeline'
import { shippedPack } from '../../support/rules/recorded'
import { backFed } from './backFeedSites'
import {
  bladesClosed,
  clampOn,
  earthedSite,
  exposureOf,
  leftHandOnB,
  storyOf,
  workerAloft,
  inScenario,
  isolatedSite,
  momentOf,
  sharedCache,
  voltages,
  withRod,
  type Change,
} from './sites'

const phaseVoltage = 11_000 / Math.sqrt(3)

function lineAt(site: Site, livening: string): LineStory {
  const line = lineOf(site, livening, declaredCorner, sharedCache)
  if (line.kind !== 'line') throw new Error(`${livening}: ${line.reason} at ${line.node}`)
  return line
}

const highest = ({ view }: LineStory['phases'][number]): number =>
  Math.max(...view.factored().nodes.map((node) => magnitude(view.voltage(node))))

const earthOnA: Change = (site) =>
  [withRod, clampOn('E-07', 'earth', 'rod/R-1'), clampOn('E-07', '1', 'conductor-a')].reduce((now, it) => it(now), site)

/** A feeder that goes on beside the section. */
const goesOn = (feeder: string, change: Partial<ParallelCircuit> = {}) =>
  besides({ feeder, voltage: 11_000, ...change })

const struckAs = (id: string): Change => {
  return (site) => ({ ...site, livening: { id, at: 0, cleared: false, provedOff: false } })
}

describe('one cache for two scenarios', () => {
  const answers = (site: Site, cache: SweepCache) => liven(momentOf(site), 'clash-b', declaredCorner, cache)

  it('the soil did not know the low-voltage neutral’s earth: the answer was that of the scenario before', () => {
    const withEarth = (resistance: number) =>
      earthedSite(inScenario(({ lv }) => ({ lv: { ...lv, neutralEarth: { ...lv.neutralEarth, resistance } } })))
    const cache = createSweepCache()
    const five = answers(withEarth(5), cache)
    expect(answers(withEarth(50), cache)).not.toEqual(five)
    expect(answers(withEarth(50), cache)).toEqual(answers(withEarth(50), createSweepCache()))
  })

  it('the public’s walk did not know where a pipe comes out of the ground', () => {
    const withPipe = (x: number) =>
      earthedSite(inScenario(() => ({ grounds: [{ id: 'pipe', kind: 'pipe', resistance: 3, points: [{ x, y: 0 }] }] })))
    const cache = createSweepCache()
    // beyond the barrier that stands at -9.5 m
    const near = answers(withPipe(-12), cache)
    expect(answers(withPipe(-40), cache)).not.toEqual(near)
    expect(answers(withPipe(-40), cache)).toEqual(answers(withPipe(-40), createSweepCache()))
  })
})

describe('a neutral wire', () => {
  it('two places at one pole had an earth each: from -600 m to 400 m there are ten, and the worked pole', () => {
    const { scenario } = isolatedSite(inScenario(allOf(multiEarthed(), besides({ from: -500, to: 400 }))))
    const earths = section(scenario).filter((it) => it.kind === 'impedance' && it.id.startsWith('neutral/earth-'))
    expect(earths).toHaveLength(10)
  })
})

describe('somebody’s own source before the line is isolated', () => {
  const inverter: Change = inScenario(() => ({
    embedded: [
      {
        id: 'set-1',
        kind: 'inverter',
        transformer: 't1',
        at: { x: -120, y: 20 },
        phases: ['A', 'B', 'C'],
        rating: 10_000,
        limit: 1.2,
        trips: 'never',
      },
    ],
  }))
  const at = (...changes: readonly Change[]) => {
    const site = isolatedSite(backFed(), inverter, workerAloft, ...changes)
    const { scenario } = site
    const { unsolved } = sweep({ scenario, moments: [{ from: 0, ...momentOf(site) }] }, sharedCache)
    return { isSolved: unsolved.length === 0, line: lineAt(site, 'set-on') }
  }

  it('an inverter beside the feeder that held the line had no answer, and no run on that site could pass', () => {
    const { isSolved, line } = at(bladesClosed('switch-27', 'A', 'B', 'C'))
    expect(isSolved).toBe(true)
    expect(line.feeders).toEqual(['f1'])
  })

  it('once the line is isolated it lifts it', () => {
    const { isSolved, line } = at()
    expect(isSolved).toBe(true)
    expect(line.feeders).toEqual(['set-1'])
    expect(magnitude(line.phases[0]!.view.voltage('conductor-b@pole'))).toBeGreaterThan(0.9 * phaseVoltage)
  })
})

describe('a transformer with one phase fed', () => {
  it('customers’ load was left out: a hand on another phase got the magnetising current alone', () => {
    const handOnB = (load: Partial<Transformer>) => {
      const site = isolatedSite(backFed({ transformer: load }), bladesClosed('switch-27', 'A'), workerAloft)
      return exposureOf(storyOf(momentOf(site, leftHandOnB), 'none'), 'pw').bodyCurrent
    }
    // 10 kVA on a delta of 11 kV: 36.3 kΩ a winding; from A to B one of them beside the two others, 24.2 kΩ, and the body
    const winding = (3 * 11_000 * 11_000) / 10_000
    const throughLoad = phaseVoltage / ((2 / 3) * winding + 1500)
    expect(handOnB({ load: 10_000 }) / throughLoad).toBeGreaterThan(0.9)
    expect(handOnB({ load: 10_000 }) / throughLoad).toBeLessThan(1.1)
    expect(handOnB({})).toBeLessThan(0.01 * throughLoad)
  })

  it('the load takes what it is stated to take: three phases fed, 10 kW', () => {
    const site = isolatedSite(backFed({ transformer: { load: 10_000 } }), bladesClosed('switch-27', 'A', 'B', 'C'))
    const { view } = lineAt(site, 'none').phases[0]!
    const watt = (['A', 'B', 'C'] as const).reduce((sum, phase) => {
      const amps = magnitude(view.solution().current(`t1/load-${phase}`))
      return sum + amps * amps * ((3 * 230 * 230) / 10_000)
    }, 0)
    // less what 2 + j4 % of impedance takes at 0.4 of the rating: 1.6 % of the power
    expect(watt / 10_000).toBeGreaterThan(0.975)
    expect(watt / 10_000).toBeLessThan(1)
  })
})

describe('a feeder that goes on beside the section', () => {
  const fused = inScenario(({ feeders }) => ({
    feeders: feeders.map((it) => ({ ...it, fuses: { link: 'K', rating: 10 } as const })),
  }))

  it('its load stayed a stated current behind a blown fuse: some megavolts on a dead conductor', () => {
    const site = isolatedSite(inScenario(goesOn('fx', { loadCurrent: 10 })), fused, earthOnA)
    const line = lineAt(site, 'clash-ab')
    expect(line.happenings.some((it) => it.what === 'fuse-blows')).toBe(true)
    expect(line.phases.length).toBeGreaterThan(1)
    for (const phase of line.phases) expect(highest(phase)).toBeLessThan(2 * 11_000)
    // A dead, C as it was: the load that is left runs between B and C
    const after = line.phases[line.phases.length - 1]!.view
    const drawn = ['A', 'B', 'C'].map((it) => after.circuit.elements.find(({ id }) => id === `beside/p33/load-${it}`))
    expect(drawn[0]).toBeUndefined()
    const [b, c] = drawn.slice(1).map((it) => (it?.kind === 'current' ? it.current : undefined))
    expect(magnitude(b!)).toBeCloseTo(10, 9)
    expect(magnitude({ re: b!.re + c!.re, im: b!.im + c!.im })).toBeLessThan(1e-9)
  })

  it('a fault on it went on drawing its current when it had tripped', () => {
    const fault: Livening = { id: 'fault', kind: 'induction', parallel: 'p33', phase: 'B' }
    const beside = inScenario(allOf(goesOn('f2', { loadCurrent: 30, faultTime: 30 }), alsoLivened(fault)))
    const line = lineAt(isolatedSite(beside, bladesClosed('switch-31', 'A'), earthOnA), 'fault')
    expect(line.happenings.some((it) => it.what === 'breaker-opens' && it.of === 'f2')).toBe(true)
    for (const phase of line.phases.filter(({ from }) => from > 0)) expect(highest(phase)).toBeLessThan(2 * 11_000)
  })
})

describe('a detector', () => {
  it('it was silent on a conductor that a transformer ties to a live one', () => {
    const wound = backFed({
      transformer: { connection: 'single-phase', phases: ['A', 'B'] },
      source: { phases: ['A'] },
    })
    const site = isolatedSite(wound, bladesClosed('switch-27', 'A'))
    expect(liveVoltage(site, 'conductor-b')).toBe(0)
    // 0.45 of 6 kV is what it shows from
    expect(pickedUpVoltage(site, 'conductor-b')).toBeGreaterThan(0.45 * 6_000)
  })

  it('it did not feel a displaced circuit beside the line, though that lasts', () => {
    const displaced: Livening = { id: 'displaced', kind: 'pick-up', parallel: 'p33', phase: 'A' }
    const site = isolatedSite(inScenario(allOf(besides(), alsoLivened(displaced))))
    const volts = (of: Site) => Number(pickedUpVoltage(of, 'conductor-b'))
    expect(volts(struckAs('displaced')(site))).toBeGreaterThan(4 * volts(site))
  })
})

describe('a blade that fell shut and that nothing cleared', () => {
  it('the switch still showed it open, and the line was dead to a detector', () => {
    const coilFed: Livening = { id: 'coil', kind: 'coil-fed', switch: 'switch-31', phase: 'B' }
    const unlockedTie: Change = (site) => ({
      ...site,
      switches: { ...site.switches, 'switch-31': { ...site.switches['switch-31']!, lock: null } },
    })
    const site = isolatedSite(inScenario(allOf(coilEarthed(), alsoLivened(coilFed))), earthOnA, unlockedTie)
    const moment = { from: 0, to: 1, site, busy: [], bodies: bodiesAt(site) }
    const after = afterStrike(site, moment, { livening: 'coil', at: 0, moment: 0 })
    expect(after.livening?.cleared).toBe(false)
    expect(after.switches['switch-31']?.blades).toEqual({ A: 'open', B: 'closed', C: 'open' })
    expect(after.switches['switch-31']?.handle).toBe('open')
    expect(liveVoltage(after, 'conductor-b')).toBeCloseTo(phaseVoltage, 6)
    expect(liveVoltage(after, 'conductor-a')).toBe(0)
  })
})

describe('a wet wooden pole', () => {
  // dry wood of 1 MΩ a metre in the rain; 0.27 m thick, for which the film of 200 kΩ a metre is stated
  const wet = inScenario(({ pole }) => {
    const { number, height, armHeight, lvHeight, buttLength, stepBoltsTo, armFixing, stepBoltFixing } = pole
    const shape = { number, height, armHeight, lvHeight, buttLength, stepBoltsTo, armFixing, stepBoltFixing }
    const made = { moisture: 'dry', treatment: 'oil', surface: 'wet', arm: 'steel' } as const
    return { pole: { kind: 'wood', diameter: 0.27, ...shape, ...made } satisfies WoodPole }
  })

  it('a thigh met the dry wood under the film through 146 kΩ; it meets the film', () => {
    const { pole, contact } = isolatedSite(wet).scenario
    // potential of a source on an endless cylinder: 200 kΩ/m · r · ln(r/b), b of a disc of that area; beside ρ/4b of wood
    const byHand = (area: number) => {
      const b = Math.sqrt(area / Math.PI)
      const film = 200_000 * 0.135 * Math.log(0.135 / b)
      const wood = (1e6 * Math.PI * 0.135 ** 2) / (4 * b)
      return 1 / (1 / film + 1 / wood)
    }
    for (const area of [contact.area.thigh, contact.area.hand]) {
      expect(spreadingResistance(pole, area) / byHand(area)).toBeCloseTo(1, 9)
    }
    expect(spreadingResistance(pole, contact.area.thigh)).toBeLessThan(10_000)
    // a patch as wide as the pole is on the rung
    expect(spreadingResistance(pole, Math.PI * 0.135 ** 2)).toBe(0)
  })

  it('a tenth of the current from hand to thigh was lost in it', () => {
    const site = earthedSite(wet)
    const at = voltages(momentOf(site))
    const contacts = [
      { limb: 'left-hand', on: { kind: 'conductor', id: 'conductor-b' }, through: [] },
      { limb: 'thigh', on: { kind: 'pole', height: 7.7 }, through: [] },
    ] as const
    const worker = exposureOf(storyOf({ site, bodies: [{ person: 'pw', contacts }] }), 'pw')
    // 7.7 m down to the ground and 0.25 m into it, 167 kΩ each, beside the low-voltage insulators and the stay's, 100 MΩ each
    const wood = (2e11 / 1.2e6) * 7.95
    const insulators = 100e6 / (site.scenario.lv.wires.length + 1)
    // the thigh of 0.03 m² 8.2 kΩ; half a body
    const way = (wood * insulators) / (wood + insulators) + 8_200 + 0.5 * 575
    const byHand = (at('conductor-b@pole') - at('butt')) / way
    expect(worker.path).toBe('hand-thigh')
    expect(worker.bodyCurrent / byHand).toBeGreaterThan(0.99)
    expect(worker.bodyCurrent / byHand).toBeLessThan(1.01)
  })
})

describe('a visible livening that is told in words', () => {
  it('it counted as an instant that could not be solved: no run with one could pass', () => {
    const scenario = {
      ...isolatedSite(
        inScenario(({ livenings }) => ({ ranges: [], livenings: [...livenings, { id: 'stroke', kind: 'lightning' }] })),
      ).scenario,
      visible: null,
    }
    const quiet = runTimeline(scenario, [])
    const pack: Pack = { ...shippedPack(), elements: [], rules: [] }
    const judge = (struck: Timeline['struck']) => judgeRun({ ...quiet, struck }, pack, { sweep: true })
    const found = judge({ livening: 'stroke', at: 0, moment: 0 })
    expect(found.told).toEqual({ livening: 'stroke', at: 0 })
    expect(found.unsolved).toEqual([])
    expect(found.notJudged).not.toContain('circuit-unsolved')
    const { told, ...rest } = found
    expect(told).toBeDefined()
    expect(rest).toEqual(judge(null))
    expect(found.outcome).toBe('pass')
  })
})

describe('a switch that was closed and whose feeder protection has taken off', () => {
  const unlocked: Change = (site) => ({
    ...site,
    switches: { ...site.switches, 'switch-27': { ...site.switches['switch-27']!, lock: null } },
  })
  const before = earthedSite(unlocked)
  const closing = before.scenario.livenings.find((it) => it.kind === 'switch-closed' && it.switch === 'switch-27')!
  const moment = { from: 0, to: 1, site: before, busy: [], bodies: bodiesAt(before) }
  const after = afterStrike(before, moment, { livening: closing.id, at: 0, moment: 0 })

  it('it looked open afterwards', () => {
    expect(after.livening?.cleared).toBe(true)
    expect(after.switches['switch-27']).toMatchObject({
      handle: 'closed',
      blades: { A: 'closed', B: 'closed', C: 'closed' },
    })
  })

  it('its feeder is locked out: dead as set, live again when somebody closes it', () => {
    expect(liveVoltage(after, 'conductor-b')).toBe(0)
    expect(lineAt(after, 'none').clearedBy).toBe('not-live')
    expect(lineAt(after, closing.id).liveCurrent).toBeCloseTo(lineAt(before, closing.id).liveCurrent, 9)
  })

  it('with the permit back the control room has closed the feeder; opened by the crew it is open', () => {
    const returned: Site = { ...after, paper: { ...after.paper, permit: 'returned' } }
    expect(liveVoltage(returned, 'conductor-b')).toBeCloseTo(phaseVoltage, 6)
    expect(liveVoltage(bladesOpened(returned), 'conductor-b')).toBe(0)
  })

  const bladesOpened: Change = (site) => ({
    ...site,
    switches: { ...site.switches, 'switch-27': { ...before.switches['switch-27']! } },
  })
})

describe('cut-outs on a line of two conductors', () => {
  it('a fuse stood in the phase that is not there', () => {
    const two = inScenario(({ conductors, switches }) => ({
      conductors: conductors.filter(({ phase }) => phase !== 'C'),
      switches: switches.map((it) => ({ ...it, fuses: { link: 'K', rating: 10 } as const })),
    }))
    const site = isolatedSite(two)
    const watched: string[] = []
    for (const device of devicesOf(site.scenario, fittedOf(site), [], undefined)) {
      device.next(0, (element) => void watched.push(element))
    }
    const ids = site.scenario.switches.map((it) => it.id)
    expect([...new Set(watched)].sort()).toEqual(ids.flatMap((id) => [`${id}/blade-A`, `${id}/blade-B`]).sort())
  })
})
