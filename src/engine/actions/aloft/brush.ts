/** Brushes the seat of a clamp with the stick brush. */
import { gearOf } from '../../site/questions'
import type { Action } from '../action'
import { perceive } from '../changes'
import { atHand, onPole, withStick } from '../conditions'
import { itemIn, thingIn } from '../orderValues'
import { all } from '../refuse'
import { conductorEnds } from '../things'
import { stickOnThing } from '../touching'

export const brush: Action = {
  id: 'brush',
  covers: ['A55'],
  withTypes: ['stick-brush'],
  things: conductorEnds,
  byHand: true,
  check: all(onPole, atHand, withStick),
  takes: () => 30,
  contacts: stickOnThing,
  apply: (site, order) => {
    const on = thingIn(order)
    const isBright = gearOf(site, itemIn(order)).is.brushes === true
    const brushed = isBright && !site.brushed.includes(on) ? { ...site, brushed: [...site.brushed, on].sort() } : site
    return perceive(brushed, order.who, { of: on, by: 'look', says: isBright ? 'see.seat-bright' : 'see.seat-dull' })
  },
}
