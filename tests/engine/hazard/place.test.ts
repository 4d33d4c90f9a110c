/**
 * Things of the place that current can reach, and who touches them: truck, bucket, handline, fence, pipe, an opened
 * conductor, the neutral, a casualty, livestock. Hand calculations beside each figure: the soil's matrix of the site
 * (tested by itself in physics/soil) with the rod's current, then Ohm's law over what lies in the way.
 */
import { describe, expect, it } from 'vitest'
import { fittedOf } from '../../../src/engine/hazard/circuit/fitted'
import { declaredCorner } from '../../../src/engine/hazard/corner'
import { solveInstant } from '../../../src/engine/hazard/instant'
import { stampInstant } from '../../../src/engine/hazard/stamped/stampInstant'
import { cachedGround } from '../../../src/engine/hazard/sweepCache'
import { factor } from '../../../src/engine/physics/network'
import { magnitude } from '../../../src/engine/math/complex'
import type { GroundThing, Truck } from '../../../src/engine/site/groundThings'
import type { Site } from '../../../src/engine/site/site'
import {
  barrierAt,
  bondOn,
  circleRound,
  changed,
  clampOn,
  coverOn,
  earthedSite,
  earthsOn,
  exposureOf,
  inScenario,
  isolatedSite,
  leftHandOnB,
  momentOf,
  othersBooted,
  person,
  rodPlace,
  sharedCache,
  standsAt,
  storyOf,
  touching,
  voltages,
  withRod,
  workerAloft,
  type Change,
} from './sites'

const barefoot: Change = person('gw', { wears: [] })
const phaseVoltage = 11_000 / Math.sqrt(3)

function soil(site: Site) {
  const ground = cachedGround(sharedCache, site.scenario, fittedOf(site))
  const place = (node: string) => ground.electrodes.findIndex((it) => it.node === node)
  return {
    ohm: (a: string, b: string) => ground.resistance[place(a)]![place(b)]!,
    /** Volt per ampere of an electrode at a spot of the ground. */
    at: (x: number, y: number, of: string) => ground.system.mutualTo({ x, y })[place(of)]!,
  }
}

/** Ampere into the soil at the rod, of which nearly all of the fault goes. */
function rodCurrent(site: Site, livening = 'clash-b'): number {
  const instant = solveInstant(momentOf(site), livening, declaredCorner, { cache: sharedCache })
  if (instant.kind !== 'instant') throw new Error(instant.reason)
  return instant.electrodes.find((it) => it.node === 'rod/R-1')!.size
}

