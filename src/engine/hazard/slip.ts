/**
 * The worst slip: one extra contact of one free limb with an uncovered conductive thing within reach, reported beside
 * the graded contacts and never graded by itself. A hand reaches 0.75 m from the shoulder; a leg that slips off its bolt
 * hangs beside the pole, within 0.3 m of its axis (own choice); on the ground a hand reaches what stands beside one.
 */
import { isUnsolvable, type Unsolvable } from '../physics/network'
import type { Body, Contact, Limb, Surface } from '../site/contact'
import { distance, type GroundPoint } from '../site/place'
import { gearTypeOf } from '../site/questions'
import { onNextPole } from '../site/nextPole'
import { findSectionNeutral } from '../site/findSectionNeutral'
import type { GroundThing } from '../site/groundThings'
import type { Site } from '../site/site'
import type { Corner } from './corner'
import type { Exposure } from './exposure'
import { answersOf, lineOf, type LiveMoment } from './liven'
import { createSweepCache, type SweepCache } from './sweepCache'
import { truckRadius } from './touchable'

export interface Slip {
  readonly person: string
  readonly limb: Limb
  readonly on: Surface
  readonly through: readonly string[]
  readonly exposure: Exposure
}

const handReach = 0.75
const legReach = 0.3
/** Shoulder above the feet, metres (common practice, no source). */
const shoulderAboveFeet = 1.4

/** All slips of a person, the worst first, by the value judged over its limit. */
export function slipsOf(
  moment: LiveMoment,
  person: string,
  livening: string,
  corner: Corner,
  cache: SweepCache = createSweepCache(),
): readonly (Slip | Unsolvable)[] {
  const body = moment.bodies.find((it) => it.person === person)
  const line = lineOf(moment.site, livening, corner, cache)
  if (body === undefined) return []
  if (isUnsolvable(line)) return [line]
  const slips = freeContacts(moment.site, body).flatMap((extra): (Slip | Unsolvable)[] => {
    const contacts = [...body.contacts.filter((it) => it.limb !== extra.limb), extra]
    const slipped = { site: moment.site, bodies: [{ person, contacts }] }
    const answer = answersOf(slipped, line, corner, cache)[0]?.answer
    if (answer === undefined) return []
    if (isUnsolvable(answer)) return [answer]
    const { exposure } = answer
    return exposure === null ? [] : [{ person, limb: extra.limb, on: extra.on, through: extra.through, exposure }]
  })
  return slips.sort((a, b) => ratio(b) - ratio(a))
}

function ratio(slip: Slip | Unsolvable): number {
  if (isUnsolvable(slip)) return Infinity
  const worst = slip.exposure.ifItFails ?? slip.exposure
  return worst.judged / worst.limit
}

function freeContacts(site: Site, body: Body): readonly Contact[] {
  const limbs: readonly Limb[] = ['left-hand', 'right-hand', 'right-foot']
  return limbs
    .filter((limb) => limb === 'right-foot' || !body.contacts.some((it) => it.limb === limb))
    .flatMap((limb) =>
      withinReach(site, body, limb).flatMap((on) => {
        return layersFor(site, body, limb, on).map((through) => ({ limb, on, through }))
      }),
    )
}

/**
 * Worn gloves stay on; a leg is bare above its boot; a guard on the wire stays on it. Above a glove's cuff the forearm
 * touches, through a sleeve or bare.
 */
function layersFor(site: Site, body: Body, limb: Limb, on: Surface): readonly (readonly string[])[] {
  const wears = site.persons[body.person]?.wears ?? []
  const worn = (...parts: readonly string[]) => {
    return parts.flatMap((part) => wears.filter((id) => gearTypeOf(site, id).worn === part))
  }
  const guard = on.kind === 'lv-wire' ? site.guards.filter((it) => it.on === on.id).map((it) => it.item) : []
  if (limb === 'right-foot') return [guard]
  const hand = [...worn('hands', 'over-hands'), ...guard]
  return hand.length === guard.length ? [hand] : [hand, [...worn('arms'), ...guard]]
}

