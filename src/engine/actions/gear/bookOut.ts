/** Books an item out of the register, which lies at the tarp, and lays it there. */
import { requireItem } from '../../site/questions'
import type { Action } from '../action'
import { changeItem, tell } from '../changes'
import { onSite } from '../conditions'
import { secondsToTarp } from '../fetching'
import { thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { items } from '../things'

export const bookOut: Action = {
  id: 'book-out',
  covers: ['A14'],
  things: items,
  check: all(onSite, (site, order) => {
    const { bookedOut, bookedIn, where } = requireItem(site, thingIn(order))
    // What was signed in can be signed out again.
    if (bookedOut && !bookedIn) return refuse(order, 'already-so')
    return where.kind === 'fitted' ? refuse(order, 'not-at-hand', { item: thingIn(order) }) : undefined
  }),
  takes: (site, order) => 8 + secondsToTarp(site, order.who),
  apply: (site, order) => {
    const id = thingIn(order)
    const isOnTruck = requireItem(site, id).where.kind === 'truck'
    const out = changeItem(site, id, {
      bookedOut: true,
      bookedIn: false,
      ...(isOnTruck && { where: { kind: 'tarp' } }),
    })
    return tell(out, order, id)
  },
}
