import type { Vector3 } from 'three'
import { expect, test } from 'vitest'
import { siteAt } from '../../../src/engine'
import { routeLead } from '../../../src/app/scene/gear/leads'
import { bakeSolids } from '../../../src/app/scene/ink/bakeSolids'
import { bakeWires } from '../../../src/app/scene/ink/bakeWires'
import type { Built } from '../../../src/app/scene/ink/part'
import { dropIn, span } from '../../../src/app/scene/geometry/curves'
import { vector } from '../../../src/app/scene/geometry/shapes'
import { hasMoved, stanceBetween } from '../../../src/app/scene/people/between'
import { crewView, heldEnds, stancesOf } from '../../../src/app/scene/people/crew'
import { solvePosture } from '../../../src/app/scene/people/posture'
import { lvHeight } from '../../../src/app/scene/site/layout'
import { lineView } from '../../../src/app/scene/site/lines'
import { scenery, skyline } from '../../../src/app/scene/site/scenery'
import { gearModel } from '../../../src/app/scene/site/siteModel'
import { workAlong } from '../../../src/app/scene/site/workAlong'
import { switchModel } from '../../../src/app/scene/site/switchModel'
import { sceneOf, timelineOf } from '../../support/sceneSites'
import { secondOf } from '../../support/secondOf'
import { siteKinds } from '../../support/siteKinds'

const timeline = timelineOf('clean')
const atWork = siteAt(timeline, secondOf(timeline, 'untie'))

function sceneOn(kind: string, site = atWork) {
  return sceneOf({ ...site, scenario: { ...site.scenario, ...siteKinds[kind]!(site.scenario) } })
}

function batchesOf({ layout, picture }: ReturnType<typeof sceneOn>): readonly Built[] {
  const stances = stancesOf(layout, picture)
  return [
    scenery(picture.weather.wind, layout),
    lineView(layout, { cracked: null, carriers: picture.carriers }),
    gearModel(layout, picture, heldEnds(picture, stances), []).built,
    crewView(layout, picture, stances).built,
  ]
}

const triangles = ({ parts, wires }: Built): number =>
  bakeSolids(parts).getAttribute('position').count / 3 + bakeWires(wires).index!.count / 3

test.each(Object.keys(siteKinds))(
  '%s: fill, outline and shadow stay under 200 000 triangles, nothing is broken',
  (kind) => {
    const batches = batchesOf(sceneOn(kind))
    const sum = batches.reduce((total, it) => total + 3 * triangles(it), triangles(skyline()))
    // The ground, the sky, grips and a tape need some too.
    expect(sum).toBeLessThan(190_000)
    expect(sum).toBeGreaterThan(80_000)
    for (const { parts, wires } of batches) {
      for (const { geometry } of parts)
        for (const value of geometry.getAttribute('position').array) if (!Number.isFinite(value)) expect.fail(kind)
      for (const { points } of wires) for (const point of points) expect(Number.isFinite(point.lengthSq())).toBe(true)
    }
  },
)

test('a pole of 11 m, an arm of 2.1 to 2.7 m, low voltage 1 to 1.5 m below, whoever climbs 1.75 m tall', () => {
  // Usual measures of an 11 kV line on single poles; common practice, no source.
  const { belief, layout, picture } = sceneOn('eleven-metres')
  const { height, buttLength } = belief.sheet.pole
  expect(height + buttLength).toBeCloseTo(11, 9)
  expect(layout.pole.top).toBeGreaterThan(height - 0.25)
  expect(layout.arm.length).toBeGreaterThanOrEqual(2.1)
  expect(layout.arm.length).toBeLessThanOrEqual(2.7)
  for (const { height: low } of layout.lv) {
    expect(layout.conductors[0]!.height - low).toBeGreaterThanOrEqual(1)
    expect(layout.conductors[0]!.height - low).toBeLessThanOrEqual(1.5)
  }
  const pic = solvePosture(stancesOf(layout, picture).get('pic')!.posture)
  const crown = pic.head.y + 0.098 * 1.15 // half of the egg that is drawn
  expect(crown).toBeGreaterThan(1.68)
  expect(crown).toBeLessThan(1.8)
})

