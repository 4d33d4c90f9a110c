/** Takes an item into the hands, fetching it from the tarp if it lies there. */
import { gearTypeOf, requirePerson } from '../../site/questions'
import type { Action } from '../action'
import { putInHands, tell } from '../changes'
import { handsFree, thingAtHand } from '../conditions'
import { secondsToFetch } from '../fetching'
import { thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { items } from '../things'

export const take: Action = {
  id: 'take',
  covers: ['A14', 'A49'],
  things: items,
  moves: true,
  check: all(
    thingAtHand,
    (site, order) => {
      const { holds, wears } = requirePerson(site, order.who)
      return [...holds, ...wears].includes(thingIn(order)) ? refuse(order, 'already-so') : undefined
    },
    (site, order) => handsFree(gearTypeOf(site, thingIn(order)).hands)(site, order),
  ),
  takes: (site, order) => secondsToFetch(site, order.who, thingIn(order)) + 5,
  apply: (site, order) => tell(putInHands(site, thingIn(order), order.who), order, thingIn(order)),
}
