// Contours, safe distances and the check of a barrier on ground whose answers are worked out by hand.

import { describe, expect, it } from 'vitest'
import { barrierCheck } from '../../../../src/engine/hazard/ground/barrierCheck'
import { clearBoxes, reachOfPace } from '../../../../src/engine/hazard/ground/clearBoxes'
import { paceFrom } from '../../../../src/engine/hazard/ground/pace'
import { safeDistances } from '../../../../src/engine/hazard/ground/safeDistance'
import { tolerableContour } from '../../../../src/engine/hazard/ground/tolerableContour'
import { complex } from '../../../../src/engine/math/complex'
import { isInside } from '../../../../src/engine/site/place'
import { circleRound } from '../sites'
import { discAt, handRadius, pointSurface } from './pointSources'

const box = (size: number) => ({ from: { x: -size, y: -size }, to: { x: size, y: size } })

/** Positive when the outline runs against the clock. */
const areaOf = (ring: readonly { x: number; y: number }[]) =>
  ring.reduce((sum, at, i) => {
    const next = ring[(i + 1) % ring.length]!
    return sum + (at.x * next.y - next.x * at.y) / 2
  }, 0)

// 100 Ω·m, 70 A: 1114 V·m; a pace at r is 1114/r(r + 1)
const strength = (100 * 70) / (2 * Math.PI)
const one = pointSurface([{ x: 0.1, y: -0.2, strength }])

describe('a pace', () => {
  it('is the difference over one metre outwards: 1114/(3 · 4) = 92.8 V at 3 m', () => {
    const { voltage, far } = paceFrom(one, { x: 3.1, y: -0.2 })
    expect(voltage).toBeCloseTo(strength / 12, 9)
    expect(far.x).toBeCloseTo(4.1, 9)
    expect(far.y).toBeCloseTo(-0.2, 9)
  })
})

describe('the contour', () => {
  it.each([50, 116, 400])('round one point is the circle where 1114/r(r + 1) is %d V', (tolerable) => {
    const [ring, ...others] = tolerableContour(one, tolerable, box(12))
    const radius = handRadius(strength, tolerable)
    expect(others).toEqual([])
    for (const { x, y } of ring!) expect(Math.hypot(x - 0.1, y + 0.2)).toBeCloseTo(radius, 2)
    expect(areaOf(ring!) / (Math.PI * radius * radius)).toBeGreaterThan(0.98)
    expect(areaOf(ring!) / (Math.PI * radius * radius)).toBeLessThan(1.001)
  })

  it('round two points far apart is two circles, near together one outline round both', () => {
    const pair = (apart: number) =>
      pointSurface([
        { x: -apart / 2, y: 0.1, strength },
        { x: apart / 2, y: 0.1, strength },
      ])
    expect(tolerableContour(pair(16.1), 116, box(14))).toHaveLength(2)
    const joined = tolerableContour(pair(3.1), 116, box(14))
    // inside, half way between the two, the ground is level: an island that is no danger
    expect(areaOf(joined[0]!)).toBeGreaterThan(Math.PI * handRadius(strength, 116) ** 2)
    expect(joined.filter((ring) => areaOf(ring) > 0)).toHaveLength(1)
    for (const hole of joined.slice(1)) expect(areaOf(hole)).toBeLessThan(0)
  })

  it('a plateau is a hole: only its edge falls', () => {
    // V = 1001 inside 4 m, then down 200 V a metre to 1: a pace is 150 V or more from 3.75 to 8.25 m
    const volt = (x: number, y: number) => 1 + Math.max(0, Math.min(1000, 1000 - 200 * (Math.hypot(x, y) - 4)))
    const plateau = {
      potentialAt: ({ x, y }: { x: number; y: number }) => complex(volt(x, y)),
      slopeAt: ({ x, y }: { x: number; y: number }) => {
        const apart = Math.hypot(x, y)
        const fall = apart > 4 && apart < 9 ? -200 / apart : -1e-9
        return { x: complex(fall * x), y: complex(fall * y) }
      },
    }
    const rings = tolerableContour(plateau, 150, box(12))
    const areas = rings.map(areaOf).sort((a, b) => a - b)
    expect(areas).toHaveLength(2)
    expect(areas[0]! / (-Math.PI * 3.75 ** 2)).toBeCloseTo(1, 1)
    expect(areas[1]! / (Math.PI * 8.25 ** 2)).toBeCloseTo(1, 1)
  })

  it('nothing too high anywhere: no outline', () => {
    expect(tolerableContour(one, 1e7, box(12))).toEqual([])
  })
})

