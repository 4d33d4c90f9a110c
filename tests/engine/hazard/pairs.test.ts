/**
 * Pairs: one thing changed, whose number moves which way. Each direction is stated, with its reason by hand, in the
 * test's own text and was written before the pair was run.
 */
import { describe, expect, it } from 'vitest'
import { cornersOf } from '../../../src/engine/hazard/corner'
import { slipsOf, type Slip } from '../../../src/engine/hazard/slip'
import type { Site } from '../../../src/engine/site/site'
import { declaredCorner } from '../../../src/engine/hazard/corner'
import {
  bladesClosed,
  bondOn,
  changed,
  clampOn,
  coverOn,
  defect,
  earthedSite,
  exposureOf,
  guardsOn,
  inScenario,
  isolatedSite,
  leftHandOnB,
  momentOf,
  othersBooted,
  sharedCache,
  standsAt,
  person,
  storyOf,
  touching,
  voltages,
  without,
  workerAloft,
  type Change,
} from './sites'

const clean = earthedSite(bondOn, coverOn())
const atWork = (site: Site) => momentOf(site, leftHandOnB)
const worker = (site: Site, livening = 'clash-b') => exposureOf(storyOf(atWork(site), livening), 'pw')
const phaseVoltage = 11_000 / Math.sqrt(3)

describe('guards class 0 instead of class 1', () => {
  const legSlip = (site: Site): Slip => {
    const slips = slipsOf(atWork(site), 'pw', 'clash-b', declaredCorner, sharedCache)
    const found = slips.find((it): it is Slip => 'on' in it && it.on.kind === 'lv-wire' && it.on.id === 'lv-n')
    if (found === undefined) throw new Error('no leg slip onto the neutral')
    return found
  }

  it('the pole worker’s leg slip moves from holds to conducts: 5.6 kV is under 7.5 kV of use, over 5 kV of proof', () => {
    const one = legSlip(changed(clean, guardsOn('L-51', 'L-52')))
    expect(one.exposure.layer).toMatchObject({ item: 'L-52', did: 'held' })
    expect(one.exposure.bodyCurrent).toBeLessThan(0.001)
    const zero = legSlip(changed(clean, guardsOn('L-61', 'L-62')))
    expect(zero.exposure.layer).toMatchObject({ item: 'L-62', did: 'failed' })
    expect(zero.exposure.zone).toBe('AC-4.3')
  })

  it('the graded contacts do not change: nobody touches the low voltage', () => {
    const one = worker(changed(clean, guardsOn('L-51', 'L-52')))
    const zero = worker(changed(clean, guardsOn('L-61', 'L-62')))
    expect(zero).toEqual(one)
  })
})

describe('the live low-voltage neutral bonded in', () => {
  const bonded = changed(clean, clampOn('B-05', 'metal', 'lv-n'), clampOn('B-05', 'line', 'conductor-b'))

  it('lower rise here, several times the current, quicker trip: 5 Ω beside 81 Ω', () => {
    const before = storyOf(atWork(clean))
    const after = storyOf(atWork(bonded))
    // 81 || 5.1 Ω is 4.8 Ω against 6.35 + 0.5 + line: 4.8/(4.8 + 9.7 and 4.5 reactive) of 6351 V
    expect(after.siteRise).toBeLessThan(0.5 * before.siteRise)
    expect(after.liveCurrent).toBeGreaterThan(4 * before.liveCurrent)
    expect(after.duration).toBeLessThan(0.4 * before.duration)
  })

  it('and the rise is exported to the far earth of the neutral, where there was almost none', () => {
    const near = voltages(atWork(clean))('lv/star')
    const far = voltages(atWork(bonded))('lv/star')
    expect(near).toBeLessThan(100)
    expect(far).toBeGreaterThan(1_500)
    expect(far / storyOf(atWork(bonded)).siteRise).toBeGreaterThan(0.95)
  })
})

describe('cover on, the holed boot missed (20 kΩ wet)', () => {
  it('the pole worker’s current goes from half a milliampere to 4.7 kV over 20 kΩ and 1 kΩ of bolt: above c2', () => {
    const holed = worker(changed(clean, defect('BT-42', 'nail-hole-left')))
    expect(worker(clean).bodyCurrent).toBeLessThan(0.0006)
    expect(holed.path).toBe('hand-feet')
    expect(holed.bodyCurrent).toBeGreaterThan(4_680 / (20_000 + 1_000 + 1_800))
    expect(holed.bodyCurrent).toBeLessThan(4_680 / (20_000 + 1_000))
    expect(['AC-4.2', 'AC-4.3']).toContain(holed.zone)
  })
})

