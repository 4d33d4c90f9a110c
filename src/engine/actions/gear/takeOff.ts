/** Takes off what is worn. */
import { gearTypeOf, isAloft, requirePerson } from '../../site/questions'
import type { Action } from '../action'
import { moveItem, tell } from '../changes'
import { thingIn } from '../orderValues'
import { refuse } from '../refuse'
import { wearables } from '../things'

export const takeOff: Action = {
  id: 'take-off',
  covers: ['A38'],
  things: wearables,
  check: (site, order) => {
    const person = requirePerson(site, order.who)
    if (!person.wears.includes(thingIn(order))) return refuse(order, 'not-worn')
    const part = gearTypeOf(site, thingIn(order)).worn
    if (part === 'body' && person.strapped) return refuse(order, 'strapped')
    return part === 'feet' && isAloft(person) ? refuse(order, 'not-on-ground') : undefined
  },
  takes: (site, order) => (gearTypeOf(site, thingIn(order)).worn === 'hands' ? 10 : 40),
  apply: (site, order) => {
    const kind = isAloft(requirePerson(site, order.who)) ? 'aloft' : 'tarp'
    return tell(moveItem(site, thingIn(order), { kind }), order, thingIn(order))
  },
}
