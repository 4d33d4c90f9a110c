/**
 * Facts of the trade that the network must show without being told (design list, numbers kept). Hand calculations beside
 * each; phase voltage 11 kV/√3 = 6351 V, rod 81.2 Ω, neutral 6.35 Ω, station 0.5 Ω, line and source 2.8 + j4.5 Ω.
 * Facts of other networks stand beside those: 9 in neutralEarthing.test.ts, 10 in neutralWire.test.ts.
 */
import { describe, expect, it } from 'vitest'
import { cachedGround } from '../../../src/engine/hazard/sweepCache'
import { buildCircuit } from '../../../src/engine/hazard/circuit/buildCircuit'
import { fittedOf } from '../../../src/engine/hazard/circuit/fitted'
import { freshLeads } from '../../../src/engine/hazard/circuit/leads'
import { factor } from '../../../src/engine/physics/network'
import {
  barrierAt,
  bladesClosed,
  bondOn,
  changed,
  clampOn,
  coverOn,
  earthedSite,
  exposureOf,
  inScenario,
  isolatedSite,
  labelled,
  leftHandOnB,
  momentOf,
  othersBooted,
  sharedCache,
  standsAt,
  storyOf,
  touching,
  unlocked,
  voltages,
  withRod,
  without,
  workerAloft,
  type Change,
} from './sites'

const phaseVoltage = 11_000 / Math.sqrt(3)
const rightHandOn = (id: string) => touching('pw', 'right-hand', { kind: 'conductor', id })
const rightHandOnArm = touching('pw', 'right-hand', { kind: 'metalwork', id: 'arm' })
const armFixing = (ohm: number): Change => inScenario(({ pole }) => ({ pole: { ...pole, armFixing: ohm } }))
const neutral = (ohm: number): Change =>
  inScenario(({ feeders }) => ({
    feeders: feeders.map((it) => ({ ...it, neutral: { kind: 'resistor', resistance: ohm } as const })),
  }))

describe('1 the rod limits the current, so the whole site sits near phase voltage', () => {
  it('90 % at a 6 Ω neutral, 56 % at 60 Ω: 81.2/(81.2 + neutral + 3.4)', () => {
    const share = (ohm: number) => storyOf(momentOf(earthedSite(neutral(ohm)))).siteRise / phaseVoltage
    expect(share(6)).toBeCloseTo(81.2 / (81.2 + 6 + 3.4), 2)
    expect(share(60)).toBeCloseTo(81.2 / (81.2 + 60 + 3.4), 2)
    expect(share(60)).toBeCloseTo(0.56, 2)
  })

  it('at 700 Ω of rod the relay never trips: 8.9 A is below its 40 A', () => {
    const dry = inScenario(() => ({ soil: { layers: [{ resistivity: 1300 }] } }))
    const story = storyOf(momentOf(earthedSite(dry)))
    expect(story.clearedBy).toBe('nothing')
    expect(story.duration).toBe(60)
    expect(story.liveCurrent).toBeLessThan(40)
  })
})

describe('2 bonded metalwork and conductor', () => {
  const worker = earthedSite(bondOn, coverOn())

  it('hand to hand between B and the arm is almost nothing, thousands of volts without the bond', () => {
    const bonded = voltages(momentOf(worker))
    expect(Math.abs(bonded('conductor-b@pole') - bonded('arm'))).toBeLessThan(1)
    const unbonded = voltages(momentOf(earthedSite(coverOn())))
    expect(unbonded('conductor-b@pole') - unbonded('arm')).toBeGreaterThan(4_000)
    const bare = storyOf(momentOf(earthedSite(coverOn()), leftHandOnB, rightHandOnArm))
    expect(exposureOf(bare, 'pw').path).toBe('hand-metalwork')
    expect(exposureOf(bare, 'pw').zone).toBe('AC-4.3')
    const saved = storyOf(momentOf(worker, leftHandOnB, rightHandOnArm))
    expect(exposureOf(saved, 'pw').bodyCurrent).toBeLessThan(0.001)
  })

  it('but at 10 kΩ of fixing hand to thigh stays large on bare concrete, milliampere under a cover', () => {
    const bare = exposureOf(storyOf(momentOf(earthedSite(bondOn, armFixing(10_000)), leftHandOnB)), 'pw')
    expect(bare.path).toBe('hand-thigh')
    // V(B) - V(cage) over half a body, 200 Ω of concrete and about 50 Ω of butt
    expect(bare.bodyCurrent).toBeGreaterThan(5)
    const covered = exposureOf(storyOf(momentOf(changed(worker, armFixing(10_000)), leftHandOnB)), 'pw')
    expect(covered.bodyCurrent).toBeLessThan(0.001)
  })
})

