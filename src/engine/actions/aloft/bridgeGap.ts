/** A by-pass lead from one side of a gap to the other, with the stick, on and off. */
import { farEnd } from '../../site/gaps'
import { clampsOf } from '../../site/questions'
import type { Clamp, Site } from '../../site/site'
import type { Action, Order } from '../action'
import { hangingBy, moveItem, tell } from '../changes'
import { atHand, onPole, withStick } from '../conditions'
import { turnsSpec, withEnd } from '../leads'
import { itemIn, numberIn, thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { jumpers } from '../things'
import { stickOnLead } from '../touching'

/** Both clamps go on one after the other: the gap is closed by the second. */
function bridged(site: Site, order: Order): Site {
  const [lead, conductor, turns] = [itemIn(order), thingIn(order), numberIn(order, 'turns')]
  const on = { near: conductor, far: farEnd(conductor) }
  const seats = Object.entries(on).map(
    ([end, seat]): Clamp => ({ lead, end, on: seat, turns, brushed: site.brushed.includes(seat), tugged: false }),
  )
  const used = { ...site, brushed: site.brushed.filter((it) => it !== on.near && it !== on.far) }
  return seats.reduce(withEnd, used)
}

function free(site: Site, order: Order): Site {
  return { ...site, clamps: site.clamps.filter((it) => it.lead !== itemIn(order)) }
}

const shared = {
  covers: ['A71'],
  withTypes: ['bypass-lead'],
  things: jumpers,
  takes: () => 90,
  contacts: (site: Site, order: Order) => stickOnLead(site, order, 'near'),
} as const

export const bridgeGap: Action = {
  ...shared,
  id: 'bridge-gap',
  values: { turns: turnsSpec },
  byHand: true,
  check: all(onPole, withStick, (site, order) =>
    clampsOf(site, itemIn(order)).length > 0 ? refuse(order, 'already-so') : atHand(site, order),
  ),
  joint: bridged,
  apply: (site, order) => {
    const [lead, on, turns] = [itemIn(order), thingIn(order), numberIn(order, 'turns')]
    return tell(moveItem(bridged(site, order), lead, { kind: 'fitted' }), order, on, { lead, turns })
  },
}

export const unbridgeGap: Action = {
  ...shared,
  id: 'unbridge-gap',
  check: all(onPole, withStick, (site, order) =>
    clampsOf(site, itemIn(order)).some((it) => it.on === order.on) ? undefined : refuse(order, 'not-bonded-there'),
  ),
  joint: free,
  apply: (site, order) =>
    tell(moveItem(free(site, order), itemIn(order), hangingBy(site, order.who)), order, thingIn(order), {
      lead: itemIn(order),
    }),
}
