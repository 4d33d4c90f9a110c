// The ground of the pinned site, and touch by node: what a thing carries less what the soil at the feet carries.

import { describe, expect, it } from 'vitest'
import { declaredCorner } from '../../../../src/engine/hazard/corner'
import { groundHazard, type GroundHazard } from '../../../../src/engine/hazard/ground/groundHazard'
import { worstTouch } from '../../../../src/engine/hazard/ground/touchVoltage'
import { lineOf } from '../../../../src/engine/hazard/liven'
import { isInReach } from '../../../../src/engine/hazard/touchable'
import { complex, magnitude } from '../../../../src/engine/math/complex'
import { isUnsolvable } from '../../../../src/engine/physics/network'
import { solveElectrodes } from '../../../../src/engine/physics/soil'
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
} from '../sites'
import { discAt, pointSurface } from './pointSources'

type Site = ReturnType<typeof earthedSite>

function hazardOf(site: Site): GroundHazard {
  const found = groundHazard(momentOf(site), 'clash-b', declaredCorner, { cache: sharedCache })
  if (isUnsolvable(found)) throw new Error(found.reason)
  return found
}

const distanceOf = (hazard: GroundHazard, node: string) => hazard.safeDistances.find((it) => it.node === node)!.distance

describe('the pinned site: 81 Ω rod, 70 A, 2.5 s, a pace at 3 m 161 V against 118 V', () => {
  const site = earthedSite(barrierAt(circleRound({ x: -1.75, y: 0 }, 8)))

  it('so 3 m are too near and the safe distance is a little more: 161 · 3 · 4/r(r + 1) = 116 at 3.7 m', () => {
    const hazard = hazardOf(site)
    expect(hazard.duration).toBeCloseTo(2.56, 1)
    expect(hazard.tolerableStep).toBeCloseTo((0.116 * 1600) / Math.sqrt(hazard.duration), 6)
    expect(distanceOf(hazard, 'rod/R-1')).toBeGreaterThan(3.5)
    expect(distanceOf(hazard, 'rod/R-1')).toBeLessThan(4)
    expect(distanceOf(hazard, 'stay-lower')).toBe(0)
    expect(distanceOf(hazard, 'lv/star')).toBe(0)
    expect(hazard.barrier.isEnclosing).toBe(true)
  })

  it('the worst pace along the barrier is the one that the bystander takes', () => {
    const pace = exposureOf(storyOf(momentOf(site)), 'bystander', 'bystander-pace')
    expect(hazardOf(site).barrier.worstAlong!.voltage / pace.judged).toBeCloseTo(1, 2)
  })

  it('the barrier at 3 m of the rod lets the zone stick out, as the bystander’s verdict says', () => {
    const close = earthedSite(barrierAt(circleRound(rodPlace, 3)))
    const hazard = hazardOf(close)
    const pace = exposureOf(storyOf(momentOf(close)), 'bystander', 'bystander-pace')
    expect(hazard.barrier.isEnclosing).toBe(false)
    expect(pace.judged).toBeGreaterThan(pace.limit)
  })

  it('a bonded pole with low fixings is an electrode too: a distance of its own, and a barrier round the rod is not enough', () => {
    const low = inScenario(({ pole }) => ({ pole: { ...pole, armFixing: 10 } }))
    const round = barrierAt(circleRound(rodPlace, 5))
    const bonded = hazardOf(earthedSite(bondOn, low, round))
    const unbonded = hazardOf(earthedSite(low, round))
    expect(distanceOf(bonded, 'cage')).toBeGreaterThan(2)
    expect(distanceOf(unbonded, 'cage')).toBe(0)
    expect(bonded.barrier.isEnclosing).toBe(false)
    expect(unbonded.barrier.isEnclosing).toBe(true)
  })

  it('no barrier at all: everything sticks out', () => {
    const { barrier, contour } = hazardOf(changed(earthedSite(), barrierAt(null)))
    expect(barrier.sticksOut).toHaveLength(contour.flat().length)
  })

  it('the same from the same site', () => {
    expect(hazardOf(site)).toEqual(hazardOf(earthedSite(barrierAt(circleRound({ x: -1.75, y: 0 }, 8)))))
  })
})

