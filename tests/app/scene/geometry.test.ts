import { createHash } from 'node:crypto'
import type { Vector3 } from 'three'
import { expect, test } from 'vitest'
import { routeLead } from '../../../src/app/scene/gear/leads'
import { box } from '../../../src/app/scene/geometry/shapes'
import { bakeSolids } from '../../../src/app/scene/ink/bakeSolids'
import { dashDensity, dashesPerSecond } from '../../../src/app/stores/flows'
import { part } from '../../../src/app/scene/ink/part'
import { stancesOf } from '../../../src/app/scene/people/crew'
import { solvePosture } from '../../../src/app/scene/people/posture'
import { hvHeight } from '../../../src/app/scene/site/layout'
import { lineView } from '../../../src/app/scene/site/lines'
import { gearModel } from '../../../src/app/scene/site/siteModel'
import { sceneAt, timelineOf } from '../../support/sceneSites'

const timeline = timelineOf('clean')

test('a box keeps its twelve edges, each seen from two triangles, and no diagonal', () => {
  const edge = bakeSolids([part(box(1, 2, 3), 'steel')]).getAttribute('edge').array
  let creases = 0
  for (let corner = 0; corner < edge.length; corner += 9)
    for (let k = 0; k < 3; k++) if (edge[corner + k]! < 999) creases++
  expect(creases).toBe(24)
})

test('the same picture bakes to the same bytes', () => {
  const { layout, picture } = sceneAt(timeline, 'untie')
  const print = (): string => {
    const gear = bakeSolids(gearModel(layout, picture, new Map(), []).built.parts).getAttribute('position').array
    const line = bakeSolids(lineView(layout, { cracked: picture.work, carriers: {} }).parts).getAttribute(
      'position',
    ).array
    return createHash('sha256').update(Float32Array.from(gear)).update(Float32Array.from(line)).digest('hex')
  }
  expect(print()).toBe(print())
})

test('a lead ends at its clamps, lies on the ground and not in it, and is as long as it is', () => {
  const { layout, picture } = sceneAt(timeline, 'untie')
  const lead = picture.leads.find(({ item }) => item === 'E-07')!
  const route = routeLead(layout, picture, lead, new Map())
  const [down, first, second] = route.sections
  const length = (points: readonly Vector3[]) =>
    points.slice(1).reduce((sum, point, i) => sum + point.distanceTo(points[i]!), 0)
  // 12 m to the first clamp and two hops of 1.5 m, as its label says; rounding the corners takes a little off.
  expect(length(down!.points)).toBeGreaterThan(12 * 0.94)
  expect(length(down!.points)).toBeLessThan(12 * 1.04)
  for (const hop of [first!, second!]) {
    expect(length(hop.points)).toBeGreaterThan(1.5 * 0.94)
    expect(length(hop.points)).toBeLessThan(1.5 * 1.04)
  }
  for (const { points } of route.sections) for (const point of points) expect(point.y).toBeGreaterThan(0)
  for (const { end, seat } of route.seats.slice(1)) {
    const conductor = layout.conductors.find(({ id }) => id === end.on)!
    expect(Math.hypot(seat.x - conductor.across, seat.y - hvHeight(conductor, seat.z))).toBeLessThan(0.001)
  }
})

test('whoever works on the pole has the hand or the stick on the thing, and the feet on step bolts', () => {
  const byHand = ['untie', 'swap-insulator', 'retie', 'bond-metal']
  const byStick = ['test', 'brush', 'clamp', 'tug', 'unclamp']
  const met = new Set<string>()
  for (const { order, start, end } of timeline.entries) {
    if (order.who !== 'pw' || !order.on || ![...byHand, ...byStick].includes(order.do)) continue
    const { layout, picture } = sceneAt(timeline, Math.floor((start + end) / 2))
    const stance = stancesOf(layout, picture).get('pw')!
    const joints = solvePosture(stance.posture)
    for (const foot of [joints.left.foot, joints.rightLimb.foot])
      expect(
        layout.stepBolts.some(({ height }) => Math.abs(height - foot.y) < 0.001),
        `${order.do} at ${start}`,
      ).toBe(true)
    const conductor = layout.conductors.find(({ id }) => id === order.on)
    if (!conductor) continue
    const distance = ({ x, y, z }: Vector3) => Math.hypot(x - conductor.across, y - hvHeight(conductor, z))
    if (byStick.includes(order.do) && stance.stick)
      expect(distance(stance.stick.head), `${order.do} ${order.on}`).toBeLessThan(0.03)
    if (byHand.includes(order.do))
      expect(
        Math.min(distance(joints.left.hand), distance(joints.rightLimb.hand)),
        `${order.do} ${order.on}`,
      ).toBeLessThan(0.08)
    met.add(order.do)
  }
  expect([...met].sort()).toEqual(['brush', 'clamp', 'retie', 'swap-insulator', 'test', 'tug', 'unclamp', 'untie'])
})

test('the pole is as high as the work order says, its arm and wires where they are', () => {
  const { layout } = sceneAt(timeline, 0)
  // A distribution pole of 10.2 m, 1.8 m of it in the ground; HV arm 8.3 m, LV 1.2 to 1.5 m below (common practice, no source).
  expect(layout.arm.height).toBeCloseTo(8.3, 6)
  expect(layout.conductors.map(({ height }) => height)).toEqual([8.5, 8.5, 8.5])
  for (const { height } of layout.lv) expect(8.5 - height).toBeCloseTo(1.5, 6)
  // A wire in the air sags: a metre from the pole it is lower than its support, and never by more than the span's sag.
  const [a] = layout.conductors
  expect(hvHeight(a!, 0)).toBeCloseTo(8.5, 9)
  expect(hvHeight(a!, 1)).toBeLessThan(8.47)
  expect(hvHeight(a!, 30)).toBeCloseTo(8.5 - 0.9, 9) // half way of the 60 m span
})

test('more current, denser dashes, over three decades', () => {
  expect(dashDensity(70, 70)).toBe(1)
  expect(dashDensity(7, 70)).toBeCloseTo(2 / 3, 9)
  expect(dashDensity(0.7, 70)).toBeCloseTo(1 / 3, 9)
  expect(dashDensity(0.001, 70)).toBe(0)
  // Nothing may flicker: dashes pass a point slower than anything that flashes.
  expect(dashesPerSecond).toBeLessThanOrEqual(0.6)
})