describe('the truck (path 14)', () => {
  const onPads: Truck = {
    tyres: 1e6,
    outriggers: [
      { x: -1, y: -2, radius: 0.2 },
      { x: 1, y: -2, radius: 0.2 },
      { x: -1, y: 2, radius: 0.2 },
      { x: 1, y: 2, radius: 0.2 },
    ],
  }
  const parked = (truck: Truck, x: number): Change => {
    return (site) => ({ ...inScenario(() => ({ truck }))(site), truck: { x, y: 0 } })
  }
  const hand = touching('gw', 'right-hand', { kind: 'truck' })

  it('beside the rod it floats at what the ground under its pads has: their mutual ohm times the rod’s current', () => {
    const site = earthedSite(parked(onPads, -6.5), standsAt('gw', -4, 0), barefoot)
    const at = voltages(momentOf(site))
    expect(at('truck') / (soil(site).ohm('truck', 'rod/R-1') * rodCurrent(site))).toBeCloseTo(1, 2)
    const worker = exposureOf(storyOf(momentOf(site, hand)), 'gw')
    expect(worker.path).toBe('hand-truck-feet')
    // who stands nearer to the rod than the truck does has more under the feet than under the hand
    const open = soil(site).at(-4, 0, 'rod/R-1') * rodCurrent(site) - at('truck')
    expect(worker.prospectiveVoltage / open).toBeCloseTo(1, 0)
  })

  it('bonded to the lead it is at the site’s rise: nearly all of it at the door, a few metres out', () => {
    const floating = earthedSite(parked(onPads, 9), standsAt('gw', 11.5, 0), barefoot)
    const bonded = changed(floating, clampOn('B-02', 'metal', 'truck'), clampOn('B-02', 'line', 'rod/R-1'))
    const touchOf = (site: Site) => exposureOf(storyOf(momentOf(site, hand)), 'gw').prospectiveVoltage
    expect(touchOf(bonded)).toBeGreaterThan(2_000)
    expect(touchOf(bonded)).toBeGreaterThan(10 * touchOf(floating))
  })

  it('on its wheels only what the tyres let through: 1 MΩ, milliamperes however high the ground', () => {
    const site = earthedSite(parked({ ...onPads, outriggers: [] }, -6.5), standsAt('gw', -4, 0), barefoot)
    const currentOf = (...active: Parameters<typeof momentOf>[1][]) =>
      exposureOf(storyOf(momentOf(site, ...active)), 'gw').bodyCurrent
    const across = Math.abs(soil(site).at(-6.5, 0, 'rod/R-1') - soil(site).at(-4, 0, 'rod/R-1')) * rodCurrent(site)
    // the pace between the feet is the same; the hand adds at most the ground's difference over the tyres
    expect(across).toBeGreaterThan(100)
    expect(Math.abs(currentOf(hand) - currentOf())).toBeLessThan((1.5 * across) / 1e6)
  })

  it('the public reaches it where it stands outside the barrier', () => {
    const site = earthedSite(parked(onPads, 9), clampOn('B-02', 'metal', 'truck'), clampOn('B-02', 'line', 'rod/R-1'))
    const found = exposureOf(storyOf(momentOf(site)), 'bystander', 'bystander-touch')
    expect(found.prospectiveVoltage).toBeGreaterThan(found.limit)
  })
})

describe('the bucket (path 10)', () => {
  const inBucket = (leakage: number, liner: number): Site =>
    earthedSite(
      inScenario(() => ({
        truck: { tyres: 1e6, outriggers: [{ x: 0, y: 0, radius: 0.3 }], boom: { leakage, liner } },
      })),
      (site) => ({ ...site, truck: { x: 5, y: 0 } }),
      person('pw', { place: { kind: 'bucket' }, wears: [] }),
    )

  it('a sound boom and liner: 5.7 kV over 60 MΩ is a tenth of a milliampere', () => {
    const site = inBucket(10e6, 50e6)
    const at = voltages(momentOf(site))
    const worker = exposureOf(storyOf(momentOf(site, leftHandOnB)), 'pw')
    expect(worker.path).toBe('hand-bucket')
    expect(worker.bodyCurrent / ((at('conductor-b@pole') - at('truck')) / 60e6)).toBeCloseTo(1, 2)
  })

  it('a dirty boom of 100 kΩ without its liner: 56 mA, insulated is not nothing', () => {
    const site = inBucket(100_000, 0)
    const at = voltages(momentOf(site))
    const worker = exposureOf(storyOf(momentOf(site, leftHandOnB)), 'pw')
    // 0.75 of the body, the pad's spreading against the rod
    expect(worker.bodyCurrent / ((at('conductor-b@pole') - at('truck')) / (100_000 + 431))).toBeCloseTo(1, 1)
    expect(worker.zone).toMatch(/AC-[34]/)
  })

  it('bonded to the line the bucket is at the hand’s voltage', () => {
    const site = changed(
      inBucket(100_000, 0),
      clampOn('B-02', 'metal', 'bucket'),
      clampOn('B-02', 'line', 'conductor-b'),
    )
    const worker = storyOf(momentOf(site, leftHandOnB)).exposures.find((it) => it.person === 'pw')
    expect(worker?.bodyCurrent ?? 0).toBeLessThan(0.0001)
  })
})

