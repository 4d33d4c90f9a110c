/** Puts a guard over a low-voltage wire. */
import type { Action } from '../action'
import { moveItem, tell } from '../changes'
import { atHand, handsFree, inReachOfHand, onPole } from '../conditions'
import { itemIn, thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { lvWires } from '../things'
import { bothHands, surfaceOf } from '../touching'

export const fitGuard: Action = {
  id: 'fit-guard',
  covers: ['A47'],
  withTypes: ['lv-guard'],
  things: lvWires,
  byHand: true,
  check: all(onPole, atHand, handsFree(2, 'item'), inReachOfHand, (site, order) =>
    site.guards.some((guard) => guard.on === order.on) ? refuse(order, 'already-so') : undefined,
  ),
  takes: () => 60,
  contacts: (site, order) => bothHands(order.who, surfaceOf(site, thingIn(order))),
  apply: (site, order) => {
    const [item, on] = [itemIn(order), thingIn(order)]
    const fitted = moveItem(site, item, { kind: 'fitted' })
    return tell({ ...fitted, guards: [...site.guards, { item, on }] }, order, on, { item })
  },
}
