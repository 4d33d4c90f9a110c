/** The public at the barrier: where it walks, which way it steps, what it is judged by. */
import { describe, expect, it } from 'vitest'
import { declaredCorner } from '../../../src/engine/hazard/corner'
import { lineOf } from '../../../src/engine/hazard/liven'
import { outlinePoints } from '../../../src/engine/hazard/outline'
import { isPublic, publicWalk } from '../../../src/engine/hazard/publicWalk'
import { steepestDirection } from '../../../src/engine/hazard/steepest'
import { complex, magnitude, ZERO } from '../../../src/engine/math/complex'
import { isUnsolvable } from '../../../src/engine/physics/network'
import { distance } from '../../../src/engine/site/place'
import {
  barrierAt,
  bondOn,
  changed,
  circleRound,
  earthedSite,
  exposureOf,
  inScenario,
  momentOf,
  rodPlace,
  sharedCache,
  storyOf,
} from './sites'

function groundOf(site: ReturnType<typeof earthedSite>) {
  const line = lineOf(site, 'clash-b', declaredCorner, sharedCache)
  if (isUnsolvable(line)) throw new Error(line.reason)
  return line.phases[0]!.view
}

const pace = (site: ReturnType<typeof earthedSite>) =>
  exposureOf(storyOf(momentOf(site)), 'bystander', 'bystander-pace')

describe('the walk', () => {
  it('samples an outline at most 0.25 m apart and closes it', () => {
    const square = [
      { x: 0, y: 0 },
      { x: 1, y: 0 },
      { x: 1, y: 1 },
      { x: 0, y: 1 },
    ]
    const points = outlinePoints(square, 0.25)
    expect(points.length).toBe(16)
    points.forEach((at, i) => expect(distance(at, points[(i + 1) % 16]!)).toBeCloseTo(0.25, 12))
  })

  it('inside the barrier, or nearer to an electrode than the public comes, is no place of it', () => {
    const site = earthedSite()
    const { ground } = groundOf(site)
    expect(isPublic(site.scenario, ground, site.barrier, { x: 0, y: 3 })).toBe(false)
    expect(isPublic(site.scenario, ground, site.barrier, { x: 0, y: 7 })).toBe(true)
    expect(isPublic(site.scenario, ground, null, { x: rodPlace.x, y: 0.9 })).toBe(false)
    expect(isPublic(site.scenario, ground, null, { x: rodPlace.x, y: 1.1 })).toBe(true)
    // the neutral's earth 60 m away is no electrode of the site
    expect(isPublic(site.scenario, ground, null, { x: 60, y: 0.1 })).toBe(true)
  })

  it('an electrode outside the barrier is walked round too', () => {
    const site = earthedSite(barrierAt(circleRound({ x: 0, y: 0 }, 2)))
    const near = publicWalk(site.scenario, groundOf(site).ground, site.barrier).filter(
      (it) => distance(it.at, rodPlace) < 1.05,
    )
    expect(near.length).toBeGreaterThan(10)
  })
})

describe('a pace', () => {
  it('is taken down the steepest line, by hand V(r) - V(r + 1) around the only rod that carries', () => {
    const site = earthedSite(barrierAt(circleRound(rodPlace, 3)))
    const { ground, electrodeCurrents } = groundOf(site)
    const volt = (r: number) => magnitude(ground.system.potentialAt({ x: rodPlace.x - r, y: 0 }, electrodeCurrents))
    // away from the pole and its floating cage the field is the rod's own
    expect(pace(site).judged).toBeCloseTo(volt(3) - volt(4), -1)
  })

  it('grows as the barrier comes nearer: 8, 6, 4, 3, 2 m', () => {
    const volts = [8, 6, 4, 3, 2].map((radius) => pace(earthedSite(barrierAt(circleRound(rodPlace, radius)))).judged)
    for (const [i, volt] of volts.slice(1).entries()) expect(volt).toBeGreaterThan(volts[i]!)
  })

  it('without a barrier the public comes to 1 m of an electrode: far above the tolerable step', () => {
    const bare = pace(changed(earthedSite(), barrierAt(null)))
    expect(bare.judged / bare.limit).toBeGreaterThan(3)
    expect(bare.judged).toBeGreaterThan(pace(earthedSite(barrierAt(circleRound(rodPlace, 2)))).judged)
  })

  it('never ends on an electrode: a barrier round the pole alone leaves the rod’s pace at the open 1 m figure', () => {
    const open = pace(changed(earthedSite(), barrierAt(null)))
    const wrongPlace = pace(earthedSite(barrierAt(circleRound({ x: 0, y: 0 }, 1.5))))
    expect(wrongPlace.judged).toBeLessThanOrEqual(open.judged + 1e-9)
  })

  it('a bonded pole is an electrode too: a barrier round the rod alone leaves a pace at the pole', () => {
    const low = inScenario(({ pole }) => ({ pole: { ...pole, armFixing: 10 } }))
    const round = barrierAt(circleRound(rodPlace, 3))
    const bonded = pace(earthedSite(bondOn, low, round))
    const unbonded = pace(earthedSite(low, round))
    expect(bonded.judged).toBeGreaterThan(2 * unbonded.judged)
  })

  it('is judged at 50 kg on the surface soil: twice as resistive ground under the feet raises the limit', () => {
    const limit = (upper: number) =>
      pace(
        earthedSite(
          inScenario(() => ({ soil: { layers: [{ resistivity: upper, thickness: 1 }, { resistivity: 300 }] } })),
        ),
      )
    const low = limit(100)
    const high = limit(200)
    // beyond 5 s the formula keeps its 5 s value
    const counted = (seconds: number) => Math.sqrt(Math.min(seconds, 5))
    expect(low.limit * counted(low.duration)).toBeCloseTo(0.116 * 1_600, 6)
    expect(high.limit * counted(high.duration)).toBeCloseTo(0.116 * 2_200, 6)
    expect(high.beyondRange).toBe(high.duration > 5)
  })
})