describe('the handline (path 16)', () => {
  const roped = (rain: boolean): Site =>
    earthedSite(
      bondOn,
      barefoot,
      standsAt('gw', 8, 0),
      inScenario(({ contact, weather }) => ({
        contact: { ...contact, rope: { dry: 1e9, wet: 50_000 } },
        weather: { ...weather, rain },
      })),
    )
  const hauling = [
    touching('gw', 'left-hand', { kind: 'handline' }),
    touching('gw', 'right-hand', { kind: 'handline' }),
  ]

  it('wet, from the raised arm to the hands: the rise less the ground over 50 kΩ a metre of rope', () => {
    const site = roped(true)
    const at = voltages(momentOf(site))
    const worker = exposureOf(storyOf(momentOf(site, ...hauling)), 'gw')
    expect(worker.path).toBe('handline-feet')
    const length = site.scenario.pole.armHeight - 1.4
    const under = soil(site).at(8, 0, 'rod/R-1') * rodCurrent(site)
    const byHand = (at('arm') - under) / (50_000 * length)
    // the pole's own share under the feet, and the body's half kiloohm, are a few per cent
    expect(worker.bodyCurrent / byHand).toBeGreaterThan(0.85)
    expect(worker.bodyCurrent / byHand).toBeLessThan(1.02)
  })

  it('dry it insulates, and where the scenario says nothing of ropes it is none', () => {
    const dry = storyOf(momentOf(roped(false), ...hauling)).exposures.find((it) => it.person === 'gw')
    const standing = storyOf(momentOf(roped(false))).exposures.find((it) => it.person === 'gw')
    expect(dry?.bodyCurrent).toBeCloseTo(standing?.bodyCurrent ?? 0, 4)
    const unsaid = earthedSite(bondOn, barefoot, standsAt('gw', 8, 0))
    expect(exposureOf(storyOf(momentOf(unsaid, ...hauling)), 'gw').path).toBe('pace')
  })
})

describe('a fence and a pipe carry the rise elsewhere (path 19)', () => {
  const fence: GroundThing = {
    id: 'paddock',
    kind: 'fence',
    posts: [
      { x: -4.5, y: 0 },
      { x: -12, y: 0 },
      { x: -20, y: 0 },
      { x: -28, y: 0 },
    ],
    postDepth: 0.6,
    postRadius: 0.02,
  }
  const withGrounds = (...grounds: GroundThing[]): Change => inScenario(() => ({ grounds }))

  it('a fence floats at the mean of its posts: its far end is above the ground there by all of it', () => {
    const site = earthedSite(withGrounds(fence), standsAt('gw', -28.5, 0), barefoot)
    const at = voltages(momentOf(site))
    const rise = soil(site).ohm('ground/paddock', 'rod/R-1') * rodCurrent(site)
    expect(at('ground/paddock') / rise).toBeCloseTo(1, 1)
    const hand = touching('gw', 'left-hand', { kind: 'ground-thing', id: 'paddock' })
    const worker = exposureOf(storyOf(momentOf(site, hand)), 'gw')
    expect(worker.path).toBe('hand-fence-feet')
    // feet 0.3 m apart along the steepest line: the far one has least under it
    const under = soil(site).at(-28.65, 0, 'rod/R-1') * rodCurrent(site)
    expect(worker.prospectiveVoltage / (at('ground/paddock') - under)).toBeCloseTo(1, 1)
    // 25 m away, where the ground itself has next to nothing
    expect(under).toBeLessThan(0.5 * at('ground/paddock'))
    expect(worker.zone).toMatch(/AC-[34]/)
  })

  it('the public at its far post gets more than the tolerable touch, outside every barrier', () => {
    const site = earthedSite(withGrounds(fence))
    const found = exposureOf(storyOf(momentOf(site)), 'bystander', 'bystander-touch')
    expect(found.judged).toBeGreaterThan(found.limit)
    const none = storyOf(momentOf(earthedSite())).exposures.find((it) => it.path === 'bystander-touch')
    expect(none?.judged ?? 0).toBeLessThan(found.judged)
  })

  it('a pipe of 5 Ω that the stay lies against divides its rise: 50 Ω of joint, 5 Ω of pipe', () => {
    const pipe: GroundThing = {
      id: 'water',
      kind: 'pipe',
      resistance: 5,
      points: [{ x: 40, y: 30 }],
      joins: { to: 'stay-lower', resistance: 50 },
    }
    const site = earthedSite(withGrounds(pipe), bondOn)
    const at = voltages(momentOf(site))
    expect(at('ground/water') / at('stay-lower')).toBeCloseTo(5 / 55, 6)
    const bridged = changed(
      site,
      inScenario(({ stay }) => ({ stay: { ...stay!, insulatorLeakage: 1, fixing: 1 } })),
    )
    const found = exposureOf(storyOf(momentOf(bridged)), 'bystander', 'bystander-touch')
    // a tenth of kilovolts at a tap fifty metres away, or the stay itself: whatever is worse is told
    expect(found.prospectiveVoltage).toBeGreaterThan(voltages(momentOf(bridged))('ground/water') - 1)
    expect(voltages(momentOf(bridged))('ground/water')).toBeGreaterThan(50)
  })
})

