/** Takes a clamp of a lead off a conductor or metal part: with the stick, or by hand. */
import { earthLeadTypes } from '../../gear/earthLeads'
import type { Site } from '../../site/site'
import type { Action, Order } from '../action'
import { tell } from '../changes'
import { handsFree, inReachOfHand, onPole, withStick } from '../conditions'
import { findClamp } from '../leads'
import { itemIn, thingIn } from '../orderValues'
import { all, refuse, type Condition } from '../refuse'
import { clampSeats } from '../things'
import { stickOnLead, surfaceOf, touch } from '../touching'

const isOnThere: Condition = (site, order) =>
  findClamp(site, thingIn(order), itemIn(order)) ? undefined : refuse(order, 'not-clamped-there')

const endThere = (site: Site, order: Order): string => findClamp(site, thingIn(order), itemIn(order))?.end ?? ''

function opened(site: Site, order: Order): Site {
  const gone = findClamp(site, thingIn(order), itemIn(order))
  return { ...site, clamps: site.clamps.filter((it) => it !== gone) }
}

function takeOff(site: Site, order: Order): Site {
  return tell(opened(site, order), order, thingIn(order), { lead: itemIn(order) })
}

const shared = { withTypes: earthLeadTypes, things: clampSeats, joint: opened, apply: takeOff } as const

export const unclamp: Action = {
  ...shared,
  id: 'unclamp',
  covers: ['A81'],
  check: all(onPole, withStick, isOnThere),
  takes: () => 45,
  contacts: (site, order) => stickOnLead(site, order, endThere(site, order)),
}

export const unclampByHand: Action = {
  ...shared,
  id: 'unclamp-by-hand',
  covers: ['A81'],
  check: all(onPole, handsFree(2), inReachOfHand, isOnThere),
  takes: () => 30,
  contacts: (site, order) => [
    touch(order.who, 'right-hand', { kind: 'lead', item: itemIn(order), end: endThere(site, order) }),
    touch(order.who, 'left-hand', surfaceOf(site, thingIn(order))),
  ],
}
