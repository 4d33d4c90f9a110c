/** Signs an item back into the register and stows it. */
import { requireItem } from '../../site/questions'
import type { ItemId } from '../../site/scenario'
import type { Site } from '../../site/site'
import type { Action } from '../action'
import { changeItem, moveItem, tell } from '../changes'
import { onSite } from '../conditions'
import { thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { items } from '../things'

/** Signs and cones that still stand are collected from the road on the way. */
const isRoadSign = (site: Site, id: ItemId): boolean => requireItem(site, id).type === 'sign-set'

export const bookIn: Action = {
  id: 'book-in',
  covers: ['A85'],
  things: items,
  check: all(onSite, (site, order) => {
    const { bookedIn, bookedOut, where } = requireItem(site, thingIn(order))
    if (!bookedOut) return refuse(order, 'not-booked-out')
    if (bookedIn) return refuse(order, 'already-so')
    if (where.kind === 'person' && where.person !== order.who) return refuse(order, 'held-by-another', { item: thingIn(order), person: where.person })
    const isAway = (where.kind === 'fitted' && !isRoadSign(site, thingIn(order))) || where.kind === 'aloft' || where.kind === 'handline'
    return isAway
      ? refuse(order, 'not-at-hand', { item: thingIn(order) })
      : undefined
  }),
  takes: (site, order) => (requireItem(site, thingIn(order)).where.kind === 'fitted' ? 120 : 8),
  apply: (site, order) => {
    const id = thingIn(order)
    const isSetAside = requireItem(site, id).where.kind === 'quarantine'
    const stowed = isSetAside ? site : moveItem(site, id, { kind: 'truck' })
    return tell(changeItem(stowed, id, { bookedIn: true }), order, id)
  },
}