describe('an opened conductor (path 8)', () => {
  /** Earthed on the near side only; the crossing lies beyond the gap. */
  const cut: Change = (site) => ({ ...site, opened: ['conductor-b'] })
  const bothEnds = [
    touching('pw', 'left-hand', { kind: 'conductor', id: 'conductor-b' }),
    touching('pw', 'right-hand', { kind: 'conductor', id: 'conductor-b', end: 'far' }),
  ]
  const site = earthedSite(cut, coverOn())

  it('has phase voltage across the gap while its earths are on the other side', () => {
    const at = voltages(momentOf(site))
    expect(at('conductor-b@pole/far') / phaseVoltage).toBeCloseTo(1, 1)
    expect(at('conductor-b@pole')).toBeLessThan(60)
    const worker = exposureOf(storyOf(momentOf(site, ...bothEnds)), 'pw')
    expect(worker.path).toBe('across-gap')
    expect(worker.prospectiveVoltage / phaseVoltage).toBeCloseTo(1, 1)
    // phase voltage over the body's 575 Ω, the rod's 81.2 Ω and 9.65 + j4.5 Ω before it
    expect(worker.bodyCurrent / (phaseVoltage / (575 + 81.2 + 9.65))).toBeCloseTo(1, 1)
  })

  it('by-passed before it is cut it has some volts of the jumper', () => {
    const jumper = changed(site, clampOn('B-02', 'metal', 'conductor-b'), clampOn('B-02', 'line', 'conductor-b/far'))
    const worker = storyOf(momentOf(jumper, ...bothEnds)).exposures.find((it) => it.person === 'pw')
    expect(worker?.path).not.toBe('across-gap')
    const at = voltages(momentOf(jumper))
    expect(Math.abs(at('conductor-b@pole/far') - at('conductor-b@pole'))).toBeLessThan(1)
    // the site is as before the cut
    expect(at('rod/R-1')).toBeCloseTo(voltages(momentOf(earthedSite(coverOn())))('rod/R-1'), 0)
  })
})

describe('low voltage beside the line, both ways (path 7)', () => {
  /** No guards on the wires. */
  const site = isolatedSite(earthsOn, othersBooted, workerAloft, coverOn())

  it('with no event: 230 V between a live wire and an earthed conductor, over 5 Ω, the rod and the body', () => {
    const hands = [
      touching('pw', 'left-hand', { kind: 'lv-wire', id: 'lv-b' }),
      touching('pw', 'right-hand', { kind: 'conductor', id: 'conductor-b' }),
    ]
    const worker = exposureOf(storyOf(momentOf(site, ...hands), 'none'), 'pw')
    expect(worker.path).toBe('low-voltage')
    expect(worker.prospectiveVoltage).toBeGreaterThan(220)
    expect(worker.prospectiveVoltage).toBeLessThan(240)
    // 775 Ω at 225 V (IEC 60479-1, 5th percentile, dry), 81 Ω of rod, 5 Ω of the star
    expect(worker.bodyCurrent / (worker.prospectiveVoltage / (785 + 81 + 5))).toBeCloseTo(1, 1)
  })

  it('as the line is raised: the wire is remote earth, the site’s rise between the hands', () => {
    const hands = [
      touching('pw', 'left-hand', { kind: 'lv-wire', id: 'lv-n' }),
      touching('pw', 'right-hand', { kind: 'conductor', id: 'conductor-b' }),
    ]
    const at = voltages(momentOf(site))
    const worker = exposureOf(storyOf(momentOf(site, ...hands)), 'pw')
    expect(worker.path).toBe('low-voltage')
    expect(worker.prospectiveVoltage / (at('conductor-b@pole') - at('lv-n'))).toBeCloseTo(1, 2)
    expect(worker.zone).toBe('AC-4.3')
  })
})

