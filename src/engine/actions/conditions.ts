/** What the world asks before an act: where the person is, what is at hand, how many hands are free. */
import { nearestPole, poleFoot, type PoleName } from '../site/nextPole'
import { distance } from '../site/place'
import {
  findPerson,
  findSwitch,
  freeHands,
  gearTypeOf,
  groundPointOf,
  isAloft,
  requireItem,
  requirePerson,
} from '../site/questions'
import type { ItemId, PersonId, ThingId } from '../site/scenario'
import type { Site } from '../site/site'
import { itemIn, pointIn, thingIn } from './orderValues'
import { findStick, isInReachOfHand, isInReachOfStick } from './reach'
import { isAtTruck, isBucketUp } from '../site/truckState'
import { refuse, type Condition } from './refuse'

/** So far from the pole the tail of the handline is led out, metres (common practice, no source). */
export const ropeReach = 3.5

/** Near enough to lay a hand on something on the ground, metres. */
const armsLength = 1.5

export const onGround: Condition = (site, order) => {
  const person = requirePerson(site, order.who)
  return isAloft(person) ? refuse(order, 'not-on-ground') : undefined
}

/** Up the pole, or in the bucket once that has left the truck. */
export const onPole: Condition = (site, order) => {
  const person = requirePerson(site, order.who)
  if (!isAloft(person)) return refuse(order, 'not-on-pole')
  return isAtRest(site, order.who) ? refuse(order, 'bucket-down') : undefined
}

/** The pole that somebody is on or beside. */
export function poleBy(site: Site, who: PersonId): PoleName | undefined {
  return nearestPole(site.scenario, groundPointOf(site, who))
}

/** Of whatever is touched on the pole there: the next pole is a leg of its own. */
export const legHere = (site: Site, who: PersonId): { readonly leg?: 3 } =>
  poleBy(site, who) === 'next' ? { leg: 3 } : {}

/** In the bucket while that rests on the truck. */
function isAtRest(site: Site, who: PersonId): boolean {
  return requirePerson(site, who).place.kind === 'bucket' && site.truckState !== undefined && !isBucketUp(site)
}

/** On the ground beside the truck. */
export const atTruck: Condition = (site, order) => {
  const person = requirePerson(site, order.who)
  if (isAloft(person)) return refuse(order, 'not-on-ground')
  const isThere = person.place.kind !== 'switch' && isAtTruck(site, groundPointOf(site, order.who))
  return isThere ? undefined : refuse(order, 'not-at-truck')
}

/** On the ground and not at a far switch. */
export const onSite: Condition = (site, order) => {
  const person = requirePerson(site, order.who)
  if (isAloft(person)) return refuse(order, 'not-on-ground')
  return person.place.kind === 'switch' ? refuse(order, 'not-near-pole') : undefined
}

export const nearPole =
  (metres: number): Condition =>
  (site, order) => {
    if (isAloft(requirePerson(site, order.who))) return undefined
    return distance(groundPointOf(site, order.who), poleFoot(site.scenario, poleBy(site, order.who))) <= metres
      ? undefined
      : refuse(order, 'not-near-pole')
  }

/** Somebody on the ground beside the handline, by order of id. */
export function findPersonBelow(site: Site, pole?: PoleName): PersonId | undefined {
  const foot = poleFoot(site.scenario, pole)
  return Object.keys(site.persons).find(
    (id) => !isAloft(requirePerson(site, id)) && distance(groundPointOf(site, id), foot) <= ropeReach,
  )
}

export const atSwitch: Condition = (site, order) => {
  const { place } = requirePerson(site, order.who)
  const isThere = place.kind === 'switch' && place.id === switchOf(thingIn(order))
  return isThere ? undefined : refuse(order, 'not-at-switch')
}

/** `switch-27/A` is a blade of `switch-27`. */
export function switchOf(thing: ThingId): ThingId {
  const slash = thing.indexOf('/')
  return slash < 0 ? thing : thing.slice(0, slash)
}

