/** Fits or clears the earths at an isolation point, where the network's rules want them before the permit. */
import { gearOf, requireSwitch } from '../../site/questions'
import type { Action } from '../action'
import { changeSwitch, moveItem, putInHands, tell } from '../changes'
import { atHand, atSwitch, handsFree } from '../conditions'
import { itemIn, thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { switches } from '../things'

/** Resistance to earth of the electrode there, ohm, when the item's label states none (common practice, no source). */
const usualResistance = 10

export const earthIsolationPoint: Action = {
  id: 'earth-isolation-point',
  covers: ['A35'],
  withTypes: ['isolation-earth'],
  things: switches,
  byHand: true,
  check: all(atSwitch, atHand, handsFree(2, 'item'), (site, order) =>
    requireSwitch(site, thingIn(order)).earth === null ? undefined : refuse(order, 'already-so'),
  ),
  takes: () => 240,
  apply: (site, order) => {
    const [item, device] = [itemIn(order), thingIn(order)]
    const { resistance: stated } = gearOf(site, item).is
    const resistance = typeof stated === 'number' ? stated : usualResistance
    return tell(
      changeSwitch(moveItem(site, item, { kind: 'fitted' }), device, { earth: { item, resistance } }),
      order,
      device,
    )
  },
}

export const clearIsolationEarth: Action = {
  id: 'clear-isolation-earth',
  covers: ['A89'],
  things: switches,
  check: all(atSwitch, handsFree(2), (site, order) =>
    requireSwitch(site, thingIn(order)).earth === null ? refuse(order, 'already-so') : undefined,
  ),
  takes: () => 180,
  apply: (site, order) => {
    const device = thingIn(order)
    const { earth } = requireSwitch(site, device)
    const off = earth === null ? site : putInHands(site, earth.item, order.who)
    return tell(changeSwitch(off, device, { earth: null }), order, device)
  },
}
