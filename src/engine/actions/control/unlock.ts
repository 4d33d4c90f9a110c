/** Takes the own lock off the handle: the key is with whoever put it on. */
import { requireSwitch } from '../../site/questions'
import type { Action } from '../action'
import { changeSwitch, putInHands, tell } from '../changes'
import { atSwitch, handsFree } from '../conditions'
import { thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { switches } from '../things'

export const unlock: Action = {
  id: 'unlock',
  covers: ['A89'],
  things: switches,
  check: all(atSwitch, handsFree(1), (site, order) => {
    const { lock, lockedBy } = requireSwitch(site, thingIn(order))
    if (lock === null) return refuse(order, 'already-so')
    return lockedBy === order.who ? undefined : refuse(order, 'key-not-here')
  }),
  takes: () => 15,
  apply: (site, order) => {
    const device = thingIn(order)
    const { lock } = requireSwitch(site, device)
    const off = lock === null ? site : putInHands(site, lock, order.who)
    return tell(changeSwitch(off, device, { lock: null, lockedBy: null }), order, device)
  },
}
