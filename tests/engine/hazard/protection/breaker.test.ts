/** A breaker in whole stories: travel between shots, sensitive earth fault, shots by themselves, a coil-earthed network. */
import { describe, expect, it } from 'vitest'
import { declaredCorner } from '../../../../src/engine/hazard/corner'
import { groundHazard } from '../../../../src/engine/hazard/ground/groundHazard'
import { advance, freshBreaker, nextOf, type Breaker } from '../../../../src/engine/hazard/protection/breaker'
import type { Feeder } from '../../../../src/engine/site/scenario'
import { crossingFeeder, feedersWith, inverse, line, phaseVoltage, reclosing } from '../protectionSites'
import {
  bondOn,
  changed,
  earthedSite,
  exposureOf,
  inScenario,
  leftHandOnB,
  momentOf,
  sharedCache,
  storyOf,
} from '../sites'

describe('travel between two shots', () => {
  const currents = (residual: number, phase = residual) => ({ residual, phase })
  /** First shot on overcurrent, 1 500 A in a phase and 70 A to earth; then 70 A alone. Seconds of the second shot. */
  function secondShot(change: Partial<Feeder>): number {
    let breaker: Breaker = freshBreaker({ ...crossingFeeder, ...change }, false)
    let now = 0
    const until = (at: number, of = currents(70, 1_500)): void => {
      breaker = advance(breaker, now, at, of)
      now = at
    }
    until(nextOf(breaker, now, currents(70, 1_500)))
    expect(breaker.operated).toBe('overcurrent')
    until(breaker.opensAt!)
    until(breaker.recloseAt!, currents(0))
    expect(breaker.isClosed).toBe(true)
    return nextOf(breaker, now, currents(70)) - now
  }
  const first = inverse(400, 0.1, 1_500) + crossingFeeder.breakerTime

  it('starts from rest where the relay loses it at once', () => {
    expect(secondShot({})).toBeCloseTo(inverse(40, 0.2, 70), 5)
  })

  it('goes on where the relay keeps it: Σ dt/t(I) = 1 over both shots', () => {
    expect(secondShot({ relayReset: 'kept' })).toBeCloseTo(inverse(40, 0.2, 70) - first, 5)
  })

  it('falls back by the curve of a disc: 5 s of 21.6 s a dial (IEEE C37.112)', () => {
    // very inverse at 70/40 of pickup, dial 2: 2 (19.61/(1.75² − 1) + 0.491) = 20.0 s
    const dial = 2
    const whole = dial * (19.61 / (1.75 ** 2 - 1) + 0.491)
    const relay = { curve: 'ieee-very-inverse', pickup: 40, multiplier: dial } as const
    const shot = secondShot({ relayReset: 'by-curve', earthFault: relay })
    expect(shot).toBeCloseTo(whole * (1 - Math.max(0, first / whole - 5 / (21.6 * dial))), 5)
    const quick = secondShot({ relayReset: 'by-curve', earthFault: relay, recloseDeadTimes: [0.3] })
    expect(quick).toBeCloseTo(whole * (1 - (first / whole - 0.3 / (21.6 * dial))), 5)
    expect(quick).toBeLessThan(whole)
  })

  it('a disc that has operated is still near its contact after a short dead time', () => {
    const relay = { curve: 'ieee-very-inverse', pickup: 40, multiplier: 1 } as const
    const at400 = 19.61 / 99 + 0.491
    let breaker = freshBreaker({ ...crossingFeeder, earthFault: relay, relayReset: 'by-curve' }, false)
    breaker = advance(breaker, 0, nextOf(breaker, 0, currents(400)), currents(400))
    expect(breaker.operated).toBe('earth-fault')
    const opened = breaker.opensAt!
    breaker = advance(breaker, nextOf(freshBreaker(breaker.feeder, false), 0, currents(400)), opened, currents(400))
    const closed = breaker.recloseAt!
    breaker = advance(breaker, opened, closed, currents(0))
    expect(nextOf(breaker, closed, currents(400)) - closed).toBeCloseTo((at400 * 5) / 21.6, 5)
  })
})

