/** Puts the own lock on the handle. */
import { requireSwitch } from '../../site/questions'
import type { Action } from '../action'
import { changeSwitch, finishStep, moveItem, tell } from '../changes'
import { atHand, atSwitch, handsFree } from '../conditions'
import { itemIn, thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { switches } from '../things'

export const lockSwitch: Action = {
  id: 'lock',
  covers: ['A29', 'A30'],
  withTypes: ['lock'],
  things: switches,
  byHand: true,
  check: all(atSwitch, atHand, handsFree(1, 'item'), (site, order) =>
    requireSwitch(site, thingIn(order)).lock === null ? undefined : refuse(order, 'lock-fitted'),
  ),
  takes: () => 15,
  apply: (site, order) => {
    const [lock, device] = [itemIn(order), thingIn(order)]
    const fitted = moveItem(site, lock, { kind: 'fitted' })
    const locked = changeSwitch(fitted, device, { lock, lockedBy: order.who })
    const isSecured = requireSwitch(site, device).tag !== null
    return tell(isSecured ? finishStep(locked, device) : locked, order, device, { lock })
  },
}
