/** The conductor end of a bond: with the stick, on and off. */
import { clampsOf } from '../../site/questions'
import type { Site } from '../../site/site'
import type { Action, Order } from '../action'
import { hangingBy, moveItem, tell } from '../changes'
import { atHand, onPole, withStick } from '../conditions'
import { fitRefusal, turnsSpec, withEnd, withoutEnd } from '../leads'
import { itemIn, numberIn, thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { workedConductors } from '../things'
import { stickOnLead } from '../touching'

function closed(site: Site, order: Order): Site {
  const [lead, on, turns] = [itemIn(order), thingIn(order), numberIn(order, 'turns')]
  const brushed = site.brushed.includes(on)
  const used = { ...site, brushed: site.brushed.filter((it) => it !== on) }
  return withEnd(used, { lead, end: 'line', on, turns, brushed, tugged: false })
}

export const bondLine: Action = {
  id: 'bond-line',
  covers: ['A65', 'A66'],
  withTypes: ['bond-lead'],
  things: workedConductors,
  values: { turns: turnsSpec },
  byHand: true,
  check: all(onPole, withStick, (site, order) => {
    const on = clampsOf(site, itemIn(order))
    if (on.some((clamp) => clamp.end === 'line')) return refuse(order, 'already-so')
    return on.length === 0 ? atHand(site, order) : fitRefusal(site, order, 'line')
  }),
  takes: () => 45,
  contacts: (site, order) => stickOnLead(site, order, 'line'),
  joint: closed,
  apply: (site, order) => {
    const [lead, on, turns] = [itemIn(order), thingIn(order), numberIn(order, 'turns')]
    return tell(moveItem(closed(site, order), lead, { kind: 'fitted' }), order, on, { lead, turns })
  },
}

export const unbondLine: Action = {
  id: 'unbond-line',
  covers: ['A79'],
  withTypes: ['bond-lead'],
  things: workedConductors,
  check: all(onPole, withStick, (site, order) =>
    clampsOf(site, itemIn(order)).some((it) => it.end === 'line' && it.on === order.on)
      ? undefined
      : refuse(order, 'not-bonded-there'),
  ),
  takes: () => 45,
  contacts: (site, order) => stickOnLead(site, order, 'line'),
  joint: (site, order) => withoutEnd(site, itemIn(order), 'line'),
  apply: (site, order) => {
    const bond = itemIn(order)
    const off = withoutEnd(site, bond, 'line')
    const isFree = !off.clamps.some((it) => it.lead === bond)
    return tell(isFree ? moveItem(off, bond, hangingBy(site, order.who)) : off, order, thingIn(order), { lead: bond })
  },
}
