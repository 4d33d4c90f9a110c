/** Puts the own lock on the handle of a switch, or on a main switch on low voltage once that is open. */
import { requireSwitch } from '../../site/questions'
import type { Action } from '../action'
import { changeSwitch, finishStep, moveItem, tell } from '../changes'
import { atHand, atSwitch, handsFree } from '../conditions'
import { atMain, canGetAt, changeMain, isMain, mains, requireMain } from '../mains'
import { itemIn, thingIn } from '../orderValues'
import { all, refuse, type Condition } from '../refuse'
import { switches } from '../things'

const isFree: Condition = (site, order) => {
  const thing = thingIn(order)
  if (!isMain(site, thing)) return requireSwitch(site, thing).lock === null ? undefined : refuse(order, 'lock-fitted')
  const { lock, position } = requireMain(site, thing)
  if (lock !== null) return refuse(order, 'lock-fitted')
  return position === 'open' ? undefined : refuse(order, 'not-open')
}

export const atHandle: Condition = (site, order) =>
  (isMain(site, thingIn(order)) ? all(atMain, canGetAt) : atSwitch)(site, order)

export const lockSwitch: Action = {
  id: 'lock',
  covers: ['A29', 'A30'],
  withTypes: ['lock'],
  things: (site) => [...switches(site), ...mains(site)],
  byHand: true,
  check: all(atHandle, atHand, handsFree(1, 'item'), isFree),
  takes: () => 15,
  apply: (site, order) => {
    const [lock, device] = [itemIn(order), thingIn(order)]
    const fitted = moveItem(site, lock, { kind: 'fitted' })
    if (isMain(site, device)) {
      return tell(changeMain(fitted, device, { lock, lockedBy: order.who }), order, device, { lock })
    }
    const locked = changeSwitch(fitted, device, { lock, lockedBy: order.who })
    const isSecured = requireSwitch(site, device).tag !== null
    return tell(isSecured ? finishStep(locked, device) : locked, order, device, { lock })
  },
}
