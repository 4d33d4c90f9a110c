/** Questions about a truck with a bucket. A place whose truck has none answers that nothing is amiss. */
import { isUnsound, requireItem } from '../../site/questions'
import { isInside } from '../../site/place'
import { isBucketUp } from '../../site/truckState'
import type { Site } from '../../site/site'
import type { SitePredicate } from '../language/predicate'

const bucketUp: SitePredicate = {
  id: 'bucket-up',
  says: 'the bucket has left the truck',
  about: 'site',
  takes: {},
  fails: ({ site }) => (isBucketUp(site) ? undefined : { why: 'bucket-down' }),
}

const truckBonded: SitePredicate = {
  id: 'truck-bonded',
  says: 'a lead joins the truck to an earth',
  about: 'site',
  takes: {},
  fails: ({ site }) => (site.clamps.some(({ end }) => end === 'truck') ? undefined : { why: 'truck-not-bonded' }),
}

const truckInsideBarrier: SitePredicate = {
  id: 'truck-inside-barrier',
  says: 'the truck stands inside the barrier',
  about: 'site',
  takes: {},
  fails({ site: { barrier, truck } }) {
    if (barrier === null) return { why: 'no-barrier' }
    return isInside(barrier, truck) ? undefined : { why: 'truck-outside' }
  },
}

const boomPassed: SitePredicate = {
  id: 'boom-passed',
  says: 'the boom of the register was looked over and passed, and there was nothing to be found',
  about: 'site',
  takes: {},
  fails({ site }) {
    const boom = boomsOf(site).find((id) => requireItem(site, id).verdict !== 'pass' || isUnsound(site, id))
    return boom === undefined ? undefined : { why: 'boom-not-passed', item: boom }
  },
}

const boomsOf = (site: Site): readonly string[] =>
  Object.values(site.items)
    .filter(({ type }) => type === 'bucket-boom')
    .map(({ id }) => id)

export const truckPredicates = [bucketUp, truckBonded, truckInsideBarrier, boomPassed]