describe('3 an unbonded concrete pole is lifted by mutual coupling only', () => {
  const cageShare = (...changes: readonly Change[]): number => {
    const at = voltages(momentOf(earthedSite(...changes)))
    return at('cage') / at('rod/R-1')
  }

  it('about a tenth at 3.5 m: surface formula of a rod, averaged over the butt, in the two soils', () => {
    // uniform soil: mutual over self = (asinh(2L/s) + s/2L - √(1 + (s/2L)²)) / (ln(4L/a) - 1) at s = 3.5 m, L = 1.8 m
    const s = 3.5
    const twice = 3.6
    const mutual = Math.asinh(twice / s) + s / twice - Math.sqrt(1 + (s / twice) ** 2)
    const uniform = mutual / (Math.log((4 * 1.8) / 0.008) - 1)
    const share = cageShare()
    // the less conducting lower layer keeps the current near the surface: more coupling than in uniform soil
    expect(share).toBeGreaterThan(uniform)
    expect(share).toBeLessThan(2 * uniform)
    expect(share).toBeCloseTo(0.13, 2)
  })

  it('bonded: from 13 % at 10 kΩ of fixing to about 83 % at 10 Ω, steadily', () => {
    const shares = [10_000, 1_000, 100, 10].map((ohm) => cageShare(bondOn, armFixing(ohm)))
    expect(shares[0]).toBeCloseTo(0.13, 1)
    expect(shares[3]).toBeCloseTo(0.83, 1)
    for (const [i, share] of shares.slice(1).entries()) expect(share).toBeGreaterThan(shares[i]!)
  })

  it('as it falls, hand to pole falls and a pace at the pole grows', () => {
    // wide of the rod, 1.5 m from the pole on its far side
    const atPole = barrierAt([
      { x: -12, y: -9 },
      { x: 1.5, y: -9 },
      { x: 1.5, y: 9 },
      { x: -12, y: 9 },
    ])
    const at = (ohm: number) => storyOf(momentOf(earthedSite(bondOn, armFixing(ohm), atPole), leftHandOnB))
    const stiff = at(10_000)
    const low = at(10)
    expect(exposureOf(low, 'pw').prospectiveVoltage).toBeLessThan(0.4 * exposureOf(stiff, 'pw').prospectiveVoltage)
    const pace = (story: typeof low) => exposureOf(story, 'bystander', 'bystander-pace').judged
    expect(pace(low)).toBeGreaterThan(2 * pace(stiff))
  })

  it('and so does a touch of the pole; the barrier is then drawn from pole and rod', () => {
    // within a reach of the pole's far side, 3 m and more from the rod
    const round = barrierAt([
      { x: -12, y: -9 },
      { x: 1, y: -9 },
      { x: 1, y: 9 },
      { x: -12, y: 9 },
    ])
    const touchOf = (ohm: number) =>
      exposureOf(storyOf(momentOf(earthedSite(bondOn, armFixing(ohm), round))), 'bystander', 'bystander-touch')
    const [low, stiff] = [touchOf(10), touchOf(10_000)]
    expect(low.judged).toBeGreaterThan(2 * stiff.judged)
    expect(low.judged).toBeGreaterThan(low.limit)
  })
})

describe('4 boots are for a pace, not for a hand on a raised thing', () => {
  const onLead = touching('gw', 'right-hand', { kind: 'lead', item: 'E-07', end: 'earth' })
  const beside = (...changes: readonly Change[]) => earthedSite(standsAt('gw', -3.5, 0.6), ...changes)
  const classZero = labelled('BT-43', { class: '0' })

  it('a pace beside the rod in class 0 boots is nothing', () => {
    const standing = storyOf(momentOf(beside(classZero)))
    const found = standing.exposures.find((it) => it.person === 'gw')
    expect(found?.bodyCurrent ?? 0).toBeLessThan(0.0005)
  })

  it('a hand on the lead: class 0 may fail at 3.7 kV (use 1 kV, proof 5 kV), class 1 holds (use 7.5 kV)', () => {
    const zero = exposureOf(storyOf(momentOf(beside(classZero), onLead)), 'gw')
    expect(zero.layer).toMatchObject({ item: 'BT-43', did: 'may-fail' })
    expect(zero.layer?.voltage).toBeGreaterThan(1_000)
    expect(zero.layer?.voltage).toBeLessThan(5_000)
    expect(zero.ifItFails?.zone).toBe('AC-4.3')
    const one = exposureOf(storyOf(momentOf(beside(), onLead)), 'gw')
    expect(one.layer?.did).toBe('held')
    expect(one.ifItFails).toBeUndefined()
  })

  it('the free end of a lead that is on a live conductor: 6.35 kV, class 0 fails, class 1 holds', () => {
    const freeEnd = isolatedSite(withRod, othersBooted, clampOn('E-07', '1', 'conductor-b'), standsAt('gw', -3.5, 0.6))
    const zero = storyOf(momentOf(changed(freeEnd, classZero), onLead))
    expect(exposureOf(zero, 'gw').layer?.voltage).toBeCloseTo(phaseVoltage, -1)
    expect(exposureOf(zero, 'gw').layer?.did).toBe('failed')
    expect(zero.failedItems).toEqual(['BT-43'])
    const one = exposureOf(storyOf(momentOf(freeEnd, onLead)), 'gw')
    expect(one.layer?.did).toBe('held')
    // ωε0·3·0.02 m²/5 mm is 33 nS a sole: two soles at 6.35 kV carry 0.44 mA with their leakage
    expect(one.bodyCurrent).toBeCloseTo(0.00044, 5)
  })
})

