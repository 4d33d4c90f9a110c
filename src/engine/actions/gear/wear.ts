/** Puts on boots, gloves, harness. */
import type { Worn } from '../../gear/gearType'
import { crewMember, gearOf, isAloft, requirePerson } from '../../site/questions'
import type { Site } from '../../site/site'
import type { Action, Order, Refusal } from '../action'
import { changePerson, moveItem, tell } from '../changes'
import { thingAtHand } from '../conditions'
import { secondsToFetch } from '../fetching'
import { thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { wearables } from '../things'

/** A foot gets into boots one size off and not further (common practice, no source). */
const sizesOff = 1

export const wear: Action = {
  id: 'wear',
  covers: ['A18', 'A26', 'A38'],
  things: wearables,
  check: all(thingAtHand, isFree, fits),
  takes: (site, order) => secondsToFetch(site, order.who, thingIn(order)) + (isOnHands(partOf(site, order)) ? 20 : 60),
  apply: (site, order) => {
    const id = thingIn(order)
    const taken = moveItem(site, id, { kind: 'person', person: order.who })
    const { wears } = requirePerson(taken, order.who)
    return tell(changePerson(taken, order.who, { wears: [...wears, id] }), order, id)
  },
}

const partOf = (site: Site, order: Order) => gearOf(site, thingIn(order)).type.worn

function isFree(site: Site, order: Order): Refusal | undefined {
  const part = partOf(site, order)
  const { wears } = requirePerson(site, order.who)
  const worn = wears.find((id) => gearOf(site, id).type.worn === part)
  if (worn === thingIn(order)) return refuse(order, 'already-so')
  if (worn !== undefined) return refuse(order, 'taken-already', { item: worn })
  const over = wears.find((id) => gearOf(site, id).type.worn === `over-${part}`)
  return over === undefined ? undefined : refuse(order, 'under-another', { item: over })
}

export const isOnHands = (part: Worn | undefined): boolean => part === 'hands' || part === 'over-hands'

/** Nobody gets out of these, or into them, up a pole. */
export const isOnLegs = (part: Worn | undefined): boolean => {
  return part === 'feet' || part === 'over-feet' || part === 'legs'
}

function fits(site: Site, order: Order): Refusal | undefined {
  const part = partOf(site, order)
  if (!isOnLegs(part)) return undefined
  if (isAloft(requirePerson(site, order.who))) return refuse(order, 'not-on-ground')
  if (part !== 'feet') return undefined
  const { size } = gearOf(site, thingIn(order)).is
  const { bootSize } = crewMember(site, order.who)
  const isWearable = typeof size !== 'number' || Math.abs(size - bootSize) <= sizesOff
  return isWearable ? undefined : refuse(order, 'boot-size', { item: thingIn(order) })
}
