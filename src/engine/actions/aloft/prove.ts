/** Proves a tester on its proving unit: it indicates or stays silent. */
import { gearOf, requireItem } from '../../site/questions'
import type { Site } from '../../site/site'
import type { Action, Order } from '../action'
import { perceive } from '../changes'
import { atHand, handsFree, thingAtHand } from '../conditions'
import { itemIn, thingIn } from '../orderValues'
import { all } from '../refuse'
import { itemTypes } from '../things'

export const prove: Action = {
  id: 'prove',
  covers: ['A46', 'A51', 'A53'],
  withTypes: ['hv-detector', 'lv-tester'],
  things: itemTypes((type) => type === 'hv-proving-unit' || type === 'lv-proving-unit'),
  byHand: true,
  check: all(atHand, thingAtHand, handsFree(2, 'item', 'thing', 'stick')),
  takes: () => 20,
  apply: (site, order) => {
    const says = indicates(site, order) ? 'test.indicates' : 'test.silent'
    return perceive(site, order.who, { of: itemIn(order), by: 'test', says, values: { on: thingIn(order) } })
  },
}

/** A sound tester of the unit's own kind indicates on a unit that gives; a detector of another band does too. */
function indicates(site: Site, order: Order): boolean {
  const [tester, unit] = [requireItem(site, itemIn(order)), requireItem(site, thingIn(order))]
  const isPair = (tester.type === 'hv-detector') === (unit.type === 'hv-proving-unit')
  return isPair && gearOf(site, unit.id).is.gives === true && gearOf(site, tester.id).is.indicates === true
}