describe('a hand on a thing', () => {
  const surface = pointSurface([{ x: 0, y: 0, strength: 500 }])

  it('on the rod: 5000 V less 500/1.01 at arm’s length', () => {
    const touch = worstTouch(surface, { shape: discAt('rod', { x: 0, y: 0 }), voltage: complex(5000) })
    expect(touch.voltage).toBeCloseTo(5000 - 500 / 1.01, 6)
    expect(Math.hypot(touch.feet.x, touch.feet.y)).toBeCloseTo(1.01, 6)
  })

  it('on something that brings nothing with it: the soil under the feet, most where that is highest', () => {
    // a fence along y = 3 that is earthed far away: 0 V, and 2.9 m off the rod the soil is at 500/2 at arm’s length
    const fence = {
      id: 'fence',
      kind: 'wire' as const,
      radius: 0.02,
      points: [
        { x: -10, y: 3, depth: 0.5 },
        { x: 10, y: 3, depth: 0.5 },
      ],
    }
    const touch = worstTouch(surface, { shape: fence, voltage: complex(0) })
    expect(touch.voltage).toBeCloseTo(500 / 1.98, 1)
    expect(touch.feet.y).toBeCloseTo(1.98, 6)
    expect(Math.abs(touch.feet.x)).toBeLessThan(0.2)
  })

  it('a fence that begins beside the rod carries its voltage away: transferred to where the soil is low', () => {
    // posts 4 m apart as one electrode, driven by nothing, the first 0.5 m from a rod at 5 kV (100 Ω·m)
    const posts = Array.from({ length: 6 }, (_, i) => {
      return { kind: 'rod' as const, at: { x: 0.5 + 4 * i, y: 0 }, top: 0, length: 0.5, radius: 0.03 }
    })
    const fence = { id: 'fence', kind: 'joined' as const, parts: posts }
    const rod = { id: 'rod', kind: 'rod' as const, at: { x: 0, y: 0 }, top: 0, length: 1.8, radius: 0.008 }
    const system = solveElectrodes({ layers: [{ resistivity: 100 }] }, [rod, fence])
    const currents = [complex(5000 / system.resistance[0]![0]!), complex(0)]
    const fenceVoltage = magnitude(currents[0]!) * system.resistance[1]![0]!
    const driven = system.drivenBy(currents, 60)
    const voltage = complex(fenceVoltage)
    // the last post stands 20.5 m off, where the soil by itself is at ρI/2πr of the rod's 96 A or so
    const farEnd = worstTouch(driven, { shape: discAt('post', { x: 20.5, y: 0 }, 0.03), voltage })
    const soil = (100 * magnitude(currents[0]!)) / (2 * Math.PI * 21.5)
    // the far posts give out what the near one takes up, which lifts the soil about them a little more
    expect(farEnd.voltage).toBeLessThan(fenceVoltage - soil)
    expect(farEnd.voltage).toBeGreaterThan(0.7 * (fenceVoltage - soil))
    expect(farEnd.voltage).toBeGreaterThan(1.5 * soil)
    // beside the rod it is the other way round: the fence is lower than the soil, and more lies between
    const whole = worstTouch(driven, { shape: fence, voltage })
    expect(whole.feet.x).toBeLessThan(1)
    expect(whole.voltage).toBeGreaterThan(farEnd.voltage)
  })

  it('reaches along the whole of a thing that is more than round', () => {
    const shape = {
      id: 'fence',
      kind: 'wire' as const,
      radius: 0.02,
      points: [
        { x: 0, y: 0, depth: 0.3 },
        { x: 10, y: 0, depth: 0.3 },
      ],
    }
    const thing = { node: 'fence', at: { x: 5, y: 0 }, radius: 0, shape, series: 0 }
    expect(isInReach(thing, { x: 9, y: 1 })).toBe(true)
    expect(isInReach(thing, { x: 9, y: 1.1 })).toBe(false)
    expect(isInReach(thing, { x: 11.5, y: 0 })).toBe(false)
  })
})

it('each touch of the site is the node’s voltage less the ground’s, the stay’s included', () => {
  const site = earthedSite(bondOn)
  const { touches } = hazardOf(site)
  const line = lineOf(site, 'clash-b', declaredCorner, sharedCache)
  if (isUnsolvable(line)) throw new Error(line.reason)
  const { view } = line.phases[0]!
  for (const { node, voltage, feet, thingVoltage } of touches) {
    const soil = view.ground.system.potentialAt(feet, view.electrodeCurrents)
    const thing = view.voltage(node)
    expect(thingVoltage).toBeCloseTo(magnitude(thing), 9)
    expect(Math.abs(voltage - Math.hypot(thing.re - soil.re, thing.im - soil.im))).toBeLessThan(1e-3 * thingVoltage)
  }
  expect(touches.map(({ node }) => node)).toEqual(expect.arrayContaining(['rod/R-1', 'stay-lower', 'cage']))
})