describe('a rescuer (path 20)', () => {
  /** The ground worker hangs on the lead; the person in charge takes hold of him. Neither wears anything. */
  const site = earthedSite(
    person('gw', { wears: [], place: { kind: 'ground', at: { x: -3.5, y: 1 } } }),
    person('pic', { wears: [], place: { kind: 'ground', at: { x: -3.5, y: 2.2 } } }),
  )
  const onLead = touching('gw', 'right-hand', { kind: 'lead', item: 'E-07', end: 'earth' })
  const holds = touching('pic', 'left-hand', { kind: 'person', id: 'gw' })

  it('takes a part of the casualty’s current through hand and feet, killed like him', () => {
    const story = storyOf(momentOf(site, onLead, holds))
    const rescuer = exposureOf(story, 'pic')
    expect(rescuer.path).toBe('rescuer')
    expect(rescuer.zone).toBe('AC-4.3')
    const alone = exposureOf(storyOf(momentOf(site, onLead)), 'gw')
    // two ways to the soil behind one hand: the casualty's hand carries more than before
    expect(exposureOf(story, 'gw').bodyCurrent).toBeGreaterThan(alone.bodyCurrent)
    expect(rescuer.bodyCurrent).toBeLessThan(exposureOf(story, 'gw').bodyCurrent)
  })

  it('the whole circuit with both stamped into it gives the same currents (0.5 %)', () => {
    const stamped = stampInstant(momentOf(site, onLead, holds), 'clash-b', declaredCorner)
    if (stamped.kind === 'unsolvable') throw new Error(stamped.node)
    const factored = factor(stamped.circuit)
    if (factored.kind === 'unsolvable') throw new Error(factored.node)
    const solution = factored.solve()
    if ('reason' in solution) throw new Error(solution.node)
    const contacts = stamped.bodies.filter((it) => it.person !== 'pw').flatMap((it) => it.contacts)
    expect(contacts.filter((it) => it.on === 'person')).toHaveLength(2)
    for (const { element, current, on } of contacts) {
      if (on === 'person' && element.endsWith('/skin')) continue
      expect(magnitude(solution.current(element)) / magnitude(current), element).toBeCloseTo(1, 2)
    }
  })

  it('without him nothing comes: a hand on somebody who touches nothing closes no way but the soil', () => {
    const idle = storyOf(momentOf(site, holds))
    expect(exposureOf(idle, 'pic').bodyCurrent).toBeLessThan(
      0.2 * exposureOf(storyOf(momentOf(site, onLead, holds)), 'pic').bodyCurrent,
    )
  })
})

describe('livestock (path 21)', () => {
  const grazing = inScenario(() => ({ livestock: { pace: 1.6, limit: 25 } }))

  it('has more between its feet than people have: V over 1.6 m against 1 m, no current, the scenario’s limit', () => {
    const site = isolatedSite(withRod, workerAloft, clampOn('E-07', 'earth', 'rod/R-1'), grazing, (it) =>
      clampOn('E-07', '1', 'conductor-b')(barrierAt(circleRound(rodPlace, 5))(it)),
    )
    const story = storyOf(momentOf(site))
    const people = exposureOf(story, 'bystander', 'bystander-pace')
    expect(story.livestock).toMatchObject({ path: 'livestock-pace', limit: 25 })
    const { voltage, feet } = story.livestock!
    expect(voltage).toBeGreaterThan(people.prospectiveVoltage)
    expect(voltage).toBeLessThan(1.6 * people.prospectiveVoltage)
    const [a, b] = feet
    expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeCloseTo(1.6, 9)
    const between = soil(site).at(a.x, a.y, 'rod/R-1') - soil(site).at(b.x, b.y, 'rod/R-1')
    expect(voltage / (between * rodCurrent(site))).toBeCloseTo(1, 1)
    expect(storyOf(momentOf(earthedSite())).livestock).toBeUndefined()
  })
})
