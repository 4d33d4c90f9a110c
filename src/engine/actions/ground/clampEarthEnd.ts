/** Screws the earth-end clamp of a lead to the rod. */
import { earthLeadTypes } from '../../gear/earthLeads'
import { clampsOf } from '../../site/questions'
import type { Clamp } from '../../site/site'
import type { Action, Order } from '../action'
import { moveItem, tell } from '../changes'
import { atEarth, handsFree } from '../conditions'
import { fitRefusal, isLeadAtHand, turnsSpec, withEnd } from '../leads'
import { itemIn, numberIn, thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { earths } from '../things'
import { bothHands, kneeling } from '../touching'

function earthClamp(order: Order): Clamp {
  const [lead, on, turns] = [itemIn(order), thingIn(order), numberIn(order, 'turns')]
  return { lead, end: 'earth', on, turns, brushed: false, tugged: false }
}

export const clampEarthEnd: Action = {
  id: 'clamp-earth-end',
  covers: ['A41'],
  withTypes: earthLeadTypes,
  things: earths,
  values: { turns: turnsSpec },
  byHand: true,
  check: all(
    atEarth,
    handsFree(2, 'item'),
    (site, order) => (isLeadAtHand(site, order) ? undefined : refuse(order, 'not-at-hand', { item: itemIn(order) })),
    (site, order) => {
      const isOn = clampsOf(site, itemIn(order)).some((clamp) => clamp.end === 'earth')
      return isOn ? refuse(order, 'already-so') : fitRefusal(site, order, 'earth')
    },
  ),
  takes: () => 60,
  // Both hands are on the clamp: one steadies it, one turns the screw; nobody needs to touch the rod.
  contacts: (site, order) => [
    ...bothHands(order.who, { kind: 'lead', item: itemIn(order), end: 'earth' }),
    ...kneeling(site, order.who),
  ],
  joint: (site, order) => withEnd(site, earthClamp(order)),
  apply: (site, order) => {
    const clamp = earthClamp(order)
    const isHanging = site.hauled.includes(clamp.lead)
    const placed = isHanging ? site : moveItem(site, clamp.lead, { kind: 'fitted' })
    return tell(withEnd(placed, clamp), order, clamp.on, { lead: clamp.lead, turns: clamp.turns })
  },
}
