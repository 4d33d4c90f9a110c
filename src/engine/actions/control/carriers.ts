/**
 * Fuse carriers of a transformer, with the stick from the ground: hung open in their cut-outs, where anybody can push them
 * home, or taken away and bagged; and put back in.
 */
import { findStick } from '../reach'
import { requireItem, requirePerson } from '../../site/questions'
import type { Carriers, Site } from '../../site/site'
import type { Action, Order } from '../action'
import { tell } from '../changes'
import { handsFree } from '../conditions'
import { atMain, provedOff, transformers } from '../mains'
import { choiceIn, thingIn } from '../orderValues'
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

const setCarriers = (site: Site, order: Order, to: Carriers): Site =>
  provedOff({ ...site, carriers: { ...site.carriers, [thingIn(order)]: to } })

export const takeCarriersOut: Action = {
  id: 'take-carriers-out',
  covers: ['A31'],
  things: transformers,
  values: { leave: { kind: 'choice', many: false, of: () => ['bagged', 'hung'] } },
  check: all(atMain, stickInHands, handsFree(2, 'stick'), (site, order) => {
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
  check: all(atMain, stickInHands, handsFree(2, 'stick'), (site, order) =>
    site.carriers[thingIn(order)] === 'in' ? refuse(order, 'already-so') : undefined,
  ),
  takes: () => 60,
  contacts: stickOnCarrier,
  apply: (site, order) => tell(setCarriers(site, order, 'in'), order, thingIn(order)),
}
