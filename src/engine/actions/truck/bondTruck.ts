/** The lead from the truck to an earth, its truck end first on and last off. */
import { clampsOf } from '../../site/questions'
import type { ItemId } from '../../site/scenario'
import type { Clamp, Site } from '../../site/site'
import type { Action, Order } from '../action'
import { moveItem, tell } from '../changes'
import { atEarth, handsFree } from '../conditions'
import { secondsBetween } from '../fetching'
import { fitRefusal, isLeadAtHand, turnsSpec, withEnd } from '../leads'
import { itemIn, numberIn, thingIn } from '../orderValues'
import { all, refuse, type Condition } from '../refuse'
import { earths } from '../things'
import { bothHands, kneeling } from '../touching'
import { groundPointOf } from '../../site/questions'

const truckEnd = (lead: ItemId, turns: number): Clamp => ({
  lead,
  end: 'truck',
  on: 'truck',
  turns,
  brushed: false,
  tugged: false,
})

function bonded(site: Site, order: Order): Site {
  const [lead, on, turns] = [itemIn(order), thingIn(order), numberIn(order, 'turns')]
  return withEnd(withTruckEnd(site, order), { lead, end: 'earth', on, turns, brushed: false, tugged: false })
}

const withTruckEnd = (site: Site, order: Order): Site =>
  withEnd(site, truckEnd(itemIn(order), numberIn(order, 'turns')))

/** Long enough from the truck, wherever its other end already is. */
const reaches: Condition = (site, order) => fitRefusal(withTruckEnd(site, order), order, 'earth')

function free(site: Site, order: Order): Site {
  return { ...site, clamps: site.clamps.filter((it) => it.lead !== itemIn(order)) }
}

const shared = {
  covers: ['A44'],
  withTypes: ['truck-bond-lead'],
  things: (site: Site) => (site.scenario.truck ? earths(site) : []),
  takes: (site: Site, order: Order) => 90 + 2 * secondsBetween(groundPointOf(site, order.who), site.truck),
  contacts: (site: Site, order: Order) => [
    ...bothHands(order.who, { kind: 'lead', item: itemIn(order), end: 'earth' }),
    ...kneeling(site, order.who),
  ],
} as const

export const bondTruck: Action = {
  ...shared,
  id: 'bond-truck',
  values: { turns: turnsSpec },
  byHand: true,
  check: all(
    atEarth,
    handsFree(2, 'item'),
    (site, order) => {
      if (clampsOf(site, itemIn(order)).length > 0) return refuse(order, 'already-so')
      return isLeadAtHand(site, order) ? undefined : refuse(order, 'not-at-hand', { item: itemIn(order) })
    },
    reaches,
  ),
  joint: bonded,
  apply: (site, order) => {
    const [lead, on] = [itemIn(order), thingIn(order)]
    const placed = moveItem(site, lead, { kind: 'fitted' })
    return tell(bonded(placed, order), order, on, { lead, turns: numberIn(order, 'turns') })
  },
}

export const unbondTruck: Action = {
  ...shared,
  id: 'unbond-truck',
  check: all(atEarth, handsFree(2), (site, order) =>
    clampsOf(site, itemIn(order)).some((it) => it.on === thingIn(order))
      ? undefined
      : refuse(order, 'not-bonded-there'),
  ),
  joint: free,
  apply: (site, order) => {
    const lead = itemIn(order)
    return tell(moveItem(free(site, order), lead, { kind: 'tarp' }), order, thingIn(order), { lead })
  },
}
