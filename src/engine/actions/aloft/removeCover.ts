/** Takes the cover off the pole. */
import type { Action } from '../action'
import { hangingBy, moveItem, tell } from '../changes'
import { handsFree, legHere, onPole, poleBy } from '../conditions'
import { findReachOnPole } from '../reach'
import { all, refuse } from '../refuse'
import { touch } from '../touching'

export const removeCover: Action = {
  id: 'remove-cover',
  covers: ['A80'],
  things: () => ['cover'],
  check: all(onPole, handsFree(2), (site, order) => {
    if (!site.cover) return refuse(order, 'thing-missing')
    const arms = findReachOnPole(site, order.who)
    return arms &&
      site.cover.pole === poleBy(site, order.who) &&
      site.cover.from >= arms.low &&
      site.cover.to <= arms.high
      ? undefined
      : refuse(order, 'out-of-reach')
  }),
  takes: () => 60,
  contacts: (site, order) => [
    touch(order.who, 'left-hand', { kind: 'pole', height: site.cover?.from ?? 0, ...legHere(site, order.who) }),
    touch(order.who, 'right-hand', { kind: 'pole', height: site.cover?.to ?? 0, ...legHere(site, order.who) }),
  ],
  apply: (site, order) => {
    const item = site.cover?.item ?? ''
    return tell(moveItem({ ...site, cover: null }, item, hangingBy(site, order.who)), order, item)
  },
}
