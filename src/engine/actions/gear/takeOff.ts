/** Takes off what is worn; away at a switch it stays in the hands. */
import { freeHands, gearTypeOf, isAloft, requirePerson } from '../../site/questions'
import type { Action } from '../action'
import { putDownHere, putInHands, tell } from '../changes'
import { secondsToTarp } from '../fetching'
import { thingIn } from '../orderValues'
import { refuse } from '../refuse'
import { wearables } from '../things'
import { isOnHands, isOnLegs } from './wear'

export const takeOff: Action = {
  id: 'take-off',
  covers: ['A38'],
  things: wearables,
  check: (site, order) => {
    const person = requirePerson(site, order.who)
    if (!person.wears.includes(thingIn(order))) return refuse(order, 'not-worn')
    const part = gearTypeOf(site, thingIn(order)).worn
    if (part === 'body' && person.strapped) return refuse(order, 'strapped')
    const over = person.wears.find((id) => gearTypeOf(site, id).worn === `over-${part}`)
    if (over !== undefined) return refuse(order, 'under-another', { item: over })
    return isOnLegs(part) && isAloft(person) ? refuse(order, 'not-on-ground') : undefined
  },
  takes: (site, order) => (isOnHands(gearTypeOf(site, thingIn(order)).worn) ? 10 : 40) + secondsToTarp(site, order.who),
  apply: (site, order) => {
    const id = thingIn(order)
    const isAway = requirePerson(site, order.who).place.kind === 'switch'
    const isKept = isAway && freeHands(site, order.who) >= gearTypeOf(site, id).hands
    return tell(isKept ? putInHands(site, id, order.who) : putDownHere(site, id, order.who), order, id)
  },
}
