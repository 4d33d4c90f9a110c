/** Takes the tag off the handle. */
import { requireSwitch } from '../../site/questions'
import type { Action } from '../action'
import { changeSwitch, putInHands, tell } from '../changes'
import { atSwitch, handsFree } from '../conditions'
import { thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { switches } from '../things'

export const untag: Action = {
  id: 'untag',
  covers: ['A89'],
  things: switches,
  check: all(atSwitch, handsFree(1), (site, order) =>
    requireSwitch(site, thingIn(order)).tag === null ? refuse(order, 'already-so') : undefined,
  ),
  takes: () => 10,
  apply: (site, order) => {
    const device = thingIn(order)
    const { tag } = requireSwitch(site, device)
    const off = tag === null ? site : putInHands(site, tag, order.who)
    return tell(changeSwitch(off, device, { tag: null }), order, device)
  },
}
