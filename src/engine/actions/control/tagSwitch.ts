/** Hangs the caution tag on the handle. */
import { requireSwitch } from '../../site/questions'
import type { Action } from '../action'
import { changeSwitch, finishStep, moveItem, tell } from '../changes'
import { atHand, atSwitch, handsFree } from '../conditions'
import { itemIn, thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { switches } from '../things'

export const tagSwitch: Action = {
  id: 'tag',
  covers: ['A29', 'A30'],
  withTypes: ['tag'],
  things: switches,
  byHand: true,
  check: all(atSwitch, atHand, handsFree(1, 'item'), (site, order) =>
    requireSwitch(site, thingIn(order)).tag === null ? undefined : refuse(order, 'already-so'),
  ),
  takes: () => 15,
  apply: (site, order) => {
    const [tag, device] = [itemIn(order), thingIn(order)]
    const tagged = changeSwitch(moveItem(site, tag, { kind: 'fitted' }), device, { tag })
    const isSecured = requireSwitch(site, device).lock !== null
    return tell(isSecured ? finishStep(tagged, device) : tagged, order, device, { tag })
  },
}
