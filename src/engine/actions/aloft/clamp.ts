/** Puts the next free end of a hanging lead on a conductor or metal part: with the stick, or by hand. */
import { earthLeadTypes } from '../../gear/earthLeads'
import type { Site } from '../../site/site'
import type { Action, Order } from '../action'
import { tell } from '../changes'
import { handsFree, inReachOfHand, onPole, withStick } from '../conditions'
import { findFreeEnd, fitRefusal, turnsByStick, turnsSpec } from '../leads'
import { itemIn, numberIn, thingIn } from '../orderValues'
import { all, refuse, type Condition } from '../refuse'
import { clampSeats } from '../things'
import { stickOnLead, surfaceOf, touch } from '../touching'

const hangingAndLongEnough: Condition = (site, order) => {
  const lead = itemIn(order)
  if (!site.hauled.includes(lead)) return refuse(order, 'lead-not-aloft', { item: lead })
  const end = findFreeEnd(site, lead)
  if (end === undefined) return refuse(order, 'end-free-none', { item: lead })
  return fitRefusal(site, order, end)
}

type Turns = (site: Site, order: Order) => number

const turnsByHand: Turns = (_, order) => numberIn(order, 'turns')

const closedWith =
  (turnsOf: Turns) =>
  (site: Site, order: Order): Site => {
    const [lead, on] = [itemIn(order), thingIn(order)]
    const end = findFreeEnd(site, lead)
    if (end === undefined) return site
    const brushed = site.brushed.includes(on)
    const clamps = [...site.clamps, { lead, end, on, turns: turnsOf(site, order), brushed, tugged: false }]
    return { ...site, clamps, brushed: site.brushed.filter((it) => it !== on) }
  }

const putOnWith =
  (turnsOf: Turns) =>
  (site: Site, order: Order): Site => {
    const [lead, on, turns] = [itemIn(order), thingIn(order), turnsOf(site, order)]
    return tell(closedWith(turnsOf)(site, order), order, on, { lead, end: freeEnd(site, order), turns })
  }

const freeEnd = (site: Site, order: Order): string => findFreeEnd(site, itemIn(order)) ?? ''

const shared = { withTypes: earthLeadTypes, things: clampSeats, values: { turns: turnsSpec } } as const

export const clamp: Action = {
  ...shared,
  id: 'clamp',
  covers: ['A56', 'A58', 'A59', 'A60'],
  byHand: true,
  check: all(onPole, withStick, hangingAndLongEnough),
  takes: () => 45,
  contacts: (site, order) => stickOnLead(site, order, freeEnd(site, order)),
  joint: closedWith(turnsByStick),
  apply: putOnWith(turnsByStick),
}

export const clampByHand: Action = {
  ...shared,
  joint: closedWith(turnsByHand),
  apply: putOnWith(turnsByHand),
  id: 'clamp-by-hand',
  covers: ['A56'],
  check: all(onPole, handsFree(2), inReachOfHand, hangingAndLongEnough),
  takes: () => 30,
  contacts: (site, order) => [
    touch(order.who, 'right-hand', { kind: 'lead', item: itemIn(order), end: freeEnd(site, order) }),
    touch(order.who, 'left-hand', surfaceOf(site, thingIn(order))),
  ],
}
