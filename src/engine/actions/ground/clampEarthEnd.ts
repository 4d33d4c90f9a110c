/** Screws the earth-end clamp of a lead to the rod. */
import { clampsOf } from '../../site/questions'
import type { Action } from '../action'
import { moveItem, tell } from '../changes'
import { atRod, handsFree } from '../conditions'
import { fitRefusal, isLeadAtHand, turnsSpec } from '../leads'
import { itemIn, numberIn, thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { rods } from '../things'
import { bothHands } from '../touching'

export const clampEarthEnd: Action = {
  id: 'clamp-earth-end',
  covers: ['A41'],
  withTypes: ['earth-lead'],
  things: rods,
  values: { turns: turnsSpec },
  byHand: true,
  check: all(
    atRod,
    handsFree(2, 'item'),
    (site, order) => (isLeadAtHand(site, order) ? undefined : refuse(order, 'not-at-hand', { item: itemIn(order) })),
    (site, order) => {
      const isOn = clampsOf(site, itemIn(order)).some((clamp) => clamp.end === 'earth')
      return isOn ? refuse(order, 'already-so') : fitRefusal(site, order, 'earth')
    },
  ),
  takes: () => 60,
  // Both hands are on the clamp: one steadies it, one turns the screw; nobody needs to touch the rod.
  contacts: (_site, order) => bothHands(order.who, { kind: 'lead', item: itemIn(order), end: 'earth' }),
  apply: (site, order) => {
    const [lead, on] = [itemIn(order), thingIn(order)]
    const clamp = { lead, end: 'earth', on, turns: numberIn(order, 'turns'), brushed: false, tugged: false }
    const isHanging = site.hauled.includes(lead)
    const placed = isHanging ? site : moveItem(site, lead, { kind: 'fitted' })
    return tell({ ...placed, clamps: [...site.clamps, clamp] }, order, on, { lead, turns: clamp.turns })
  },
}
