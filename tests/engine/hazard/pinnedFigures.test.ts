/**
 * The figures that decide on marrow-bend, from its order: earths on, no bond yet, no earths elsewhere. Nothing here is
 * told to the engine: they come out of soil, network, relay and body formulas. Each has its hand calculation.
 */
import { describe, expect, it } from 'vitest'
import { cornersOf } from '../../../src/engine/hazard/corner'
import {
  barrierAt,
  bondOn,
  circleRound,
  earthedSite,
  exposureOf,
  leftHandOnB,
  momentOf,
  rodPlace,
  storyOf,
} from './sites'

const phaseVoltage = 11_000 / Math.sqrt(3)
const tooSmall = barrierAt(circleRound(rodPlace, 3))

/** IEC 60255-151 standard inverse, 40 A, multiplier 0.2, and the breaker's 60 ms. */
const tripTime = (current: number): number => (0.14 * 0.2) / ((current / 40) ** 0.02 - 1) + 0.06
/** IEEE 80, 50 kg, 100 Ω·m under the feet. */
const tolerableStep = (seconds: number): number => ((1000 + 6 * 100) * 0.116) / Math.sqrt(seconds)

const relative = (got: number, want: number): number => Math.abs(got / want - 1)

describe('earths on, bond not yet on', () => {
  const story = storyOf(momentOf(earthedSite(tooSmall), leftHandOnB))

  it('rod 81 Ω: between the uniform soils of both layers, near the share of its length in each', () => {
    const rod = story.siteRise / story.liveCurrent
    // Dwight: ρ/2πL (ln(8L/d) - 1) is 51 Ω in 100 Ω·m and 154 Ω in 300 Ω·m; 1.0 m of 1.8 m is in the upper layer
    const dwight = (resistivity: number) => (resistivity / (2 * Math.PI * 1.8)) * (Math.log((8 * 1.8) / 0.016) - 1)
    expect(rod).toBeGreaterThan(dwight(100))
    expect(rod).toBeLessThan(dwight(300))
    const conductances = 1 / 1.8 / dwight(100) + 0.8 / 1.8 / dwight(300)
    expect(relative(rod, 1 / conductances)).toBeLessThan(0.15)
    expect(relative(rod, 81)).toBeLessThan(0.01)
  })

  it('70 A: phase voltage over rod, neutral resistor, station earth and 4 km of line with earth return', () => {
    // per km: 0.6 Ω wire and ωμ0/8 = 0.049 Ω of earth; reactance about 0.8 Ω/km with the source's 1.2 Ω
    const resistance = 81.2 + 6.35 + 0.5 + 0.12 + 4.04 * (0.6 + 0.049) + 0.1
    const reactance = 1.2 + 4.04 * 0.82
    const current = phaseVoltage / Math.sqrt(resistance ** 2 + reactance ** 2)
    expect(relative(story.liveCurrent, current)).toBeLessThan(0.005)
    expect(relative(story.liveCurrent, 70)).toBeLessThan(0.01)
  })

  it('site rise 5.7 kV, about 90 % of phase voltage', () => {
    expect(relative(story.siteRise, 5_700)).toBeLessThan(0.01)
    expect(story.siteRise / phaseVoltage).toBeCloseTo(0.89, 2)
  })

  it('trip after about 2.5 s by the earth-fault relay', () => {
    expect(story.clearedBy).toBe('earth-fault')
    expect(story.duration).toBeCloseTo(tripTime(story.liveCurrent), 2)
    expect(relative(story.duration, 2.5)).toBeLessThan(0.03)
  })

  it('161 V a pace at the 3 m barrier against about 118 V tolerable', () => {
    const pace = exposureOf(story, 'bystander', 'bystander-pace')
    expect(relative(pace.judged, 161)).toBeLessThan(0.01)
    expect(pace.limit).toBeCloseTo(tolerableStep(story.duration), 6)
    expect(relative(pace.limit, 118)).toBeLessThan(0.02)
    expect(pace.judged).toBeGreaterThan(pace.limit)
  })
})

describe('with the bond on', () => {
  const story = storyOf(momentOf(earthedSite(bondOn, tooSmall), leftHandOnB))

  it('74 A, 2.3 s, 123 V tolerable: 1 kΩ of arm bolt and the butt in parallel to the rod', () => {
    // 81.2 Ω beside 1000 Ω + butt (about 50 Ω), the two soils coupled by a tenth: 75.9 Ω
    expect(relative(story.siteRise / story.liveCurrent, 1 / (1 / 81.2 + 1 / 1050))).toBeLessThan(0.02)
    expect(relative(story.liveCurrent, 74)).toBeLessThan(0.01)
    expect(relative(story.duration, 2.3)).toBeLessThan(0.03)
    expect(relative(exposureOf(story, 'bystander', 'bystander-pace').limit, 123)).toBeLessThan(0.02)
  })
})

describe('the clean barrier, 6 m from rod and pole', () => {
  it('keeps every pace below the tolerable step in every corner', () => {
    const site = earthedSite(bondOn)
    const corners = cornersOf(site.scenario)
    expect(corners.length).toBe(9)
    for (const corner of corners) {
      const pace = exposureOf(storyOf(momentOf(site), 'clash-b', corner), 'bystander', 'bystander-pace')
      expect(pace.judged / pace.limit, corner.id).toBeLessThan(1)
    }
  })
})
