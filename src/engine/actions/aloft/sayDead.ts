/** Says of a conductor that it is dead. */
import type { Action } from '../action'
import { mark, tell } from '../changes'
import { thingIn } from '../orderValues'
import { always } from '../refuse'
import { workedConductors } from '../things'

export const sayDead: Action = {
  id: 'say-dead',
  covers: ['A54'],
  speech: true,
  things: workedConductors,
  check: always,
  takes: () => 5,
  apply: (site, order) => tell(mark(site, `dead:${thingIn(order)}`), order, thingIn(order)),
}
