/** Time on foot. Walking 1.2 m/s; to a far switch by truck 8 m/s and two minutes (common practice, no source). */
import { distance, type GroundPoint } from '../site/place'
import { groundPointOf, requireItem } from '../site/questions'
import type { ItemId, PersonId } from '../site/scenario'
import type { Site } from '../site/site'

const onFoot = 1.2
const drivesFrom = 100
const driving = 8
const gettingIn = 120

/** So far nobody walks: they take the truck, by the road. */
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
