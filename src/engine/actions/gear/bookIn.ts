/** Signs an item back into the register and stows it. */
import { requireItem } from '../../site/questions'
import type { Action } from '../action'
import { changeItem, moveItem, tell } from '../changes'
import { onSite } from '../conditions'
import { thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { items } from '../things'

export const bookIn: Action = {
  id: 'book-in',
  covers: ['A85'],
  things: items,
  check: all(onSite, (site, order) => {
    const { bookedIn, bookedOut, where } = requireItem(site, thingIn(order))
    if (!bookedOut) return refuse(order, 'not-booked-out')
    if (bookedIn) return refuse(order, 'already-so')
    if (where.kind === 'person' && where.person !== order.who) return refuse(order, 'held-by-another', { item: thingIn(order), person: where.person })
    return where.kind === 'fitted' || where.kind === 'aloft' || where.kind === 'handline'
      ? refuse(order, 'not-at-hand', { item: thingIn(order) })
      : undefined
  }),
  takes: () => 8,
  apply: (site, order) => {
    const id = thingIn(order)
    const isSetAside = requireItem(site, id).where.kind === 'quarantine'
    const stowed = isSetAside ? site : moveItem(site, id, { kind: 'truck' })
    return tell(changeItem(stowed, id, { bookedIn: true }), order, id)
  },
}
