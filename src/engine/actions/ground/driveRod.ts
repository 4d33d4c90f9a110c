/** Drives an earth rod. */
import { gearOf, numberOf } from '../../site/questions'
import type { Action } from '../action'
import { moveItem, tell } from '../changes'
import { atHand, besidePointOfValue, handsFree, isAtHand } from '../conditions'
import { secondsToFetch } from '../fetching'
import { itemIn, numberIn, pointIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { items } from '../things'
import { bothHands } from '../touching'

/** Must stay above ground for the clamp, metres (common practice, no source). */
const stickOut = 0.1

export const driveRod: Action = {
  id: 'drive-rod',
  covers: ['A40'],
  withTypes: ['earth-rod'],
  values: {
    at: { kind: 'point' },
    depth: { kind: 'number', unit: 'metre', low: 0.3, high: 3, step: 0.1 },
  },
  check: all(atHand, besidePointOfValue('at'), handsFree(2, 'item'), (site, order) => {
    const driver = items(site).find((id) => site.items[id]?.type === 'rod-driver' && isAtHand(site, order.who, id))
    if (driver === undefined) return refuse(order, 'driver-missing')
    const length = numberOf(gearOf(site, itemIn(order)).is, 'length')
    return numberIn(order, 'depth') <= length - stickOut ? undefined : refuse(order, 'rod-too-short')
  }),
  takes: (site, order) => 240 + secondsToFetch(site, order.who, itemIn(order)),
  contacts: (_site, order) => bothHands(order.who, { kind: 'rod', item: itemIn(order) }),
  apply: (site, order) => {
    const [item, at, depth] = [itemIn(order), pointIn(order, 'at'), numberIn(order, 'depth')]
    const driven = { ...moveItem(site, item, { kind: 'fitted' }), rods: [...site.rods, { item, at, depth }] }
    return tell(driven, order, `rod/${item}`, { depth })
  },
}
