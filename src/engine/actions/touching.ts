/** Contacts of a body while an act lasts, beside those of standing. */
import { conductorOf, isFarEnd } from '../site/gaps'
import { isOnNextPole, withoutPole } from '../site/nextPole'
import { standingPoint } from '../site/bodies'
import type { Contact, Limb, Surface } from '../site/contact'
import type { ItemId, PersonId, ThingId } from '../site/scenario'
import type { Site } from '../site/site'
import type { Order } from './action'
import { itemIn, thingIn } from './orderValues'
import { findStick } from './reach'

export interface PersonContact {
  readonly person: PersonId
  readonly contact: Contact
}

export function touch(person: PersonId, limb: Limb, on: Surface, through: readonly ItemId[] = []): PersonContact {
  return { person, contact: { limb, on, through } }
}

export function bothHands(person: PersonId, on: Surface, through: readonly ItemId[] = []): readonly PersonContact[] {
  return [touch(person, 'left-hand', on, through), touch(person, 'right-hand', on, through)]
}

/** Down on one knee, the bare knee where a boot was. */
export function kneeling(site: Site, person: PersonId): readonly PersonContact[] {
  const on: Surface = { kind: 'ground', at: standingPoint(site, person), stance: 'kneeling' }
  return [touch(person, 'left-foot', on), touch(person, 'knee', on)]
}

/** The surface of a thing at the pole top. */
export function surfaceOf(site: Site, thing: ThingId): Surface {
  if (site.scenario.lv.wires.some((it) => it.id === thing)) return { kind: 'lv-wire', id: thing }
  const isMetalwork = site.scenario.metalwork?.some((it) => it.id === thing) ?? false
  if (thing === 'arm' || thing === 'terminal' || isMetalwork) return { kind: 'metalwork', id: thing }
  if (isOnNextPole(thing)) {
    const id = withoutPole(thing)
    return id === 'arm' ? { kind: 'metalwork', id: thing } : { kind: 'conductor', id, at: 'next' }
  }
  return isFarEnd(thing) ? { kind: 'conductor', id: conductorOf(thing), end: 'far' } : { kind: 'conductor', id: thing }
}

/** Both hands on the stick whose head is at the thing of the order. */
export function stickOnThing(site: Site, order: Order): readonly PersonContact[] {
  const stick = findStick(site, order.who)
  return bothHands(order.who, surfaceOf(site, thingIn(order)), stick === undefined ? [] : [stick])
}

/** Both hands on the stick that carries an end of the lead to or from the thing: it touches both. */
export function stickOnLead(site: Site, order: Order, end: string): readonly PersonContact[] {
  const stick = findStick(site, order.who)
  const through = stick === undefined ? [] : [stick]
  return [
    touch(order.who, 'left-hand', surfaceOf(site, thingIn(order)), through),
    touch(order.who, 'right-hand', { kind: 'lead', item: itemIn(order), end }, through),
  ]
}
