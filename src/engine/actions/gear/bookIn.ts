/** Books an item back into the register and stows it; the register lies at the tarp. */
import { isAloft, requireItem, requirePerson } from '../../site/questions'
import type { ItemId, PersonId } from '../../site/scenario'
import type { Site } from '../../site/site'
import type { Action } from '../action'
import { changeItem, moveItem, tell } from '../changes'
import { onSite } from '../conditions'
import { secondsToTarp } from '../fetching'
import { thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { items } from '../things'

/** Signs and cones that still stand are collected from the road on the way. */
const isRoadSign = (site: Site, id: ItemId): boolean => requireItem(site, id).type === 'sign-set'

/** Whoever has it in the hands stands on site to hand it over. */
function isHandedOver(site: Site, id: ItemId, holder: PersonId): boolean {
  const person = requirePerson(site, holder)
  return person.holds.includes(id) && !isAloft(person) && person.place.kind !== 'switch'
}

export const bookIn: Action = {
  id: 'book-in',
  covers: ['A85'],
  things: items,
  check: all(onSite, (site, order) => {
    const { bookedIn, bookedOut, where } = requireItem(site, thingIn(order))
    if (!bookedOut) return refuse(order, 'not-booked-out')
    if (bookedIn) return refuse(order, 'already-so')
    if (where.kind === 'person' && !isHandedOver(site, thingIn(order), where.person))
      return refuse(order, 'held-by-another', { item: thingIn(order), person: where.person })
    const isAway =
      (where.kind === 'fitted' && !isRoadSign(site, thingIn(order))) ||
      where.kind === 'aloft' ||
      where.kind === 'left' ||
      where.kind === 'handline'
    return isAway ? refuse(order, 'not-at-hand', { item: thingIn(order) }) : undefined
  }),
  takes: (site, order) =>
    (requireItem(site, thingIn(order)).where.kind === 'fitted' ? 120 : 8) + secondsToTarp(site, order.who),
  apply: (site, order) => {
    const id = thingIn(order)
    const isSetAside = requireItem(site, id).where.kind === 'quarantine'
    const stowed = isSetAside ? site : moveItem(site, id, { kind: 'truck' })
    return tell(changeItem(stowed, id, { bookedIn: true }), order, id)
  },
}
