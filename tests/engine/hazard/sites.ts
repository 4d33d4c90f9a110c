/** Sites of marrow-bend put together by hand, without acting: what the hazard tests stand on. */
import { bodiesAt, type ActiveContact } from '../../../src/engine/site/bodies'
import type { GroundPoint } from '../../../src/engine/site/place'
import type { Phase, Scenario } from '../../../src/engine/site/scenario'
import { startSite } from '../../../src/engine/site/startSite'
import type { Clamp, Person, Site } from '../../../src/engine/site/site'
import { declaredCorner, type Corner } from '../../../src/engine/hazard/corner'
import type { Exposure, Story } from '../../../src/engine/hazard/exposure'
import { solveInstant } from '../../../src/engine/hazard/instant'
import { liven, type LiveMoment } from '../../../src/engine/hazard/liven'
import { createSweepCache } from '../../../src/engine/hazard/sweepCache'
import { marrowBend } from '../../support/marrowBend'

/** What one test file has solved; answers do not depend on it (sweep.test.ts). */
export const sharedCache = createSweepCache()

export type Change = (site: Site) => Site

/** All items sound; the supply switch open, both switches locked, the tie put to local, the crossing's reclose blocked. */
export function isolatedSite(...changes: readonly Change[]): Site {
  return isolatedIn(soundScenario(), ...changes)
}

function isolatedIn(scenario: Scenario, ...changes: readonly Change[]): Site {
  const start = startSite(scenario)
  const open = { A: 'open', B: 'open', C: 'open' } as const
  const site: Site = {
    ...start,
    switches: {
      ...start.switches,
      'switch-27': { ...start.switches['switch-27']!, handle: 'open', blades: open, lock: 'K-71' },
      'switch-31': { ...start.switches['switch-31']!, control: 'local', lock: 'K-72' },
    },
    paper: { ...start.paper, recloseBlocked: { ...start.paper.recloseBlocked, fx: true } },
  }
  return changes.reduce((now, change) => change(now), site)
}

export function soundScenario(): Scenario {
  const scenario = marrowBend(1)
  return { ...scenario, items: scenario.items.map((item) => ({ ...item, defects: [] })) }
}

/** 3.5 m from the pole, driven to its mark: the pinned rod. */
export const rodPlace: GroundPoint = { x: -3.5, y: 0 }

export const withRod: Change = (site) => ({ ...site, rods: [{ item: 'R-1', at: rodPlace, depth: 1.8 }] })

const goodClamp = { turns: 6, brushed: true, tugged: true }

export function clampOn(lead: string, end: string, on: string, state: Partial<Clamp> = {}): Change {
  return (site) => ({ ...site, clamps: [...site.clamps, { lead, end, on, ...goodClamp, ...state }] })
}

export function without(lead: string, end?: string): Change {
  return (site) => ({
    ...site,
    clamps: site.clamps.filter((clamp) => clamp.lead !== lead || (end !== undefined && clamp.end !== end)),
  })
}

/** Rod, one continuous lead rod – A – B – C. */
export const earthsOn: Change = (site) =>
  [
    withRod,
    clampOn('E-07', 'earth', 'rod/R-1'),
    clampOn('E-07', '1', 'conductor-a'),
    clampOn('E-07', '2', 'conductor-b'),
    clampOn('E-07', '3', 'conductor-c'),
  ].reduce((now, change) => change(now), site)

export const bondOn: Change = (site) =>
  [clampOn('B-02', 'metal', 'arm'), clampOn('B-02', 'line', 'conductor-b')].reduce((now, change) => change(now), site)

export function coverOn(item = 'C-15'): Change {
  return (site) => ({ ...site, cover: { item, from: 6.9, to: 8.7, checked: true } })
}

export function guardsOn(b = 'L-51', n = 'L-52'): Change {
  return (site) => ({
    ...site,
    guards: [
      { item: b, on: 'lv-b' },
      { item: n, on: 'lv-n' },
    ],
  })
}

export function person(id: string, change: Partial<Person>): Change {
  return (site) => ({ ...site, persons: { ...site.persons, [id]: { ...site.persons[id]!, ...change } } })
}

export function standsAt(id: string, x: number, y: number): Change {
  return person(id, { place: { kind: 'ground', at: { x, y } } })
}

export const workerAloft: Change = person('pw', {
  place: { kind: 'pole', station: 'above-lv' },
  wears: ['BT-42', 'W-1'],
  strapped: true,
})

