/** Questions about a site that have one answer each. All of them may see hidden truth: views use Belief instead. */
import { requireGearType } from '../gear/catalogue'
import type { FoundBy, GearDefect, GearType } from '../gear/gearType'
import { invariant } from '../units/invariant'
import { poleFoot } from './nextPole'
import type { GroundPoint } from './place'
import { bucketPlace } from './truckState'
import type { ItemId, PersonId, ScenarioPerson, ScenarioSwitch, ThingId } from './scenario'
import type { Clamp, Item, Person, Site, SwitchState } from './site'

export type Parameters = Readonly<Record<string, number | string | boolean>>

/** @throws InvariantError for an unknown id; orders are checked before. */
export function requirePerson(site: Site, id: PersonId): Person {
  const person = site.persons[id]
  invariant(person, 'a person of the crew', id)
  return person
}

export function findPerson(site: Site, id: PersonId): Person | undefined {
  return Object.hasOwn(site.persons, id) ? site.persons[id] : undefined
}

/** What the scenario says of a person: role, weight, boot size. */
export function crewMember(site: Site, id: PersonId): ScenarioPerson {
  const member = site.scenario.crew.find((it) => it.id === id)
  invariant(member, 'a person of the crew', id)
  return member
}

export function requireItem(site: Site, id: ItemId): Item {
  const item = site.items[id]
  invariant(item, 'an item of the register', id)
  return item
}

export function findItem(site: Site, id: ItemId): Item | undefined {
  return Object.hasOwn(site.items, id) ? site.items[id] : undefined
}

export function requireSwitch(site: Site, id: ThingId): SwitchState {
  const state = site.switches[id]
  invariant(state, 'a switch of the section', id)
  return state
}

export function findSwitch(site: Site, id: ThingId): ScenarioSwitch | undefined {
  return site.scenario.switches.find((it) => it.id === id)
}

/** Ids of all items of a type, sorted. */
export function itemsOf(site: Site, type: string): readonly ItemId[] {
  return Object.values(site.items)
    .filter((item) => item.type === type)
    .map((item) => item.id)
}

/** The first item of a type that the person holds or wears. */
export function carriedOf(site: Site, person: PersonId, type: string): ItemId | undefined {
  const { holds, wears } = requirePerson(site, person)
  return [...holds, ...wears].find((id) => site.items[id]?.type === type)
}

export function gearTypeOf(site: Site, item: ItemId): GearType {
  return requireGearType(requireItem(site, item).type)
}

/** 2 less what is held; what is worn, holstered or hung on the belt fills no hand. */
export function freeHands(site: Site, person: PersonId): number {
  return requirePerson(site, person).holds.reduce((free, item) => free - gearTypeOf(site, item).hands, 2)
}

/**
 * What the item really does: the catalogue, then its label, then what is wrong with it.
 * @param end of a lead: what is wrong there counts as well, and nowhere else
 */
export function effectiveParameters(item: Pick<Item, 'type' | 'label' | 'defects'>, end?: string): Parameters {
  const type = requireGearType(item.type)
  const isHere = (it: GearDefect): boolean => it.end === undefined || it.end === end
  const changes = item.defects.flatMap((id) =>
    type.defects.filter((it) => it.id === id && isHere(it)).map((it) => it.changes),
  )
  return Object.assign({}, type.parameters, item.label, ...changes) as Parameters
}

/** Catalogue entry and effective parameters. */
export function gearOf(site: Site, item: ItemId): { readonly type: GearType; readonly is: Parameters } {
  return { type: gearTypeOf(site, item), is: effectiveParameters(requireItem(site, item)) }
}

/** A parameter that must be a number. */
export function numberOf(parameters: Parameters, name: string): number {
  const value = parameters[name]
  invariant(typeof value === 'number', `a number ${name}`, value)
  return value
}

/** The label's due date is before the day of the job (ISO dates compare as text). No date: never overdue. */
export function isOverdue(item: Pick<Item, 'label'>, date: string): boolean {
  const { due } = item.label
  return typeof due === 'string' && due < date
}

/** A lock keeps a switch as it is only if it holds and nobody else has a key to it. */
export function isLockedBy(site: Site, lock: ItemId | null | undefined): boolean {
  if (lock === null || lock === undefined) return false
  const item = findItem(site, lock)
  const is = item && effectiveParameters(item)
  return is?.['holds'] !== false && is?.['own'] !== false
}

/** Truth: something is wrong with it. A harmless mark is nothing wrong. */
export function isUnsound(site: Site, id: ItemId): boolean {
  const item = requireItem(site, id)
  const wrong = gearTypeOf(site, id).defects.some(
    (it) => item.defects.includes(it.id) && Object.keys(it.changes).length > 0,
  )
  return wrong || item.faulted || item.failed || isOverdue(item, site.scenario.date)
}

/** What a look, the label or a test tells of an item, as keys of words with values; never a verdict. */
export function evidenceOf(
  site: Site,
  id: ItemId,
  by: FoundBy,
): readonly { readonly says: string; readonly values: Readonly<Record<string, string | number>> }[] {
  const item = requireItem(site, id)
  if (by === 'label') return [{ says: 'gear.label', values: item.label }]
  const found = gearTypeOf(site, id).defects.filter((it) => it.foundBy === by && item.defects.includes(it.id))
  const said: { says: string; values: Readonly<Record<string, string>> }[] = found.map((it) => ({
    says: it.evidence,
    values: it.end === undefined ? {} : { end: it.end },
  }))
  if (by === 'look' && item.failed) said.push({ says: 'gear.look.burnt', values: {} })
  return said.length > 0 ? said : [{ says: `gear.${item.type}.${by}.sound`, values: {} }]
}

/** Clamps of a lead or bond, or on a thing. */
export function clampsOf(site: Site, lead: ItemId): readonly Clamp[] {
  return site.clamps.filter((clamp) => clamp.lead === lead)
}

export function clampsOn(site: Site, thing: ThingId): readonly Clamp[] {
  return site.clamps.filter((clamp) => clamp.on === thing)
}

/** Where a person stands on the ground plane; the pole is the origin. */
export function groundPointOf(site: Site, person: PersonId): GroundPoint {
  const { place } = requirePerson(site, person)
  if (place.kind === 'ground') return place.at
  if (place.kind === 'bucket') return bucketPlace(site).at
  if (place.kind === 'pole') return poleFoot(site.scenario, place.pole)
  return { x: findSwitch(site, place.id)?.along ?? 0, y: 0 }
}

export function isAloft(person: Person): boolean {
  const { place } = person
  return place.kind === 'bucket' || (place.kind === 'pole' && place.station !== 'foot')
}
