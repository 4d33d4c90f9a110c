/** The metalwork end of a bond: by hand, on and off. */
import { clampsOf } from '../../site/questions'
import type { Action } from '../action'
import { hangingBy, moveItem, tell } from '../changes'
import { atHand, handsFree, inReachOfHand, onPole } from '../conditions'
import { fitRefusal, turnsSpec, withEnd, withoutEnd } from '../leads'
import { itemIn, numberIn, thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { metalSeats } from '../things'
import { surfaceOf, touch, type PersonContact } from '../touching'
import type { Site } from '../../site/site'
import type { Order } from '../action'

/** Right hand on the bond, left hand on the metal. */
function handsOnBond(site: Site, order: Order): readonly PersonContact[] {
  return [
    touch(order.who, 'right-hand', { kind: 'lead', item: itemIn(order), end: 'metal' }),
    touch(order.who, 'left-hand', surfaceOf(site, thingIn(order))),
  ]
}

function closed(site: Site, order: Order): Site {
  const [lead, on, turns] = [itemIn(order), thingIn(order), numberIn(order, 'turns')]
  return withEnd(site, { lead, end: 'metal', on, turns, brushed: false, tugged: false })
}

export const bondMetal: Action = {
  id: 'bond-metal',
  covers: ['A66'],
  withTypes: ['bond-lead'],
  things: metalSeats,
  values: { turns: turnsSpec },
  byHand: true,
  check: all(onPole, handsFree(2, 'item'), inReachOfHand, (site, order) => {
    const bond = itemIn(order)
    const on = clampsOf(site, bond)
    if (on.some((clamp) => clamp.end === 'metal')) return refuse(order, 'already-so')
    return on.length === 0 ? atHand(site, order) : fitRefusal(site, order, 'metal')
  }),
  takes: () => 60,
  contacts: handsOnBond,
  joint: closed,
  apply: (site, order) => {
    const [lead, on, turns] = [itemIn(order), thingIn(order), numberIn(order, 'turns')]
    return tell(moveItem(closed(site, order), lead, { kind: 'fitted' }), order, on, { lead, turns })
  },
}

export const unbondMetal: Action = {
  id: 'unbond-metal',
  covers: ['A79'],
  withTypes: ['bond-lead'],
  things: metalSeats,
  check: all(onPole, handsFree(2), inReachOfHand, (site, order) =>
    clampsOf(site, itemIn(order)).some((it) => it.end === 'metal' && it.on === order.on)
      ? undefined
      : refuse(order, 'not-bonded-there'),
  ),
  takes: () => 45,
  contacts: handsOnBond,
  joint: (site, order) => withoutEnd(site, itemIn(order), 'metal'),
  apply: (site, order) => {
    const bond = itemIn(order)
    const off = withoutEnd(site, bond, 'metal')
    const isFree = !off.clamps.some((it) => it.lead === bond)
    return tell(isFree ? moveItem(off, bond, hangingBy(site, order.who)) : off, order, thingIn(order), { lead: bond })
  },
}