describe('how far out to look', () => {
  it('no pace is too high beyond the reach, one point carrying everything, on either layer', () => {
    const soil = { layers: [{ resistivity: 100, thickness: 1 }, { resistivity: 300 }] }
    const reach = reachOfPace(soil, [complex(70)], 116)
    const worst = (300 * 70) / (2 * Math.PI)
    expect(reach).toBeGreaterThan(handRadius(worst, 116))
    expect(reach).toBeLessThan(3 * handRadius(worst, 116))
  })

  it('boxes whose reaches meet are one; who carries nothing gets none', () => {
    const at = (x: number, current: number) => ({ shape: discAt(`e${x}`, { x, y: 0 }), current: complex(current) })
    expect(clearBoxes([at(0, 1), at(7, 1), at(60, 1), at(200, 0)], 4)).toHaveLength(2)
    const [near] = clearBoxes([at(0, 1), at(7, 1)], 4)
    expect(near!.from.x).toBeCloseTo(-4, 1)
    expect(near!.to.x).toBeCloseTo(11, 1)
  })
})

describe('the safe distance', () => {
  const rod = { shape: discAt('rod', { x: 0.1, y: -0.2 }), current: complex(70) }

  it.each([50, 116, 400])('of one point is the radius where a pace is %d V, less its own', (tolerable) => {
    const [found] = safeDistances(one, tolerable, [rod], 15)
    expect(found!.distance).toBeCloseTo(handRadius(strength, tolerable) - 0.01, 2)
    // a foot there, the other a metre further out
    expect(Math.hypot(found!.far!.x - 0.1, found!.far!.y + 0.2)).toBeCloseTo(found!.distance + 1.01, 3)
  })

  it('what carries nothing needs none, even in the middle of the zone', () => {
    const idle = { shape: discAt('idle', { x: 1.5, y: 0 }), current: complex(0) }
    const [carrying, floating] = safeDistances(one, 116, [rod, idle], 15)
    expect(carrying!.distance).toBeGreaterThan(2)
    expect(floating).toEqual({ distance: 0, at: null, far: null })
  })

  it('circles at the safe distances round two electrodes hold the whole zone', () => {
    const places = [
      { x: 0, y: 0, strength },
      { x: 2.5, y: 1, strength: strength / 4 },
    ]
    const surface = pointSurface(places)
    const electrodes = places.map((it, i) => ({ shape: discAt(`e${i}`, it), current: complex(i === 0 ? 70 : 17.5) }))
    const found = safeDistances(surface, 116, electrodes, 15)
    expect(found.every(({ distance }) => distance > 0)).toBe(true)
    for (const at of tolerableContour(surface, 116, box(12)).flat()) {
      const isHeld = places.some((it, i) => Math.hypot(at.x - it.x, at.y - it.y) <= found[i]!.distance + 0.05)
      expect(isHeld).toBe(true)
    }
  })

  it('nothing too high anywhere: 0', () => {
    expect(safeDistances(one, 1e9, [rod], 15)[0]!.distance).toBe(0)
  })
})

describe('the barrier', () => {
  const tolerable = 116
  const radius = handRadius(strength, tolerable)
  const contour = tolerableContour(one, tolerable, box(12))
  const centre = { x: 0.1, y: -0.2 }
  const check = (barrier: Parameters<typeof barrierCheck>[3]) => barrierCheck(one, tolerable, contour, barrier)

  it('a little wider than the zone encloses it; its worst pace is 1114/r(r + 1) where it comes nearest', () => {
    const { isEnclosing, sticksOut, worstAlong } = check(circleRound(centre, radius + 0.2))
    expect({ isEnclosing, sticksOut }).toEqual({ isEnclosing: true, sticksOut: [] })
    // a polygon comes a little nearer between its corners
    const nearest = Math.hypot(worstAlong!.at.x - 0.1, worstAlong!.at.y + 0.2)
    expect(worstAlong!.voltage).toBeCloseTo(strength / (nearest * (nearest + 1)), 6)
    expect(worstAlong!.voltage).toBeLessThan(tolerable)
  })

  it('a little narrower does not: the whole rim sticks out, and every pace from the barrier is too high', () => {
    const barrier = circleRound(centre, radius - 0.2)
    const { isEnclosing, sticksOut, worstAlong } = check(barrier)
    expect(isEnclosing).toBe(false)
    expect(sticksOut.length).toBeGreaterThanOrEqual(contour[0]!.length)
    expect(worstAlong!.voltage).toBeGreaterThan(tolerable)
  })

  it('set aside, only the far side sticks out', () => {
    const barrier = circleRound({ x: 1.6, y: -0.2 }, radius + 0.5)
    const { isEnclosing, sticksOut } = check(barrier)
    expect(isEnclosing).toBe(false)
    for (const at of sticksOut) expect(at.x).toBeLessThan(0.1)
    expect(sticksOut.some((at) => !isInside(barrier, at) && at.x < 0.1 - radius + 0.2)).toBe(true)
  })

  it('round another place, or none at all, leaves everything outside', () => {
    expect(check(circleRound({ x: 30, y: 0 }, 3)).sticksOut.length).toBe(contour[0]!.length)
    expect(check(null)).toEqual({ isEnclosing: false, sticksOut: contour.flat(), worstAlong: null })
  })

  it('no zone at all: even none is enough', () => {
    expect(barrierCheck(one, 1e9, [], null).isEnclosing).toBe(true)
  })
})