/** The rod of the order stands in the ground within arm's length. */
export const atRod: Condition = (site, order) => {
  const rod = site.rods.find((it) => `rod/${it.item}` === order.on)
  if (!rod) return refuse(order, 'thing-missing')
  return isBeside(site, order.who, rod.at) ? undefined : refuse(order, 'not-at-rod')
}

/** Beside the rod, or where an earth comes down the pole. */
export const atEarth: Condition = (site, order) => {
  if (thingIn(order).startsWith('rod/')) return atRod(site, order)
  return onGround(site, order) ?? nearPole(2)(site, order)
}

export const besidePointOfValue =
  (name: string): Condition =>
  (site, order) =>
    isBeside(site, order.who, pointIn(order, name)) ? undefined : refuse(order, 'out-of-reach')

function isBeside(site: Site, who: PersonId, at: { readonly x: number; readonly y: number }): boolean {
  const person = requirePerson(site, who)
  return !isAloft(person) && distance(groundPointOf(site, who), at) <= armsLength
}

/**
 * The item can be laid hands on: carried, hanging at the pole top for somebody there, on the tarp or handed over for
 * somebody on the ground.
 */
export function isAtHand(site: Site, who: PersonId, id: ItemId): boolean {
  const { where } = requireItem(site, id)
  const person = requirePerson(site, who)
  if (where.kind === 'person') return where.person === who
  if (where.kind === 'aloft') return isAloft(person) && !isAtRest(site, who) && where.at === poleBy(site, who)
  if (where.kind === 'left') return person.place.kind === 'switch' && person.place.id === where.at
  if (where.kind === 'tarp' || where.kind === 'truck') return !isAloft(person) && person.place.kind !== 'switch'
  return false
}

export const atHand: Condition = (site, order) => whereRefusal(site, order, itemIn(order))

export const thingAtHand: Condition = (site, order) => whereRefusal(site, order, thingIn(order))

function whereRefusal(site: Site, order: Parameters<Condition>[1], id: ItemId): ReturnType<Condition> {
  if (isAtHand(site, order.who, id)) return undefined
  const { where } = requireItem(site, id)
  if (where.kind === 'quarantine') return refuse(order, 'quarantined', { item: id })
  if (where.kind === 'person' && where.person !== order.who && findPerson(site, where.person)) {
    return refuse(order, 'held-by-another', { item: id, person: where.person })
  }
  return refuse(order, 'not-at-hand', { item: id })
}

/** So many hands free, not counting what the act itself uses: its item, and the stick in a stick act. */
export const handsFree =
  (needed: number, ...own: readonly ('item' | 'thing' | 'stick')[]): Condition =>
  (site, order) => {
    const used = new Set<ItemId | undefined>()
    if (own.includes('item')) used.add(order.with)
    if (own.includes('thing')) used.add(order.on)
    if (own.includes('stick')) used.add(findStick(site, order.who))
    const { holds } = requirePerson(site, order.who)
    const freed = holds.filter((id) => used.has(id)).reduce((sum, id) => sum + gearTypeOf(site, id).hands, 0)
    const others = holds.filter((id) => !used.has(id) && gearTypeOf(site, id).hands > 0)
    if (freeHands(site, order.who) + freed >= needed) return undefined
    return refuse(order, 'hands-full', { items: others.join(', ') })
  }

export const inReachOfHand: Condition = (site, order) =>
  isInReachOfHand(site, order.who, thingIn(order)) ? undefined : refuse(order, 'out-of-reach')

/** A stick in the hands or hanging within reach, long enough, and both hands for it. */
export const withStick: Condition = (site, order) => {
  const stick = findStick(site, order.who)
  if (stick === undefined) return refuse(order, 'stick-missing')
  const hands = handsFree(2, 'item', 'stick')(site, order)
  if (hands) return hands
  return isInReachOfStick(site, order.who, stick, thingIn(order)) ? undefined : refuse(order, 'out-of-reach')
}

export const switchKnown: Condition = (site, order) =>
  findSwitch(site, switchOf(thingIn(order))) ? undefined : refuse(order, 'unknown-thing')
