/** Lowers an item on the handline; somebody below takes it off the rope and carries it to the tarp. */
import { clampsOf, isAloft, requireItem, requirePerson } from '../../site/questions'
import type { Action } from '../action'
import { moveItem, tell } from '../changes'
import { findPersonBelow, handsFree, onPole, poleBy } from '../conditions'
import { secondsToTarp } from '../fetching'
import { thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { items } from '../things'

export const lower: Action = {
  id: 'lower',
  covers: ['A49', 'A82'],
  things: items,
  check: all(onPole, handsFree(2, 'thing'), (site, order) => {
    const id = thingIn(order)
    const { where, type } = requireItem(site, id)
    const isMine = where.kind === 'person' && where.person === order.who
    const pole = poleBy(site, order.who)
    const isHere = where.kind === 'aloft' && where.at === pole
    if (!isHere && !isMine) return refuse(order, 'not-at-hand', { item: id })
    if (requirePerson(site, order.who).wears.includes(id)) return refuse(order, 'not-at-hand', { item: id })
    const isOn = clampsOf(site, id).some((clamp) => clamp.end !== 'earth')
    if (isOn) return refuse(order, 'lead-still-on', { item: id })
    const hasLine = Object.values(site.items).some(
      (it) => it.type === 'handline' && ((it.where.kind === 'aloft' && it.where.at === pole) || isHeldAloft(it.where)),
    )
    if (!hasLine || type === 'handline') return refuse(order, 'handline-missing')
    return findPersonBelow(site, pole) === undefined ? refuse(order, 'nobody-below') : undefined

    function isHeldAloft(place: typeof where): boolean {
      return (
        place.kind === 'person' && isAloft(requirePerson(site, place.person)) && poleBy(site, place.person) === pole
      )
    }
  }),
  takes: (site, order) => {
    const below = findPersonBelow(site, poleBy(site, order.who))
    return 40 + (below === undefined ? 0 : secondsToTarp(site, below))
  },
  apply: (site, order) => {
    const id = thingIn(order)
    const isEarthEndOn = clampsOf(site, id).length > 0
    const down = moveItem(site, id, { kind: isEarthEndOn ? 'fitted' : 'tarp' })
    return tell({ ...down, hauled: down.hauled.filter((it) => it !== id) }, order, id)
  },
}