export const othersBooted: Change = (site) =>
  [person('pic', { wears: ['BT-41'] }), person('gw', { wears: ['BT-43'] })].reduce((now, change) => change(now), site)

export function defect(item: string, ...defects: string[]): Change {
  return (site) => ({ ...site, items: { ...site.items, [item]: { ...site.items[item]!, defects } } })
}

export function labelled(item: string, label: Record<string, string | number>): Change {
  return (site) => {
    const before = site.items[item]!
    return { ...site, items: { ...site.items, [item]: { ...before, label: { ...before.label, ...label } } } }
  }
}

/** A circle round a point, as a polygon of 48 corners that touches it from outside: a mean radius of `radius`. */
export function circleRound(centre: GroundPoint, radius: number): GroundPoint[] {
  return Array.from({ length: 48 }, (_, i) => {
    const turn = (2 * Math.PI * i) / 48
    return { x: centre.x + radius * Math.cos(turn), y: centre.y + radius * Math.sin(turn) }
  })
}

export function barrierAt(outline: readonly GroundPoint[] | null): Change {
  return (site) => ({ ...site, barrier: outline })
}

/** 6 m from the rod and from the pole: a rectangle of tape. */
export const cleanBarrier: Change = barrierAt([
  { x: -9.5, y: -6 },
  { x: 6, y: -6 },
  { x: 6, y: 6 },
  { x: -9.5, y: 6 },
])

export function touching(
  personId: string,
  limb: ActiveContact['contact']['limb'],
  on: ActiveContact['contact']['on'],
  ...through: string[]
): ActiveContact {
  return { person: personId, contact: { limb, on, through } }
}

export const leftHandOnB = touching('pw', 'left-hand', { kind: 'conductor', id: 'conductor-b' })

export function momentOf(site: Site, ...active: readonly ActiveContact[]): LiveMoment {
  return { site, bodies: bodiesAt(site, active) }
}

/** The story in the declared corner. Throws when there is none. */
export function storyOf(moment: LiveMoment, livening = 'clash-b', corner: Corner = declaredCorner): Story {
  const answer = liven(moment, livening, corner, sharedCache)
  if (answer.kind !== 'story') throw new Error(`${livening}: ${answer.reason} at ${answer.node}`)
  return answer
}

export function exposureOf(story: Story, personId: string, path?: string): Exposure {
  const found = story.exposures.find((it) => it.person === personId && (path === undefined || it.path === path))
  if (found === undefined) throw new Error(`no exposure of ${personId} in ${JSON.stringify(story.exposures)}`)
  return found
}

/** Volt, rms, of every node at the start of the story. */
export function voltages(
  moment: LiveMoment,
  livening = 'clash-b',
  corner: Corner = declaredCorner,
): (node: string) => number {
  const answer = solveInstant(moment, livening, corner, { cache: sharedCache })
  if (answer.kind !== 'instant') throw new Error(`${livening}: ${answer.reason} at ${answer.node}`)
  return (node) => {
    const found = answer.nodes.find((it) => it.node === node)
    if (found === undefined) throw new Error(`no node ${node}`)
    return found.size
  }
}

/** Another scenario under the same site. */
export function inScenario(change: (scenario: Scenario) => Partial<Scenario>): Change {
  return (site) => ({ ...site, scenario: { ...site.scenario, ...change(site.scenario) } })
}

export function changed(site: Site, ...changes: readonly Change[]): Site {
  return changes.reduce((now, change) => change(now), site)
}

export function bladesClosed(at: string, ...closed: readonly Phase[]): Change {
  return (site) => {
    const blades = { A: 'open', B: 'open', C: 'open' } as Record<Phase, 'open' | 'closed'>
    for (const phase of closed) blades[phase] = 'closed'
    return { ...site, switches: { ...site.switches, [at]: { ...site.switches[at]!, blades } } }
  }
}

export function unlocked(at: string): Change {
  return (site) => ({ ...site, switches: { ...site.switches, [at]: { ...site.switches[at]!, lock: null } } })
}

/** Earths on at the pole, everybody booted, worker aloft, guards and the clean barrier: no bond, no cover. */
export function earthedSite(...changes: readonly Change[]): Site {
  return isolatedSite(earthsOn, othersBooted, workerAloft, guardsOn(), cleanBarrier, ...changes)
}