test('a wire hangs as a catenary: steeper toward its ends than the parabola of the same sag, never far from it', () => {
  // y = a·cosh(x/a): for 60 m and 6 m of sag, a = 75.9 m (solved by hand from a·(cosh(30/a) − 1) = 6). At a quarter of
  // the span it lies a·(cosh(30/a) − cosh(15/a)) = 4.52 m under the chord; the parabola 4·6·¼·¾ = 4.50 m.
  const a = 75.9
  expect(a * (Math.cosh(30 / a) - 1)).toBeCloseTo(6, 1)
  expect(dropIn(60, 6, 0.5)).toBeCloseTo(6, 9)
  expect(dropIn(60, 6, 0.25)).toBeCloseTo(a * (Math.cosh(30 / a) - Math.cosh(15 / a)), 2)
  expect(dropIn(60, 6, 0.25)).toBeGreaterThan(4.5)
  const points = span(vector(0, 8, 0), vector(0, 8, 60), 0.9, 20)
  expect(points[10]!.y).toBeCloseTo(7.1, 9)
  expect(points[20]!.y).toBeCloseTo(8, 9)
})

const idsOn = (kind: string): ReadonlySet<string> =>
  new Set(batchesOf(sceneOn(kind)).flatMap(({ hits }) => hits.map(({ id }) => id)))

test('what a scenario adds to its place can be picked there', () => {
  for (const [kind, ids] of Object.entries({
    'eleven-metres': ['band-1', 'bolt-1', 'brace-1', 'sheath-1', 'lamp-1'],
    double: ['T1', 'pole'],
    transformer: ['T1', 'farm-generator'],
    steel: ['p33'],
    shared: ['p11'],
    neutral: ['neutral', 'paddock', 'trough', 'telephone-earth'],
    truck: ['truck', 'bucket'],
    jumper: ['conductor-b/far'],
    'next-pole': ['next-pole', 'arm@next', 'conductor-b@next'],
  }))
    for (const id of ids) expect(idsOn(kind), `${id} on ${kind}`).toContain(id)
})

const print = ({ parts }: Built): string =>
  parts.map(({ slot, geometry }) => `${slot} ${[...geometry.getAttribute('position').array.slice(0, 9)]}`).join('\n')

test('carriers in, hung, taken out and not looked at are four pictures', () => {
  const { layout } = sceneOn('transformer')
  const states = ['in', 'hung', 'out', 'not-looked'] as const
  const drawn = states.map((state) => print(lineView(layout, { cracked: null, carriers: { T1: state } })))
  expect(new Set(drawn).size).toBe(4)
})

test('a lead lies as it was laid: clear of the low voltage, over it, or in rings at the foot', () => {
  const { layout, picture } = sceneOn('marrow-bend')
  const lead = picture.leads.find(({ item }) => item === 'E-07')!
  const down = (route: (typeof lead)['route']): readonly Vector3[] =>
    routeLead(layout, picture, { ...lead, route }, new Map()).sections[0]!.points
  const fromLv = (points: readonly Vector3[]): number =>
    Math.min(
      ...points.flatMap((point) =>
        layout.lv.map((it) => Math.hypot(point.x - it.across, point.y - lvHeight(it, point.z))),
      ),
    )
  const length = (points: readonly Vector3[]): number =>
    points.slice(1).reduce((sum, point, i) => sum + point.distanceTo(points[i]!), 0)
  expect(fromLv(down('clear-of-lv'))).toBeGreaterThan(0.05)
  expect(fromLv(down('over-lv'))).toBeLessThan(0.03)
  expect(fromLv(down('coiled'))).toBeGreaterThan(0.05)
  // Its label says 12 m; the rings are whole ones, and rounding the corners takes a little off.
  expect(length(down('over-lv'))).toBeGreaterThan(12 * 0.93)
  expect(length(down('over-lv'))).toBeLessThan(12 * 1.05)
  const low = down('coiled').filter(({ y }) => y < 0.2)
  expect(length(low)).toBeGreaterThan(2 * Math.PI * 0.3 * 0.9)
})

