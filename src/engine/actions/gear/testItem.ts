/** Rolls, flexes, blows up or switches on an item: what it does is told, not what it means. */
import { evidenceOf, gearTypeOf } from '../../site/questions'
import type { Action } from '../action'
import { perceive } from '../changes'
import { handsFree, thingAtHand } from '../conditions'
import { thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { testables } from '../things'

export const testItem: Action = {
  id: 'test-item',
  covers: ['A15', 'A16', 'A17', 'A18', 'A19', 'A20', 'A22'],
  things: testables,
  check: all(thingAtHand, handsFree(2, 'thing'), (site, order) =>
    gearTypeOf(site, thingIn(order)).test === undefined ? refuse(order, 'cannot-be-tested') : undefined,
  ),
  takes: () => 30,
  apply: (site, order) => {
    const id = thingIn(order)
    const found = evidenceOf(site, id, 'test').map((it) => ({ of: id, by: 'test' as const, ...it }))
    return perceive(site, order.who, ...found)
  },
}