describe('5 three phases at once', () => {
  const closing = unlocked('switch-27')
  const complete = earthedSite(bondOn, coverOn(), closing)
  const oneOff = changed(complete, without('E-07', '3'))

  it('a complete set is balanced: conductors collapse to a few per cent', () => {
    const at = voltages(momentOf(complete), 'switch-27-closed')
    for (const id of ['a', 'b', 'c']) expect(at(`conductor-${id}@pole`) / phaseVoltage).toBeLessThan(0.03)
    expect(storyOf(momentOf(complete), 'switch-27-closed').clearedBy).toBe('overcurrent')
  })

  it('one phase left off: full voltage beside the worker', () => {
    const at = voltages(momentOf(oneOff), 'switch-27-closed')
    expect(at('conductor-c@pole') / phaseVoltage).toBeGreaterThan(1)
    const story = storyOf(momentOf(oneOff, leftHandOnB, rightHandOn('conductor-c')), 'switch-27-closed')
    const worker = exposureOf(story, 'pw')
    expect(worker.path).toBe('hand-hand')
    expect(worker.zone).toBe('AC-4.3')
    // the shorted pair sits at the middle of A and B: half of phase voltage, opposite to C: 1.5 times to it
    expect(at('conductor-b@pole') / phaseVoltage).toBeCloseTo(0.45, 1)
    expect(worker.prospectiveVoltage / phaseVoltage).toBeCloseTo(1.5, 1)
  })

  it('two phases fallen onto a complete set do not sum to zero either: site near half of phase voltage', () => {
    const story = storyOf(momentOf(earthedSite(bondOn, coverOn())), 'clash-ab')
    expect(story.siteRise / phaseVoltage).toBeGreaterThan(0.4)
    expect(story.siteRise / phaseVoltage).toBeLessThan(0.5)
  })
})

describe.each([600, 200])('6 earths %d m away and none at the position', (metres) => {
  const atDistance = inScenario(({ switches }) => ({
    switches: switches.map((it) => (it.id === 'switch-27' ? { ...it, along: -metres } : it)),
  }))
  const farEarth: Change = (site) => ({
    ...site,
    switches: {
      ...site.switches,
      'switch-27': { ...site.switches['switch-27']!, earth: { item: 'E-21', resistance: 10 } },
    },
  })
  const far = isolatedSite(atDistance, farEarth, workerAloft, othersBooted)

  it('the far electrode’s rise decides, not the drop along the line', () => {
    const at = voltages(momentOf(far))
    const there = at('switch-27/earth-bar')
    const drop = Math.abs(at('conductor-b@pole') - at('conductor-b@switch-27'))
    // 306 A through 10 Ω is 3.1 kV; 640 m of line at 0.65 + j0.75 Ω/km drops some 190 V, 240 m some 70 V
    expect(there).toBeGreaterThan(2_800)
    expect(drop).toBeLessThan((250 * (metres + 40)) / 640)
    const worker = exposureOf(storyOf(momentOf(far, leftHandOnB)), 'pw')
    expect(worker.prospectiveVoltage).toBeGreaterThan(2_800)
    expect(worker.zone).toBe('AC-4.3')
  })

  it('a local rod does not help hand to pole; a cover does', () => {
    const rod = changed(far, withRod, clampOn('E-07', 'earth', 'rod/R-1'), clampOn('E-07', '1', 'conductor-b'))
    const before = exposureOf(storyOf(momentOf(far, leftHandOnB)), 'pw')
    const after = exposureOf(storyOf(momentOf(rod, leftHandOnB)), 'pw')
    expect(after.bodyCurrent).toBeGreaterThan(0.7 * before.bodyCurrent)
    const covered = exposureOf(storyOf(momentOf(changed(far, coverOn()), leftHandOnB)), 'pw')
    expect(covered.bodyCurrent).toBeLessThan(0.001)
  })

  it('a bond with the worker off the concrete: both hands at one potential', () => {
    const at = voltages(momentOf(changed(far, bondOn)))
    expect(Math.abs(at('conductor-b@pole') - at('arm'))).toBeLessThan(1)
  })
})

