/** Drives an earth rod. */
import { gearOf, numberOf } from '../../site/questions'
import type { Site } from '../../site/site'
import { isGroundTaken } from '../../site/takenGround'
import type { Action, Order } from '../action'
import { moveItem, tell } from '../changes'
import { atHand, besidePointOfValue, handsFree, isAtHand } from '../conditions'
import { secondsToFetch } from '../fetching'
import { itemIn, numberIn, pointIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { items } from '../things'
import { bothHands } from '../touching'

/** Must stay above ground for the clamp, metres (common practice, no source). */
const stickOut = 0.1

function inGround(site: Site, order: Order): Site {
  const [item, at, depth] = [itemIn(order), pointIn(order, 'at'), numberIn(order, 'depth')]
  return { ...site, rods: [...site.rods, { item, at, depth }] }
}

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
    if (isGroundTaken(site, pointIn(order, 'at'))) return refuse(order, 'ground-taken')
    const length = numberOf(gearOf(site, itemIn(order)).is, 'length')
    return numberIn(order, 'depth') <= length - stickOut ? undefined : refuse(order, 'rod-too-short')
  }),
  takes: (site, order) => 240 + secondsToFetch(site, order.who, itemIn(order)),
  contacts: (_site, order) => bothHands(order.who, { kind: 'rod', item: itemIn(order) }),
  joint: (site, order) => (isGroundTaken(site, pointIn(order, 'at')) ? site : inGround(site, order)),
  apply: (site, order) => {
    const [item, depth] = [itemIn(order), numberIn(order, 'depth')]
    return tell(moveItem(inGround(site, order), item, { kind: 'fitted' }), order, `rod/${item}`, { depth })
  },
}
