/** Puts down what is in the hands: on the tarp, or on a hook up the pole. */
import { isAloft, requirePerson } from '../../site/questions'
import type { Action } from '../action'
import { moveItem, tell } from '../changes'
import { thingIn } from '../orderValues'
import { refuse } from '../refuse'
import { items } from '../things'

export const putDown: Action = {
  id: 'put-down',
  covers: ['A14', 'A49'],
  things: items,
  check: (site, order) => {
    const { holds } = requirePerson(site, order.who)
    return holds.includes(thingIn(order)) ? undefined : refuse(order, 'not-at-hand', { item: thingIn(order) })
  },
  takes: () => 5,
  apply: (site, order) => {
    const kind = isAloft(requirePerson(site, order.who)) ? 'aloft' : 'tarp'
    return tell(moveItem(site, thingIn(order), { kind }), order, thingIn(order))
  },
}