describe('sensitive earth fault', () => {
  const dry = inScenario(() => ({ soil: { layers: [{ resistivity: 1300 }] } }))
  const sensitive = feedersWith({ sensitiveEarthFault: { curve: 'definite-time', pickup: 4, multiplier: 5 } })

  it('takes off 8.9 A that the earth-fault relay never sees: 5 s and the breaker’s 60 ms', () => {
    expect(line(earthedSite(dry)).clearedBy).toBe('nothing')
    const story = line(earthedSite(dry, sensitive))
    expect(story).toMatchObject({ cleared: true, clearedBy: 'sensitive-earth-fault' })
    expect(story.duration).toBeCloseTo(5.06, 6)
  })
})

describe('D16 reclose: each shot a shock of its own', () => {
  const site = changed(earthedSite(bondOn), reclosing, feedersWith({ recloseDeadTimes: [0.5, 15] }))

  it('three shots, listed with their current, and none before the dead time is over', () => {
    const { shots, liveCurrent, duration } = line(site)
    expect(shots).toHaveLength(3)
    for (const shot of shots) {
      expect(shot.current / liveCurrent).toBeCloseTo(1, 3)
      expect((shot.to - shot.from) / duration).toBeCloseTo(1, 3)
    }
    expect(shots[1]!.from - shots[0]!.to).toBeCloseTo(0.5, 6)
    expect(shots[2]!.from - shots[1]!.to).toBeCloseTo(15, 6)
  })

  it('who is in it has three shocks: judged by the longest, all their time beside it', () => {
    const story = storyOf(momentOf(site, leftHandOnB))
    expect(story.shots).toHaveLength(3)
    const { shots, duration } = exposureOf(story, 'pw')
    expect(shots.count).toBe(3)
    expect(shots.longest).toBeCloseTo(duration, 2)
    expect(shots.total).toBeCloseTo(3 * duration, 1)
  })
})

describe('fact 9: a coil-earthed network', () => {
  /** 30 A of capacitive current, tuned exactly; losses of 635 Ω at the star point leave 10 A. */
  const coil: Partial<Feeder> = {
    neutral: { kind: 'arc-suppression-coil', tuning: 1, lossResistance: 635 },
    networkCapacitance: 30 / (3 * 2 * Math.PI * 50 * phaseVoltage),
  }
  const site = (change: Partial<Feeder> = {}) =>
    changed(
      earthedSite(feedersWith({ ...coil, ...change })),
      inScenario(() => ({ horizon: 600 })),
    )

  it('feeds 5 to 20 A for as long as it is let: current times rod on the site, nothing clears it', () => {
    const story = storyOf(momentOf(site(), leftHandOnB))
    expect(story.liveCurrent / (phaseVoltage / (635 + 81.2))).toBeCloseTo(1, 1)
    expect(story.siteRise / (story.liveCurrent * 81.2)).toBeCloseTo(1, 1)
    expect(story.siteRise).toBeGreaterThan(500)
    expect(story).toMatchObject({ clearedBy: 'nothing', duration: 600 })
    const worker = exposureOf(story, 'pw')
    expect(worker).toMatchObject({ cleared: false, duration: 600, zone: 'AC-4.3' })
    const pace = exposureOf(story, 'bystander', 'bystander-pace')
    expect(pace).toMatchObject({ duration: 600, beyondRange: true, cleared: false })
    expect(groundHazard(momentOf(site()), 'clash-b', declaredCorner, { cache: sharedCache })).toMatchObject({
      cleared: false,
      beyondRange: true,
    })
  })

  it('a sensitive relay ends it, where one is in service', () => {
    const relay = { curve: 'definite-time', pickup: 3, multiplier: 10 } as const
    expect(line(site({ sensitiveEarthFault: relay }))).toMatchObject({ clearedBy: 'sensitive-earth-fault' })
  })
})