function withinReach(site: Site, body: Body, limb: Limb): readonly Surface[] {
  const bolt = body.contacts.find((it) => it.on.kind === 'step-bolt')?.on
  if (bolt?.kind === 'step-bolt')
    return limb === 'right-foot' ? besideLeg(site, bolt.height) : besideShoulder(site, bolt.height, bolt.leg === 3)
  const ground = body.contacts.find((it) => it.on.kind === 'ground')?.on
  return ground?.kind === 'ground' && limb !== 'right-foot' ? onGround(site, ground.at) : []
}

function besideLeg(site: Site, feet: number): readonly Surface[] {
  return site.scenario.lv.wires
    .filter(
      (wire) => Math.abs(wire.x) <= legReach && wire.height >= feet && wire.height - feet <= shoulderAboveFeet / 2,
    )
    .map((wire) => ({ kind: 'lv-wire', id: wire.id }))
}

function besideShoulder(site: Site, feet: number, isNext: boolean): readonly Surface[] {
  const { conductors, lv, pole } = site.scenario
  const neutral = findSectionNeutral(site.scenario)
  const shoulder = feet + shoulderAboveFeet
  const isNear = (across: number, height: number): boolean => {
    const up = height - shoulder
    return Math.sqrt(across * across + up * up) <= handReach
  }
  const at = isNext ? ({ at: 'next' } as const) : {}
  const isBare = (height: number): boolean =>
    !(site.cover && (site.cover.pole === 'next') === isNext && height >= site.cover.from && height <= site.cover.to)
  const heights = [shoulder - 0.5, shoulder - 0.25, shoulder, shoulder + 0.25, shoulder + 0.5]
  const bare = heights.find((height) => height <= pole.height && isBare(height))
  return [
    ...[...conductors, ...(neutral ? [neutral] : [])]
      .filter((it) => isNear(it.x, it.height))
      .map((it): Surface => ({ kind: 'conductor', id: it.id, ...at })),
    ...lv.wires.filter((it) => isNear(it.x, it.height)).map((it): Surface => ({ kind: 'lv-wire', id: it.id })),
    ...(isNear(0, pole.armHeight)
      ? ([
          { kind: 'metalwork', id: isNext ? onNextPole('arm') : 'arm' },
          ...(site.scenario.stay && !isNext ? [{ kind: 'metalwork', id: 'stay-upper' } as const] : []),
        ] as const)
      : []),
    ...(isNext ? [] : (site.scenario.metalwork ?? []))
      .filter((it) => isNear(0, it.height))
      .map((it): Surface => ({ kind: 'metalwork', id: it.id })),
    ...(bare === undefined ? [] : [{ kind: 'pole', height: bare, ...(isNext ? ({ leg: 3 } as const) : {}) } as const]),
  ]
}

function placesOf(thing: GroundThing): readonly GroundPoint[] {
  return thing.kind === 'fence' ? thing.posts : thing.kind === 'pipe' ? thing.points : [thing.at]
}

function onGround(site: Site, at: GroundPoint): readonly Surface[] {
  const { pole, stay, grounds = [], truck } = site.scenario
  const isNear = (thing: GroundPoint, radius: number): boolean => distance(at, thing) <= handReach + radius
  return [
    ...site.rods.filter((rod) => isNear(rod.at, 0)).map((rod): Surface => ({ kind: 'rod', item: rod.item })),
    ...(isNear({ x: 0, y: 0 }, pole.diameter / 2) ? ([{ kind: 'pole', height: shoulderAboveFeet }] as const) : []),
    ...(stay && isNear(stay.anchor, 0) ? ([{ kind: 'metalwork', id: 'stay-lower' }] as const) : []),
    ...grounds
      .filter((it) => placesOf(it).some((place) => isNear(place, 0)))
      .map((it): Surface => ({ kind: 'ground-thing', id: it.id })),
    ...(truck !== undefined && isNear(site.truck, truckRadius) ? ([{ kind: 'truck' }] as const) : []),
  ]
}
