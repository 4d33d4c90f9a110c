/** Undoes the jumper that carries a conductor past the pole, or makes it good again: with both hands or with the stick. */
import { isOpened } from '../../site/gaps'
import type { ThingId } from '../../site/scenario'
import type { Site } from '../../site/site'
import type { Action, Order } from '../action'
import { tell } from '../changes'
import { handsFree, inReachOfHand, onPole, withStick } from '../conditions'
import { choiceIn, thingIn } from '../orderValues'
import { all, refuse, type Condition } from '../refuse'
import { jumpers } from '../things'
import { stickOnThing, touch, type PersonContact } from '../touching'

const ways = ['by-hand', 'with-stick'] as const

const inReach: Condition = (site, order) =>
  order.values['how'] === 'with-stick' ? withStick(site, order) : all(handsFree(2), inReachOfHand)(site, order)

/** A hand on either end: one holds the conductor, the other the tail. */
function handsOnEnds(site: Site, order: Order): readonly PersonContact[] {
  const id = thingIn(order)
  if (choiceIn(order, 'how') === 'with-stick') return stickOnThing(site, order)
  return [
    touch(order.who, 'left-hand', { kind: 'conductor', id }),
    touch(order.who, 'right-hand', { kind: 'conductor', id, end: 'far' }),
  ]
}

function opened(site: Site, id: ThingId): Site {
  return isOpened(site, id) ? site : { ...site, opened: [...(site.opened ?? []), id].sort() }
}

function closed(site: Site, id: ThingId): Site {
  return isOpened(site, id) ? { ...site, opened: (site.opened ?? []).filter((it) => it !== id) } : site
}

const shared = {
  covers: ['A71'],
  things: jumpers,
  values: { how: { kind: 'choice', many: false, of: () => ways } },
  takes: () => 180,
  contacts: handsOnEnds,
} as const

export const openJumper: Action = {
  ...shared,
  id: 'open-jumper',
  check: all(
    onPole,
    (site, order) => (isOpened(site, thingIn(order)) ? refuse(order, 'already-so') : undefined),
    inReach,
  ),
  joint: (site, order) => opened(site, thingIn(order)),
  apply: (site, order) => tell(opened(site, thingIn(order)), order, thingIn(order)),
}

export const closeJumper: Action = {
  ...shared,
  id: 'close-jumper',
  check: all(
    onPole,
    (site, order) => (isOpened(site, thingIn(order)) ? undefined : refuse(order, 'already-so')),
    inReach,
  ),
  joint: (site, order) => closed(site, thingIn(order)),
  apply: (site, order) => tell(closed(site, thingIn(order)), order, thingIn(order)),
}
