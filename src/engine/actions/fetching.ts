/** Time on foot. Walking 1.2 m/s; to a far switch by van 8 m/s and two minutes (common practice, no source). */
import { distance, type GroundPoint } from '../site/place'
import { groundPointOf, isAloft, requireItem, requirePerson } from '../site/questions'
import type { ItemId, PersonId } from '../site/scenario'
import type { Site } from '../site/site'

const onFoot = 1.2
const drivesFrom = 100
const driving = 8
const gettingIn = 120

/** So far nobody walks: they take the operator's van, by the road. The truck with the gear stays. */
export const isDriven = (from: GroundPoint, to: GroundPoint): boolean => distance(from, to) > drivesFrom

export function secondsBetween(from: GroundPoint, to: GroundPoint): number {
  const metres = distance(from, to)
  const seconds = isDriven(from, to) ? gettingIn + metres / driving : metres / onFoot
  return Math.max(3, Math.ceil(seconds))
}

/** To the tarp beside the truck and back; nothing when it is already in the hands or hangs there. */
export function secondsToFetch(site: Site, who: PersonId, item: ItemId): number {
  const { where } = requireItem(site, item)
  if (where.kind !== 'tarp' && where.kind !== 'truck') return 0
  return 2 * secondsBetween(groundPointOf(site, who), site.truck)
}

/** The tarp lies beside the truck; who is so near has it before them, metres. */
const besideTarp = 5

/** To the tarp and back, for what is done or put there; nothing for whoever stands beside it, is up the pole or away. */
export function secondsToTarp(site: Site, who: PersonId): number {
  const person = requirePerson(site, who)
  if (isAloft(person) || person.place.kind === 'switch') return 0
  const at = groundPointOf(site, who)
  return distance(at, site.truck) <= besideTarp ? 0 : 2 * secondsBetween(at, site.truck)
}
