/** A tail of the low-voltage bond set on a wire, by hand, on and off: bonded wires hold each other at one potential. */
import { clampsOf, requireItem } from '../../site/questions'
import type { ThingId } from '../../site/scenario'
import type { Site } from '../../site/site'
import type { Action, Order } from '../action'
import { hangingBy, moveItem, tell } from '../changes'
import { atHand, handsFree, inReachOfHand, onPole } from '../conditions'
import { findClamp, findFreeEnd, fitRefusal, turnsSpec, withEnd, withoutEnd } from '../leads'
import { itemIn, numberIn, thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { lvWires } from '../things'
import { surfaceOf, touch, type PersonContact } from '../touching'

const setType = 'lv-bond-set'

/** Only where the register has such a set. */
const wires = (site: Site): readonly ThingId[] =>
  Object.values(site.items).some((it) => it.type === setType) ? lvWires(site) : []

const isNeutral = (site: Site, thing: ThingId): boolean =>
  site.scenario.lv.wires.some((it) => it.id === thing && it.phase === 'N')

/** The tail that goes on this wire: the marked one on a neutral while it is free, else the next. */
function tailFor(site: Site, order: Order): string | undefined {
  const used = clampsOf(site, itemIn(order)).map((it) => it.end)
  if (isNeutral(site, thingIn(order)) && !used.includes('n')) return 'n'
  return findFreeEnd(site, itemIn(order), 'n') ?? findFreeEnd(site, itemIn(order))
}

function handsOnTail(site: Site, order: Order, end: string): readonly PersonContact[] {
  return [
    touch(order.who, 'right-hand', { kind: 'lead', item: itemIn(order), end }),
    touch(order.who, 'left-hand', surfaceOf(site, thingIn(order))),
  ]
}

function closed(site: Site, order: Order): Site {
  const end = tailFor(site, order)
  if (end === undefined) return site
  const turns = numberIn(order, 'turns')
  return withEnd(site, { lead: itemIn(order), end, on: thingIn(order), turns, brushed: false, tugged: false })
}

export const bondLv: Action = {
  id: 'bond-lv',
  covers: ['A48'],
  withTypes: [setType],
  things: wires,
  values: { turns: turnsSpec },
  byHand: true,
  check: all(onPole, handsFree(2, 'item'), inReachOfHand, (site, order) => {
    const bond = itemIn(order)
    if (findClamp(site, thingIn(order), bond)) return refuse(order, 'already-so')
    const end = tailFor(site, order)
    if (end === undefined) return refuse(order, 'end-free-none', { item: bond })
    return clampsOf(site, bond).length === 0 ? atHand(site, order) : fitRefusal(site, order, end)
  }),
  takes: () => 40,
  contacts: (site, order) => handsOnTail(site, order, tailFor(site, order) ?? 'n'),
  joint: closed,
  apply: (site, order) => {
    const [lead, on, turns] = [itemIn(order), thingIn(order), numberIn(order, 'turns')]
    const end = tailFor(site, order) ?? ''
    const isHeld = requireItem(site, lead).where.kind !== 'fitted'
    const next = closed(site, order)
    return tell(isHeld ? moveItem(next, lead, { kind: 'fitted' }) : next, order, on, { lead, end, turns })
  },
}

export const unbondLv: Action = {
  id: 'unbond-lv',
  covers: ['A83'],
  withTypes: [setType],
  things: wires,
  check: all(onPole, handsFree(2), inReachOfHand, (site, order) =>
    findClamp(site, thingIn(order), itemIn(order)) ? undefined : refuse(order, 'not-bonded-there'),
  ),
  takes: () => 30,
  contacts: (site, order) => handsOnTail(site, order, findClamp(site, thingIn(order), itemIn(order))?.end ?? 'n'),
  joint: (site, order) => opened(site, order),
  apply: (site, order) => {
    const lead = itemIn(order)
    const off = opened(site, order)
    const isFree = clampsOf(off, lead).length === 0
    return tell(isFree ? moveItem(off, lead, hangingBy(site, order.who)) : off, order, thingIn(order), { lead })
  },
}

function opened(site: Site, order: Order): Site {
  const on = findClamp(site, thingIn(order), itemIn(order))
  return on ? withoutEnd(site, itemIn(order), on.end) : site
}
