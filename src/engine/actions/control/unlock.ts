/** Takes the own lock off the handle of a switch or off a main switch: the key is with whoever put it on. */
import { requireSwitch } from '../../site/questions'
import type { ThingId } from '../../site/scenario'
import type { Site, SwitchState } from '../../site/site'
import type { Action } from '../action'
import { changeSwitch, putInHands, tell } from '../changes'
import { handsFree } from '../conditions'
import { changeMain, isMain, mains, requireMain } from '../mains'
import { thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { switches } from '../things'
import { atHandle } from './lockSwitch'

function lockOn(site: Site, thing: ThingId): Pick<SwitchState, 'lock' | 'lockedBy'> {
  return isMain(site, thing) ? requireMain(site, thing) : requireSwitch(site, thing)
}

export const unlock: Action = {
  id: 'unlock',
  covers: ['A89'],
  things: (site) => [...switches(site), ...mains(site)],
  check: all(atHandle, handsFree(1), (site, order) => {
    const { lock, lockedBy } = lockOn(site, thingIn(order))
    if (lock === null) return refuse(order, 'already-so')
    return lockedBy === order.who ? undefined : refuse(order, 'key-not-here')
  }),
  takes: () => 15,
  apply: (site, order) => {
    const device = thingIn(order)
    const { lock } = lockOn(site, device)
    const off = lock === null ? site : putInHands(site, lock, order.who)
    const freed = isMain(site, device) ? changeMain : changeSwitch
    return tell(freed(off, device, { lock: null, lockedBy: null }), order, device)
  },
}
