/** Brings somebody who does not answer down the pole with the rope of the rescue kit, or out of the bucket. */
import { poleFoot } from '../../site/nextPole'
import { isHurt } from '../../site/presence'
import { gearOf, groundPointOf, isAloft, requireItem, requirePerson } from '../../site/questions'
import type { PersonId } from '../../site/scenario'
import type { Site } from '../../site/site'
import { isBucketUp } from '../../site/truckState'
import type { Action, Order, Refusal } from '../action'
import { changePerson, putDownHere, tell } from '../changes'
import { atTruck, handsFree } from '../conditions'
import { choiceIn, itemIn } from '../orderValues'
import { all, refuse, type Condition } from '../refuse'
import { bothHands } from '../touching'

/** To rig, cut the strap and lower; as long again with a kit that lacks something. Seconds (common practice, no source). */
const toLower = 180

const needsIt: Condition = (site, order) => {
  const whom = choiceIn(order, 'whom')
  if (!isHurt(site, whom)) return refuse(order, 'not-hurt', { person: whom })
  return isAloft(requirePerson(site, whom)) ? undefined : refuse(order, 'already-so')
}

/** Beside them on the pole; at the truck once the bucket is down. */
function isBeside(site: Site, order: Order): Refusal | undefined {
  const whom = choiceIn(order, 'whom')
  const [own, theirs] = [requirePerson(site, order.who).place, requirePerson(site, whom).place]
  if (theirs.kind === 'bucket') return isBucketUp(site) ? refuse(order, 'bucket-up') : atTruck(site, order)
  return JSON.stringify(own) === JSON.stringify(theirs) ? undefined : refuse(order, 'not-beside', { person: whom })
}

/** Staged on the ground its rope goes up with whoever climbs. */
const kitThere: Condition = (site, order) => {
  const { kind } = requireItem(site, itemIn(order)).where
  const isThere = kind === 'tarp' || kind === 'aloft' || kind === 'person'
  return isThere ? undefined : refuse(order, 'not-at-hand', { item: itemIn(order) })
}

export const bringDown: Action = {
  id: 'bring-down',
  covers: ['A77'],
  withTypes: ['rescue-kit'],
  values: { whom: { kind: 'choice', many: false, of: (site) => Object.keys(site.persons) } },
  check: all(needsIt, isBeside, handsFree(2, 'item'), kitThere),
  takes: (site, order) => (gearOf(site, itemIn(order)).is.complete === true ? toLower : 2 * toLower),
  contacts: (_site, order) => bothHands(order.who, { kind: 'person', id: choiceIn(order, 'whom') }),
  apply: (site, order) => {
    const whom = choiceIn(order, 'whom')
    const emptied = requirePerson(site, whom).holds.reduce((next, id) => putDownHere(next, id, whom), site)
    const down = changePerson(emptied, whom, { place: { kind: 'ground', at: footFor(site, whom) }, strapped: false })
    return tell(down, order, whom, { whom })
  },
}

/** A metre from the pole, or where the bucket rests. */
function footFor(site: Site, whom: PersonId): { readonly x: number; readonly y: number } {
  const { place } = requirePerson(site, whom)
  if (place.kind === 'bucket') return groundPointOf(site, whom)
  const { x, y } = poleFoot(site.scenario, place.kind === 'pole' ? place.pole : undefined)
  return { x, y: y + 1 }
}