describe('11 a phase left off the set floats on its capacitance', () => {
  const oneOff = earthedSite(bondOn, coverOn(), without('E-07', '3'))

  it('touched beside a conductor at the site rise it drives 7 to 8 mA per kilometre of line', () => {
    const story = storyOf(momentOf(oneOff, leftHandOnB, rightHandOn('conductor-c')), 'clash-a')
    const current = exposureOf(story, 'pw').bodyCurrent
    // brought to the potential of A and B, C carries the charge of its row sum: solve P q = (1, 1, 1), P by Maxwell
    const own = Math.log((2 * 8.5) / 0.0045)
    const near = Math.log(Math.sqrt(17 ** 2 + 0.75 ** 2) / 0.75)
    const wide = Math.log(Math.sqrt(17 ** 2 + 1.5 ** 2) / 1.5)
    // outer a, middle b: own·a + near·b + wide·a = 1, 2·near·a + own·b = 1 (times 2πε0)
    const outer = (own - near) / ((own + wide) * own - 2 * near * near)
    const farad = outer * 2 * Math.PI * 8.8541878e-12 * 1_000
    const charging = 2 * Math.PI * 50 * farad * story.siteRise
    expect(charging).toBeGreaterThan(0.007)
    expect(charging).toBeLessThan(0.008)
    // the thigh's cover takes its own 4.7 kV × 69 nS = 0.33 mA beside it; the boots' 0.1 mA of leakage is at right angles
    expect(current - charging).toBeCloseTo(0.00033, 4)
  })

  it('the section’s length decides: half the line, half the current', () => {
    const half = changed(
      oneOff,
      inScenario(({ switches }) => ({ switches: switches.map((it) => ({ ...it, along: it.along / 2 })) })),
    )
    const current = (site: typeof oneOff) =>
      exposureOf(storyOf(momentOf(site, leftHandOnB, rightHandOn('conductor-c')), 'clash-a'), 'pw').bodyCurrent
    expect(current(half) / current(oneOff)).toBeCloseTo(0.5, 1)
  })

  it('without that capacitance the conductor has no voltage: unsolvable with its name, never 0 V', () => {
    const fitted = fittedOf(oneOff)
    const ground = cachedGround(sharedCache, oneOff.scenario, fitted)
    const livening = oneOff.scenario.livenings.find((it) => it.id === 'clash-a')!
    const circuit = buildCircuit(oneOff.scenario, fitted, livening, ground, ['fx'], freshLeads)
    expect(factor(circuit)).toMatchObject({ kind: 'factored' })
    const bare = { elements: circuit.elements.filter((it) => !it.id.startsWith('section/shunt')) }
    expect(factor(bare)).toMatchObject({ kind: 'unsolvable', reason: 'floating' })
    const answer = factor(bare)
    expect(answer.kind === 'unsolvable' && answer.node).toContain('conductor-c')
  })

  it('a conductor with no earth at all stands at full phase voltage and needs no fault current', () => {
    const open = isolatedSite(bladesClosed('switch-27', 'B'))
    const at = voltages(momentOf(open), 'none')
    expect(at('conductor-b@pole')).toBeCloseTo(phaseVoltage, -1)
    expect(at('conductor-a@pole')).toBeGreaterThan(500)
  })
})

describe('12 perception reaches far beyond any barrier, the tolerable step does not', () => {
  it('bare shoes 25 m out still feel a pace (0.5 mA), while 6 m out it is below the tolerable step', () => {
    const site = earthedSite(bondOn, standsAt('so', 0, 25))
    const story = storyOf(momentOf(site))
    const felt = exposureOf(story, 'so')
    expect(felt.path).toBe('pace')
    expect(felt.zone).toBe('AC-2')
    expect(felt.bodyCurrent).toBeGreaterThan(0.0005)
    const pace = exposureOf(story, 'bystander', 'bystander-pace')
    expect(pace.judged).toBeLessThan(pace.limit)
  })
})
