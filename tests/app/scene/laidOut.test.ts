import { expect, test } from 'vitest'
import { gearCatalogue } from '../../../src/engine'
import { Box3, Vector3 } from 'three'
import { marksOn } from '../../../src/app/scene/gear/laidMarks'
import { laidOut } from '../../../src/app/scene/gear/laidOut'
import { gearModel } from '../../../src/app/scene/site/siteModel'
import type { Built } from '../../../src/app/scene/ink/part'
import { findFinding } from '../../../src/app/stores/findFinding'
import { startSite } from '../../../src/engine'
import type { Evidence, Site } from '../../../src/engine/site/site'
import { earthsOn, isolatedSite } from '../../engine/hazard/sites'
import { withItem } from '../../support/placedItem'
import { marrowBend } from '../../support/marrowBend'
import { sceneOf } from '../../support/sceneSites'

const visible = [...gearCatalogue.values()].flatMap(({ id, defects }) =>
  defects
    .filter(({ foundBy }) => foundBy === 'look')
    .map(({ evidence, end }) => ({
      type: id,
      says: evidence,
      values: end === undefined ? {} : { end },
      finding: findFinding({ says: evidence, values: end === undefined ? {} : { end } })!,
    })),
)

const pointsOf = ({ parts }: Built): readonly number[] =>
  parts.flatMap(({ geometry }) => [...geometry.getAttribute('position').array])
const trianglesOf = ({ parts }: Built): number =>
  parts.reduce((sum, { geometry: it }) => sum + (it.index?.count ?? it.getAttribute('position').count) / 3, 0)
const boxOf = ({ parts, wires }: Built): Box3 => {
  const box = new Box3()
  for (const { geometry } of parts) {
    geometry.computeBoundingBox()
    box.union(geometry.boundingBox!)
  }
  for (const { points } of wires) box.union(new Box3().setFromPoints([...points]))
  return box
}

test('whatever a look can find is marked on the item where it lies, each in a place or a pen of its own, and cheaply', () => {
  const drawn = new Map<string, string>()
  for (const { type, finding } of visible) {
    const shape = laidOut[type]!('it')
    const marks = marksOn(shape, type, [finding], 'it')
    const print = `${type} ${pointsOf(marks)
      .map((it) => it.toFixed(3))
      .join(' ')}`
    expect(drawn.get(print), `${type} ${finding}`).toBeUndefined()
    drawn.set(print, finding)
    expect(trianglesOf(marks), finding).toBeLessThan(250)
    expect(marks.parts.every(({ id }) => id === 'it')).toBe(true)
    const middle = boxOf(marks).getCenter(new Vector3())
    expect(boxOf(shape).expandByScalar(0.05).containsPoint(middle), `${type} ${finding}`).toBe(true)
  }
  expect(drawn.size).toBeGreaterThan(180)
})

/** One of every type on the tarp, with everything told of it that can be. */
function fullTarp(tells: boolean): Site {
  const base = startSite(marrowBend())
  const site = [...gearCatalogue.keys()].reduce((now, type, i) => withItem(now, `Z-${i}`, type, { kind: 'tarp' }), base)
  const evidence = [...gearCatalogue.keys()].flatMap((type, i): Evidence[] =>
    visible
      .filter((it) => it.type === type)
      .map(({ says, values }) => ({ at: 1, who: 'gw', of: `Z-${i}`, by: 'look', says, values })),
  )
  return tells ? { ...site, evidence } : site
}

test('the tarp shows what was told and nothing more, within its share of the triangles', () => {
  const modelOf = (tells: boolean) => {
    const { layout, picture } = sceneOf(fullTarp(tells))
    return gearModel(layout, picture, new Map(), []).built
  }
  const [untold, told] = [modelOf(false), modelOf(true)]
  expect(told.parts.length).toBeGreaterThan(untold.parts.length + visible.length - 1)
  // 200 000 is the budget of the whole picture; nobody finds everything on everything.
  expect(trianglesOf(told)).toBeLessThan(110_000)
})

test('tails of a three-lead set meet in one boss below the conductors', () => {
  const set = withItem(isolatedSite(earthsOn), 'E-30', 'earth-set', { kind: 'fitted' })
  const site = { ...set, clamps: set.clamps.map((it) => ({ ...it, lead: 'E-30' })) }
  const { layout, picture } = sceneOf(site)
  const { routes } = gearModel(layout, picture, new Map(), [])
  const { sections, hub } = routes.find((it) => it.lead.item === 'E-30')!
  expect(sections.map(({ from, to }) => `${from}-${to}`)).toEqual(['earth-boss', 'boss-1', 'boss-2', 'boss-3'])
  for (const { from, points } of sections) {
    const met = from === 'boss' ? points[0]! : points.at(-1)!
    expect(met.distanceTo(hub!)).toBeLessThan(0.02)
  }
  // Conductors at 8.5 m, tails of 2 m: half of their length below them.
  expect(hub!.y).toBeLessThan(7.6)
  expect(hub!.y).toBeGreaterThan(6.8)
})

test('what a look at the bucket told is on the bucket, where the truck has one', () => {
  const truck = { tyres: 1e6, outriggers: [], boom: { leakage: 1e9, liner: 1e9 } }
  const base = startSite({ ...marrowBend(), truck })
  const site = withItem(base, 'Z-1', 'bucket-boom', { kind: 'tarp' })
  const says = 'gear.bucket-boom.look.liner-crack'
  const told: Evidence[] = [{ at: 1, who: 'pw', of: 'Z-1', by: 'look', says, values: {} }]
  const high = (it: Site): number => {
    const { layout, picture } = sceneOf(it)
    const { parts } = gearModel(layout, picture, new Map(), []).built
    return parts.filter(({ id, geometry }) => {
      geometry.computeBoundingBox()
      // The bucket rests over the bed, 2.35 m up; nothing on the tarp is so high.
      return id === 'Z-1' && geometry.boundingBox!.min.y > 2
    }).length
  }
  expect(high(site)).toBe(0)
  expect(high({ ...site, evidence: told })).toBeGreaterThan(0)
})
