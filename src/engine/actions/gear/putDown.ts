/** Puts down what is in the hands: on the tarp, on a hook up the pole, or where one stands at a switch. */
import { requirePerson } from '../../site/questions'
import type { Action } from '../action'
import { putDownHere, tell } from '../changes'
import { secondsToTarp } from '../fetching'
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
  takes: (site, order) => 5 + secondsToTarp(site, order.who),
  apply: (site, order) => tell(putDownHere(site, thingIn(order), order.who), order, thingIn(order)),
}
