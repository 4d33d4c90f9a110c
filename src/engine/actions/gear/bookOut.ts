/** Signs an item out of the register and lays it on the tarp. */
import { requireItem } from '../../site/questions'
import type { Action } from '../action'
import { changeItem, tell } from '../changes'
import { onSite } from '../conditions'
import { thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { items } from '../things'

export const bookOut: Action = {
  id: 'book-out',
  covers: ['A14'],
  things: items,
  check: all(onSite, (site, order) => {
    const { bookedOut } = requireItem(site, thingIn(order))
    return bookedOut ? refuse(order, 'already-so') : undefined
  }),
  takes: () => 8,
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