describe('bond off, cover on', () => {
  it('the pole worker stays below: the cover bears it; its voltage rises, the pole being lower without the bond', () => {
    const off = worker(earthedSite(coverOn()))
    const on = worker(clean)
    expect(off.bodyCurrent / off.limit).toBeLessThan(1)
    expect(off.layer).toMatchObject({ item: 'C-15', did: 'held' })
    expect(off.layer!.voltage).toBeGreaterThan(on.layer!.voltage)
  })

  it('a hand on the arm then is not: the arm is no longer at the line’s potential', () => {
    const arm = touching('pw', 'right-hand', { kind: 'metalwork', id: 'arm' })
    const off = exposureOf(storyOf(momentOf(earthedSite(coverOn()), leftHandOnB, arm)), 'pw')
    const on = exposureOf(storyOf(momentOf(clean, leftHandOnB, arm)), 'pw')
    expect(on.zone).toBe('AC-1')
    expect(off.zone).toBe('AC-4.3')
  })
})

describe('two clamps of three', () => {
  const two = changed(clean, without('E-07', '3'))
  const handsOnBC = (site: Site) =>
    momentOf(site, leftHandOnB, touching('pw', 'right-hand', { kind: 'conductor', id: 'conductor-c' }))

  it('a clash on the phase left off finds no earth: full voltage from C to B, never cleared, lethal to who spans them', () => {
    const three = exposureOf(storyOf(handsOnBC(clean), 'clash-c'), 'pw')
    const left = storyOf(handsOnBC(two), 'clash-c')
    expect(three.zone).toBe('AC-1')
    expect(left.clearedBy).toBe('nothing')
    expect(exposureOf(left, 'pw').path).toBe('hand-hand')
    expect(exposureOf(left, 'pw').prospectiveVoltage).toBeCloseTo(phaseVoltage, -1)
    expect(exposureOf(left, 'pw').zone).toBe('AC-4.3')
  })

  it('a clash on a phase that has its clamp changes little', () => {
    expect(storyOf(atWork(two), 'clash-b').siteRise).toBeCloseTo(storyOf(atWork(clean), 'clash-b').siteRise, 0)
  })
})

describe('relay ten times slower', () => {
  const slow = changed(
    clean,
    inScenario(({ feeders }) => ({
      feeders: feeders.map((it) => ({
        ...it,
        earthFault: { ...it.earthFault, multiplier: 10 * it.earthFault.multiplier },
      })),
    })),
  )

  it('same volts and amperes, ten times the relay’s time: the bystander’s tolerable pace falls by √ to the 5 s value', () => {
    const before = storyOf(atWork(clean))
    const after = storyOf(atWork(slow))
    expect(after.siteRise).toBe(before.siteRise)
    expect(after.duration - 0.06).toBeCloseTo(10 * (before.duration - 0.06), 3)
    const pace = exposureOf(after, 'bystander', 'bystander-pace')
    expect(pace.judged).toBeCloseTo(exposureOf(before, 'bystander', 'bystander-pace').judged, 9)
    expect(pace.limit).toBeCloseTo((1_600 * 0.116) / Math.sqrt(5), 6)
    expect(pace.beyondRange).toBe(true)
  })

  it('crew: the same current against a lower line b', () => {
    expect(worker(slow).bodyCurrent).toBe(worker(clean).bodyCurrent)
    expect(worker(slow).limit).toBeLessThan(worker(clean).limit)
  })
})

describe('concrete of 30 kΩ·m instead of 200 Ω·m', () => {
  const dry: Change = inScenario(({ pole }) => ({ pole: { ...pole, concreteResistivity: 30_000 } }))
  const bare = earthedSite()

  it('bare thigh: spreading 200 Ω becomes 30 kΩ, amperes become 0.16 A, still above', () => {
    const damp = worker(bare)
    const now = worker(changed(bare, dry))
    expect(damp.bodyCurrent).toBeGreaterThan(5)
    // 4931 V over 30 kΩ of slab, half a body, and the boots' small share beside it
    expect(now.bodyCurrent).toBeCloseTo(4_931 / (30_000 + 1_000), 2)
    expect(now.judged / now.limit).toBeGreaterThan(1)
  })

  it('the rod’s part does not care, the butt’s falls: a little less current with the bond on', () => {
    expect(storyOf(atWork(changed(clean, dry))).liveCurrent).toBeLessThan(storyOf(atWork(clean)).liveCurrent)
    expect(storyOf(atWork(changed(clean, dry))).liveCurrent).toBeGreaterThan(
      storyOf(atWork(earthedSite(coverOn()))).liveCurrent,
    )
  })
})

