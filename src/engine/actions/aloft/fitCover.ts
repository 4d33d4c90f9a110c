/** Wraps an insulating cover round the pole between two heights. */
import { gearOf, numberOf } from '../../site/questions'
import type { Action } from '../action'
import { moveItem, tell } from '../changes'
import { atHand, handsFree, legHere, onPole, poleBy } from '../conditions'
import { itemIn, numberIn } from '../orderValues'
import { findReachOnPole } from '../reach'
import { all, refuse } from '../refuse'
import { touch } from '../touching'

export const fitCover: Action = {
  id: 'fit-cover',
  covers: ['A62', 'A63'],
  withTypes: ['blanket', 'pole-cover'],
  values: {
    from: { kind: 'number', unit: 'metre', low: 0.5, high: 14, step: 0.1 },
    to: { kind: 'number', unit: 'metre', low: 0.5, high: 14, step: 0.1 },
  },
  byHand: true,
  check: all(onPole, atHand, handsFree(2, 'item'), (site, order) => {
    if (site.cover) return refuse(order, 'already-so')
    const [from, to] = [numberIn(order, 'from'), numberIn(order, 'to')]
    const length = numberOf(gearOf(site, itemIn(order)).is, 'length')
    if (to <= from || to - from > length) return refuse(order, 'cover-too-short', { metres: length })
    const arms = findReachOnPole(site, order.who)
    return arms && from >= arms.low && to <= Math.min(arms.high, site.scenario.pole.height)
      ? undefined
      : refuse(order, 'out-of-reach')
  }),
  takes: () => 120,
  contacts: (site, order) => [
    touch(order.who, 'left-hand', { kind: 'pole', height: numberIn(order, 'from'), ...legHere(site, order.who) }),
    touch(order.who, 'right-hand', { kind: 'pole', height: numberIn(order, 'to'), ...legHere(site, order.who) }),
  ],
  apply: (site, order) => {
    const [item, from, to] = [itemIn(order), numberIn(order, 'from'), numberIn(order, 'to')]
    const pole = poleBy(site, order.who)
    const fitted = moveItem(site, item, { kind: 'fitted' })
    return tell(
      { ...fitted, cover: { item, from, to, checked: false, ...(pole === undefined ? {} : { pole }) } },
      order,
      'cover',
      { item, from, to },
    )
  },
}
