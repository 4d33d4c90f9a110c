/**
 * What every person touches: the standing contacts of where they are, an act's contacts in their place, and between
 * skin and surface what they wear and what is fitted there.
 */
import { gearTypeOf, isAloft, itemsOf, requirePerson } from './questions'
import { isHere } from './presence'
import type { Body, Contact, Limb, Stance, Surface } from './contact'
import { distance, type GroundPoint } from './place'
import type { ItemId, PersonId } from './scenario'
import { poleFoot } from './nextPole'
import type { Person, Site } from './site'
import { feetAt, thighAt } from './stations'
import { bucketPlace } from './truckState'

export interface ActiveContact {
  readonly person: PersonId
  readonly contact: Contact
}

/**
 * @param active contacts of acts in progress: a limb named there leaves its standing contact
 * @param moving persons who walk or climb: their feet take paces
 * @returns one body per person, in order of id
 */
export function bodiesAt(
  site: Site,
  active: readonly ActiveContact[] = [],
  moving: readonly PersonId[] = [],
): readonly Body[] {
  const bodies = Object.values(site.persons)
    .filter(({ id }) => isHere(site, id))
    .map((person): Body => {
      const acting = active.filter((it) => it.person === person.id).map((it) => it.contact)
      const taken = new Set<Limb>(acting.flatMap((it): Limb[] => (it.limb === 'knee' ? ['right-foot'] : [it.limb])))
      const standing = standingContacts(site, person, moving.includes(person.id) ? 'pace' : 'standing')
      const contacts = [...standing.filter((it) => !taken.has(it.limb)), ...acting]
      return { person: person.id, contacts: contacts.map((contact) => withLayers(site, person, contact)) }
    })
  return bodies.map((body) => touchedByOthers(body, bodies))
}

/** Whoever is touched by somebody is touched on the trunk, bare (careful, own choice). */
function touchedByOthers(body: Body, bodies: readonly Body[]): Body {
  const { person, contacts } = body
  const isTouched = bodies.some((other) => {
    return other.contacts.some(({ on }) => on.kind === 'person' && on.id === person)
  })
  return isTouched
    ? { person, contacts: [...contacts, { limb: 'chest', on: { kind: 'person', id: person }, through: [] }] }
    : body
}

function standingContacts(site: Site, person: Person, stance: Stance): readonly Contact[] {
  const { place } = person
  if (place.kind === 'bucket') return bothFeet({ kind: 'bucket' })
  if (place.kind === 'pole' && place.station !== 'foot') {
    const { pole } = site.scenario
    const leg = place.pole === 'next' ? ({ leg: 3 } as const) : {}
    return [
      ...bothFeet({ kind: 'step-bolt', height: feetAt(pole, place.station), ...leg }),
      { limb: 'thigh', on: { kind: 'pole', height: thighAt(pole, place.station), ...leg }, through: [] },
    ]
  }
  return bothFeet({ kind: 'ground', at: standingPoint(site, person.id), stance })
}

/** At the foot one stands half a metre beside the pole's axis, on the road side; at a switch under its handle. */
export function standingPoint(site: Site, person: PersonId): GroundPoint {
  const { place } = requirePerson(site, person)
  if (place.kind === 'ground') return place.at
  if (place.kind === 'bucket') return bucketPlace(site).at
  if (place.kind === 'pole') return { x: poleFoot(site.scenario, place.pole).x, y: 0.5 }
  const along = site.scenario.switches.find((it) => it.id === place.id)?.along ?? 0
  return { x: along, y: 0.5 }
}

function bothFeet(on: Surface): readonly Contact[] {
  return [
    { limb: 'left-foot', on, through: [] },
    { limb: 'right-foot', on, through: [] },
  ]
}

function withLayers(site: Site, person: Person, contact: Contact): Contact {
  const layers = [...wornOn(site, person, contact.limb), ...contact.through, ...fittedOn(site, person, contact)]
  return { ...contact, through: [...new Set(layers)] }
}

/** Who stands still within half its width of a laid platform stands on it; who takes a pace steps off (own choice). */
const platformHalf = 0.4

function platformAt({ platforms = [] }: Site, at: GroundPoint): readonly ItemId[] {
  return platforms.filter((it) => distance(it.at, at) <= platformHalf).map((it) => it.item)
}

/** On the skin first, then what is worn over it. */
function wornOn(site: Site, person: Person, limb: Limb): readonly ItemId[] {
  const part = limb.endsWith('-foot') ? 'feet' : limb.endsWith('-hand') ? 'hands' : undefined
  if (part === undefined) return []
  return [part, `over-${part}`].flatMap((it) => person.wears.filter((id) => gearTypeOf(site, id).worn === it))
}

/** A cover in force at that height, the guard of that wire, the mat that one stands on. */
function fittedOn(site: Site, person: Person, contact: Contact): readonly ItemId[] {
  const { on } = contact
  if (on.kind === 'pole') {
    const cover = site.cover
    const isRound = cover !== null && (cover.pole === 'next') === (on.leg === 3)
    return isRound && on.height >= cover.from && on.height <= cover.to ? [cover.item] : []
  }
  if (on.kind === 'lv-wire') return site.guards.filter((guard) => guard.on === on.id).map((guard) => guard.item)
  if (on.kind === 'ground' && person.onMat && !isAloft(person)) {
    return itemsOf(site, 'operator-mat').filter((id) => site.items[id]?.where.kind === 'fitted')
  }
  if (on.kind === 'ground' && on.stance === 'standing') return platformAt(site, on.at)
  return []
}