describe('soil of 1000 Ω·m', () => {
  const poor: Change = inScenario(() => ({ soil: { layers: [{ resistivity: 1_000 }] } }))

  it('higher rise, less current, no trip: 510 Ω of rod takes 12 A, below the relay’s 40 A', () => {
    const before = storyOf(atWork(earthedSite()))
    const after = storyOf(atWork(earthedSite(poor)))
    expect(after.siteRise).toBeGreaterThan(before.siteRise)
    expect(after.siteRise / after.liveCurrent).toBeCloseTo(509, -1)
    expect(after.clearedBy).toBe('nothing')
  })

  it('the bystander’s tolerable pace grows with the soil under the feet, 7000 Ω at the 5 s value', () => {
    const pace = exposureOf(storyOf(atWork(earthedSite(poor))), 'bystander', 'bystander-pace')
    expect(pace.limit).toBeCloseTo((7_000 * 0.116) / Math.sqrt(5), 6)
  })
})

describe('an earth of 10 Ω at the isolation point', () => {
  const earthed: Change = (site) => ({
    ...site,
    switches: {
      ...site.switches,
      'switch-27': { ...site.switches['switch-27']!, earth: { item: 'E-21', resistance: 10 } },
    },
  })

  it('several times the current, about half the phase voltage, a much quicker trip', () => {
    const before = storyOf(atWork(clean))
    const after = storyOf(atWork(changed(clean, earthed)))
    // 75.9 || (10 + 0.42 of 0.64 km) is 9.2 Ω: 6351/|9.2 + 9.7 + j5| = 325 A, 9.2 × 325 = 3.0 kV
    expect(after.liveCurrent).toBeCloseTo(325, -1)
    expect(after.liveCurrent).toBeGreaterThan(4 * before.liveCurrent)
    expect(after.siteRise / phaseVoltage).toBeCloseTo(0.47, 1)
    // standard inverse at 8.2 times pickup: 0.028/(8.2^0.02 - 1) + 0.06 = 0.71 s
    expect(after.duration).toBeCloseTo(0.71, 1)
  })
})

describe('blade B left closed, nothing injected', () => {
  const hung = bladesClosed('switch-27', 'B')
  const arm = touching('pw', 'right-hand', { kind: 'metalwork', id: 'arm' })

  it('a hand on B and a bare thigh on the pole: lethal at first contact, by the network itself', () => {
    const story = storyOf(atWork(isolatedSite(workerAloft, othersBooted, hung)), 'none')
    const found = exposureOf(story, 'pw')
    expect(found.path).toBe('hand-thigh')
    expect(found.zone).toBe('AC-4.3')
    // 6351 V over half a body (288 Ω), 200 Ω of concrete and about 50 Ω of butt, in parallel the boots
    expect(found.bodyCurrent).toBeGreaterThan(10)
    expect(story.clearedBy).toBe('nothing')
  })

  it('cover and sound boots, one hand: about half a milliampere; the other hand on the arm: lethal', () => {
    const covered = isolatedSite(workerAloft, othersBooted, coverOn(), hung)
    const one = exposureOf(storyOf(atWork(covered), 'none'), 'pw')
    expect(one.bodyCurrent).toBeGreaterThan(0.0004)
    expect(one.bodyCurrent).toBeLessThan(0.0007)
    const two = exposureOf(storyOf(momentOf(covered, leftHandOnB, arm), 'none'), 'pw')
    expect(two.path).toBe('hand-metalwork')
    expect(two.zone).toBe('AC-4.3')
  })

  it('with the earths on it is a fault that its own feeder clears', () => {
    const story = storyOf(atWork(changed(clean, hung)), 'none')
    expect(story.clearedBy).toBe('earth-fault')
    expect(story.liveCurrent).toBeGreaterThan(60)
  })
})

describe('the person in charge without boots', () => {
  const pacing = (y: number) => {
    const site = changed(clean, person('pic', { wears: [] }), standsAt('pic', 0, y))
    const moment = momentOf(site)
    return {
      site,
      bodies: moment.bodies.map((body) => ({
        ...body,
        contacts: body.contacts.map((it) =>
          it.on.kind === 'ground' ? { ...it, on: { ...it.on, stance: 'pace' as const } } : it,
        ),
      })),
    }
  }

  it('6 m out a pace is above line b in every corner, 12 m out below it in every corner', () => {
    for (const corner of cornersOf(clean.scenario)) {
      const near = exposureOf(storyOf(pacing(6), 'clash-b', corner), 'pic')
      expect(near.path, corner.id).toBe('pace')
      expect(near.judged / near.limit, corner.id).toBeGreaterThan(1)
      const far = exposureOf(storyOf(pacing(12), 'clash-b', corner), 'pic')
      expect(far.judged / far.limit, corner.id).toBeLessThan(1)
    }
  })
})
