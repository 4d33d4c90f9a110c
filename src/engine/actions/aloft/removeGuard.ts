/** Takes the guard off a low-voltage wire, back into the bag. */
import type { Site } from '../../site/site'
import type { Action } from '../action'
import { putInHands, tell } from '../changes'
import { handsFree, inReachOfHand, onPole } from '../conditions'
import { thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { lvWires } from '../things'
import { bothHands, surfaceOf } from '../touching'

export const removeGuard: Action = {
  id: 'remove-guard',
  covers: ['A83'],
  things: lvWires,
  check: all(onPole, handsFree(2), inReachOfHand, (site, order) =>
    site.guards.some((guard) => guard.on === order.on) ? undefined : refuse(order, 'not-fitted-there'),
  ),
  takes: () => 40,
  contacts: (site, order) => bothHands(order.who, surfaceOf(site, thingIn(order))),
  apply: (site, order) => {
    const off = site.guards.filter((guard) => guard.on === order.on)
    const bare: Site = { ...site, guards: site.guards.filter((guard) => guard.on !== order.on) }
    return tell(
      off.reduce<Site>((next, guard) => putInHands(next, guard.item, order.who), bare),
      order,
      thingIn(order),
    )
  },
}
