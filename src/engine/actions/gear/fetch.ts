/** Goes for an item that was left at a switch, by van where that is far, and comes back with it to where one stood. */
import { findSwitch, gearTypeOf, groundPointOf, requireItem, requirePerson } from '../../site/questions'
import type { GroundPoint } from '../../site/place'
import type { Site } from '../../site/site'
import type { Action, Order } from '../action'
import { putInHands, tell } from '../changes'
import { handsFree, onGround } from '../conditions'
import { secondsBetween } from '../fetching'
import { thingIn } from '../orderValues'
import { pacesOnWay } from '../paces'
import { all, refuse } from '../refuse'
import { items } from '../things'

function findWhereLeft(site: Site, order: Order): GroundPoint | undefined {
  const { where } = requireItem(site, thingIn(order))
  return where.kind === 'left' ? { x: findSwitch(site, where.at)?.along ?? 0, y: 0 } : undefined
}

export const fetch: Action = {
  id: 'fetch',
  covers: ['A14'],
  things: items,
  moves: true,
  check: all(
    onGround,
    (site, order) =>
      findWhereLeft(site, order) ? undefined : refuse(order, 'not-left-there', { item: thingIn(order) }),
    (site, order) => (requirePerson(site, order.who).strapped ? refuse(order, 'strapped') : undefined),
    (site, order) => handsFree(gearTypeOf(site, thingIn(order)).hands)(site, order),
  ),
  takes: (site, order) => {
    const here = groundPointOf(site, order.who)
    return 10 + 2 * secondsBetween(here, findWhereLeft(site, order) ?? here)
  },
  contacts: (site, order) => {
    const here = groundPointOf(site, order.who)
    return pacesOnWay(site, order.who, here, findWhereLeft(site, order) ?? here)
  },
  apply: (site, order) => tell(putInHands(site, thingIn(order), order.who), order, thingIn(order)),
}
