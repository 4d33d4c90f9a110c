/** Proves dead at the point of isolation: the detector on the stick, from the ground, on the section's side of a blade. */
import { findStick } from '../reach'
import { phasesOf } from '../../site/phasesOf'
import { requirePerson } from '../../site/questions'
import type { ThingId } from '../../site/scenario'
import type { Site } from '../../site/site'
import { invariant } from '../../units/invariant'
import type { Action, Order } from '../action'
import { perceive } from '../changes'
import { atHand, atSwitch, handsFree } from '../conditions'
import { itemIn, thingIn } from '../orderValues'
import { all, refuse, type Condition } from '../refuse'
import { detected } from '../testing'
import { blades } from '../things'
import { bothHands } from '../touching'

/** The conductor behind the blade, on the section's side. */
function conductorBehind(site: Site, order: Order): ThingId {
  const phase = thingIn(order).split('/')[1]
  const found = site.scenario.conductors.find((it) => it.phase === phase)
  invariant(found, 'a conductor behind each blade', thingIn(order), phasesOf(site.scenario.conductors).join(''))
  return found.id
}

const heldStick = (site: Site, order: Order): string | undefined => {
  const stick = findStick(site, order.who)
  return stick !== undefined && requirePerson(site, order.who).holds.includes(stick) ? stick : undefined
}

const stickInHands: Condition = (site, order) =>
  heldStick(site, order) === undefined ? refuse(order, 'stick-missing') : undefined

export const testAtSwitch: Action = {
  id: 'test-at-switch',
  covers: ['A46', 'A52'],
  withTypes: ['hv-detector'],
  things: blades,
  check: all(atSwitch, atHand, stickInHands, handsFree(2, 'item', 'stick')),
  takes: () => 25,
  contacts: (site, order) => {
    const stick = heldStick(site, order)
    return bothHands(order.who, { kind: 'conductor', id: conductorBehind(site, order) }, stick ? [stick] : [])
  },
  apply: (site, order) => {
    const found = detected(site, itemIn(order), conductorBehind(site, order))
    return perceive(site, order.who, { of: thingIn(order), by: 'test', ...found })
  },
}