test('an earth at the switch hangs from the wires of its section and goes to the ground', () => {
  const { layout, picture } = sceneOn('marrow-bend')
  const bare = picture.switches[0]!
  const lowest = (built: Built): number =>
    Math.min(...built.wires.filter(({ slot }) => slot === 'lead').flatMap(({ points }) => points.map(({ y }) => y)))
  const earthed = switchModel(layout, picture, { ...bare, hasEarth: true })
  expect(lowest(switchModel(layout, picture, { ...bare, hasEarth: false }))).toBe(Infinity)
  expect(lowest(earthed)).toBeLessThan(0.3)
})

test('between two postures nobody jumps, and the end is the posture itself', () => {
  const [from, to] = ['test/conductor-a', 'untie'].map((when) => {
    const { layout, picture } = sceneOn('marrow-bend', siteAt(timeline, secondOf(timeline, when)))
    return stancesOf(layout, picture)
  })
  const walk = siteAt(timeline, secondOf(timeline, 'drive-rod'))
  const first = sceneOn('marrow-bend', siteAt(timeline, 0))
  const later = sceneOn('marrow-bend', walk)
  const [a, b] = [stancesOf(first.layout, first.picture).get('gw')!, stancesOf(later.layout, later.picture).get('gw')!]
  expect(hasMoved(from!, from!)).toBe(false)
  expect(hasMoved(stancesOf(first.layout, first.picture), stancesOf(later.layout, later.picture))).toBe(true)
  expect(stanceBetween(a, b, 1)).toBe(b)
  const way: Vector3[] = Array.from({ length: 21 }, (_, k) => stanceBetween(a, b, k / 20).posture.hips)
  const total = a.posture.hips.distanceTo(b.posture.hips)
  expect(total).toBeGreaterThan(1)
  way.slice(1).forEach((hips, k) => expect(hips.distanceTo(way[k]!)).toBeLessThan(total * 0.08))
  expect(to!.size).toBe(from!.size)
})

test('at the next pole leads, views and letters are where the work is, as long as they are at the first', () => {
  const next = 50
  const { layout, picture } = sceneOn('marrow-bend')
  const there = { ...layout, place: { ...layout.place, nextPole: { ...layout.place.nextPole, along: next } as never } }
  const rods = picture.rods.map((rod) => ({ ...rod, at: { ...rod.at, x: rod.at.x + next } }))
  const moved = { ...picture, rods, people: [] }
  expect(workAlong(layout, picture)).toBe(0)
  expect(workAlong(there, moved)).toBe(next)
  const [lead] = picture.leads.filter(({ ends }) => ends.some(({ on }) => on?.startsWith('rod/')))
  const atNext = {
    ...lead!,
    ends: lead!.ends.map((end) => ({ ...end, on: end.on?.startsWith('conductor-') ? `${end.on}@next` : end.on })),
  }
  const routeOf = (of: typeof layout, shown: typeof picture) => gearModel(of, shown, new Map(), []).routes[0]!
  const first = routeOf(layout, { ...picture, leads: [lead!] })
  const second = routeOf(there, { ...moved, leads: [atNext] })
  expect(second.seats.map(({ end }) => end.on)).toEqual(atNext.ends.map(({ on }) => on))
  second.seats.forEach(({ seat }, i) => expect(seat.z).toBeCloseTo(first.seats[i]!.seat.z + next, 6))
  const lengthOf = (route: typeof first): number =>
    route.sections
      .flatMap(({ points }) => points.slice(1).map((point, i) => point.distanceTo(points[i]!)))
      .reduce((a, b) => a + b)
  expect(lengthOf(second)).toBeCloseTo(lengthOf(first), 6)
})