describe('steepest line', () => {
  it('of a real slope is its own direction', () => {
    const along = steepestDirection({ x: complex(3), y: complex(4) })
    expect(Math.abs(along.x)).toBeCloseTo(0.6, 12)
    expect(Math.abs(along.y)).toBeCloseTo(0.8, 12)
  })

  it('of two slopes out of phase is the long axis of their ellipse', () => {
    const along = steepestDirection({ x: complex(1), y: complex(0, 5) })
    expect(Math.abs(along.y)).toBeCloseTo(1, 12)
  })

  it('of level ground is any: along x', () => {
    expect(steepestDirection({ x: ZERO, y: ZERO })).toEqual({ x: 1, y: 0 })
  })
})

describe('the lower stay', () => {
  it('within an arm’s reach of the barrier is touched and judged by the tolerable touch', () => {
    const touch = exposureOf(storyOf(momentOf(earthedSite(bondOn))), 'bystander', 'bystander-touch')
    expect(touch.limit).toBeCloseTo((0.116 * 1_150) / Math.sqrt(touch.duration), 6)
    expect(touch.judged / touch.limit).toBeLessThan(1)
  })

  it('its insulator bridged, the stay carries the site rise out to its anchor: far above', () => {
    const bridged = inScenario(({ stay }) => ({ stay: { ...stay!, insulatorLeakage: 1, fixing: 1 } }))
    const touch = exposureOf(storyOf(momentOf(earthedSite(bondOn, bridged))), 'bystander', 'bystander-touch')
    expect(touch.judged / touch.limit).toBeGreaterThan(5)
  })
})

describe('a hand on the site itself', () => {
  const open = barrierAt(null)
  const touch = (site: ReturnType<typeof earthedSite>) =>
    storyOf(momentOf(site)).exposures.find((it) => it.path === 'bystander-touch')

  it('no barrier, earths and bond on: a metre from the rod it is the rise less the ground there, some 4 kV', () => {
    const site = changed(earthedSite(bondOn), open)
    const story = storyOf(momentOf(site))
    // the surface a metre from a rod of 1.8 m: V/I = ρ/2πL·asinh(L/r), 100 to 300 Ω·m, is a quarter to a third of 81 Ω
    expect(touch(site)?.judged).toBeGreaterThan(0.65 * story.siteRise)
    expect(touch(site)?.judged).toBeLessThan(0.8 * story.siteRise)
    expect(touch(site)?.judged).toBeCloseTo(4_000, -3)
    expect(touch(site)!.judged / touch(site)!.limit).toBeGreaterThan(20)
  })

  it('hand to both feet: 0.75 of the body and two feet in parallel, so 4 kV drives 6 to 7 A', () => {
    const found = touch(changed(earthedSite(bondOn), open))!
    const ohm = 0.75 * 575 + 313 / 2 + 30
    expect(found.bodyCurrent).toBeGreaterThan(0.85 * (found.judged / ohm))
    expect(found.bodyCurrent).toBeLessThan(found.judged / ohm)
  })

  it('a barrier an arm’s length and a half from everything leaves only what is outside it', () => {
    const wide = barrierAt(circleRound({ x: -1.75, y: -2.75 }, 8))
    expect(touch(earthedSite(bondOn, wide))).toBeUndefined()
  })

  it('a barrier drawn 0.8 m from the rod still lets a hand reach it', () => {
    const close = barrierAt(circleRound({ x: rodPlace.x + 5.2, y: 0 }, 6))
    const site = earthedSite(bondOn, close)
    expect(touch(site)!.judged).toBeGreaterThan(3_500)
  })
})
