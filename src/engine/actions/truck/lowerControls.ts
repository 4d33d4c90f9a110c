/** The lower controls: tried before anybody goes up, and used to bring the bucket home from the ground. */
import { effectiveParameters, itemsOf, requireItem, requirePerson } from '../../site/questions'
import type { Site } from '../../site/site'
import { bucketPlace, isBucketUp } from '../../site/truckState'
import type { Action } from '../action'
import { mark, perceive, tell } from '../changes'
import { atTruck, handsFree } from '../conditions'
import { all, refuse } from '../refuse'
import { secondsOfBoom } from './boomReach'
import { buckets, changeTruck, handOnTruck } from './truckActs'

/** Answered by the boom; where the register names it, as it really is. */
function doAnswer(site: Site): boolean {
  return itemsOf(site, 'bucket-boom').every(
    (id) => effectiveParameters(requireItem(site, id))['lowerControls'] !== false,
  )
}

export const tryLowerControls: Action = {
  id: 'try-lower-controls',
  covers: ['A22'],
  things: buckets,
  check: all(atTruck, handsFree(1), (site, order) => (isBucketUp(site) ? refuse(order, 'bucket-up') : undefined)),
  takes: () => 60,
  contacts: handOnTruck,
  apply: (site, order) =>
    perceive(mark(site, 'lower-controls-tried'), order.who, {
      of: 'bucket',
      by: 'test',
      says: doAnswer(site) ? 'feel.controls-answer' : 'feel.controls-dead',
    }),
}

/** By whoever is in it, or by somebody at the truck with the lower controls. */
export const stowBucket: Action = {
  id: 'stow-bucket',
  covers: ['A22', 'A77'],
  things: buckets,
  check: (site, order) => {
    if (!isBucketUp(site)) return refuse(order, 'already-so')
    if (requirePerson(site, order.who).place.kind === 'bucket') return undefined
    return (
      atTruck(site, order) ?? handsFree(1)(site, order) ?? (doAnswer(site) ? undefined : refuse(order, 'controls-dead'))
    )
  },
  takes: (site) => secondsOfBoom(bucketPlace(site), bucketPlace(changeTruck(site, { bucket: null }))),
  contacts: (site, order) => (requirePerson(site, order.who).place.kind === 'bucket' ? [] : handOnTruck(site, order)),
  apply: (site, order) => tell(changeTruck(site, { bucket: null }), order, 'bucket'),
}
