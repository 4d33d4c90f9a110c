/**
 * Fuse carriers of a transformer, with the stick from the ground: hung open in their cut-outs, where anybody can push them
 * home, or taken away and bagged; and put back in.
 */
import { isBagged } from '../../site/backFeed'
import { findStick } from '../reach'
import { requireItem, requirePerson } from '../../site/questions'
import type { Carriers, Site } from '../../site/site'
import type { Action, Order } from '../action'
import { moveItem, putInHands, tell } from '../changes'
import { atHand, handsFree } from '../conditions'
import { atMain, provedOff, transformers } from '../mains'
import { choiceIn, itemIn, thingIn } from '../orderValues'
import { all, refuse, type Condition } from '../refuse'
import { bothHands, type PersonContact } from '../touching'

/** The head of the stick is at a carrier, on the first conductor that the transformer hangs on. */
function stickOnCarrier(site: Site, order: Order): readonly PersonContact[] {
  const on = site.scenario.transformers?.find((it) => it.id === thingIn(order))?.phases[0]
  const conductor = site.scenario.conductors.find((it) => it.phase === on)
  const stick = findHeldStick(site, order)
  if (!conductor || stick === undefined) return []
  return bothHands(order.who, { kind: 'conductor', id: conductor.id }, [stick])
}

function findHeldStick(site: Site, order: Order): string | undefined {
  const stick = findStick(site, order.who)
  const isHeld = stick !== undefined && requirePerson(site, order.who).holds.includes(stick)
  return isHeld && requireItem(site, stick).type === 'operating-stick' ? stick : undefined
}

const stickInHands: Condition = (site, order) =>
  findHeldStick(site, order) === undefined ? refuse(order, 'stick-missing') : undefined

/** A bag with its lock is in the way of whoever would push them home. */
const notBagged: Condition = (site, order) =>
  isBagged(site, thingIn(order)) ? refuse(order, 'carriers-bagged') : undefined

const setCarriers = (site: Site, order: Order, to: Carriers): Site =>
  provedOff({ ...site, carriers: { ...site.carriers, [thingIn(order)]: to } })

export const takeCarriersOut: Action = {
  id: 'take-carriers-out',
  covers: ['A31'],
  things: transformers,
  values: { leave: { kind: 'choice', many: false, of: () => ['bagged', 'hung'] } },
  check: all(atMain, stickInHands, handsFree(2, 'stick'), notBagged, (site, order) => {
    const to = choiceIn(order, 'leave') === 'bagged' ? 'out' : 'hung'
    return site.carriers[thingIn(order)] === to ? refuse(order, 'already-so') : undefined
  }),
  takes: () => 60,
  contacts: stickOnCarrier,
  apply: (site, order) => {
    const leave = choiceIn(order, 'leave')
    return tell(setCarriers(site, order, leave === 'bagged' ? 'out' : 'hung'), order, thingIn(order), { leave })
  },
}

export const putCarriersIn: Action = {
  id: 'put-carriers-in',
  covers: ['A90'],
  things: transformers,
  check: all(atMain, stickInHands, handsFree(2, 'stick'), notBagged, (site, order) =>
    site.carriers[thingIn(order)] === 'in' ? refuse(order, 'already-so') : undefined,
  ),
  takes: () => 60,
  contacts: stickOnCarrier,
  apply: (site, order) => tell(setCarriers(site, order, 'in'), order, thingIn(order)),
}

/** Over carriers that hang in their cut-outs, or with those that were taken away in it. */
export const bagCarriers: Action = {
  id: 'bag-carriers',
  covers: ['A31'],
  withTypes: ['carrier-bag'],
  things: transformers,
  byHand: true,
  check: all(atMain, atHand, handsFree(2, 'item', 'stick'), (site, order) => {
    if (site.carriers[thingIn(order)] === 'in') return refuse(order, 'carriers-in')
    return site.carrierBags?.[thingIn(order)] === undefined ? undefined : refuse(order, 'already-so')
  }),
  takes: () => 60,
  apply: (site, order) => {
    const [item, on] = [itemIn(order), thingIn(order)]
    const fitted = moveItem(site, item, { kind: 'fitted' })
    const carrierBags = { ...site.carrierBags, [on]: { item, by: order.who } }
    return tell(provedOff({ ...fitted, carrierBags }), order, on, { item })
  },
}

export const unbagCarriers: Action = {
  id: 'unbag-carriers',
  covers: ['A90'],
  things: transformers,
  check: all(atMain, handsFree(2, 'stick'), (site, order) => {
    const bag = site.carrierBags?.[thingIn(order)]
    if (bag === undefined) return refuse(order, 'already-so')
    return bag.by === order.who || !isBagged(site, thingIn(order)) ? undefined : refuse(order, 'key-not-here')
  }),
  takes: () => 45,
  apply: (site, order) => {
    const on = thingIn(order)
    const { [on]: bag, ...carrierBags } = site.carrierBags ?? {}
    const off: Site = { ...site, carrierBags }
    return tell(bag === undefined ? off : putInHands(off, bag.item, order.who), order, on)
  },
}
