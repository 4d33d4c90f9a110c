/** What acts on a main switch or on fuse carriers have in common: being there, changing one, what that proves. */
import { distance } from '../site/place'
import { findRemovedCause } from '../site/liveningTraits'
import { findMain, mainsOf } from '../site/mains'
import { gearOf, groundPointOf, isAloft, requirePerson } from '../site/questions'
import type { ThingId } from '../site/scenario'
import type { MainSwitch, Site } from '../site/site'
import { invariant } from '../units/invariant'
import { mark } from './changes'
import { thingIn } from './orderValues'
import { refuse, type Condition } from './refuse'

/** Near enough to work it, metres; a long stick takes carriers out from there (common practice, no source). */
const nearMain = 3

export const mains = (site: Site): readonly ThingId[] => mainsOf(site.scenario).map((it) => it.id)

export const transformers = (site: Site): readonly ThingId[] => Object.keys(site.carriers)

export function isMain(site: Site, thing: ThingId): boolean {
  return Object.hasOwn(site.mains, thing)
}

export function requireMain(site: Site, thing: ThingId): MainSwitch {
  const main = site.mains[thing]
  invariant(main, 'a main switch', thing)
  return main
}

export const atMain: Condition = (site, order) => {
  const main = findMain(site.scenario, thingIn(order))
  if (main === undefined) return refuse(order, 'unknown-thing')
  const person = requirePerson(site, order.who)
  const isThere = !isAloft(person) && distance(groundPointOf(site, order.who), main.at) <= nearMain
  return isThere ? undefined : refuse(order, 'not-at-switch')
}

/** Whoever works it gets at it: the key of its cabinet is in the hands, its owner has let them in. */
export const canGetAt: Condition = (site, order) => {
  const thing = thingIn(order)
  const main = findMain(site.scenario, thing)
  const { holds, wears } = requirePerson(site, order.who)
  if (main?.key !== undefined && ![...holds, ...wears].includes(main.key))
    return refuse(order, 'cabinet-shut', { item: main.key })
  if (main?.key !== undefined && gearOf(site, main.key).is.opens === false)
    return refuse(order, 'key-does-not-turn', { item: main.key })
  const isPremises = site.scenario.premises?.some(({ id }) => id === thing) ?? false
  return isPremises && site.marks[consentTo(thing)] === undefined ? refuse(order, 'no-consent') : undefined
}

/** The mark that the owner of a place has let the crew at its main switch. */
export const consentTo = (premises: ThingId): string => `consent:${premises}`

export function changeMain(site: Site, id: ThingId, change: Partial<MainSwitch>): Site {
  return provedOff({ ...site, mains: { ...site.mains, [id]: { ...requireMain(site, id), ...change } } })
}

/** Whoever takes the way of a source that has struck has proved it off: no control room switches it. */
export function provedOff(site: Site): Site {
  const { livening, scenario } = site
  const struck = livening?.provedOff === false ? scenario.livenings.find((it) => it.id === livening.id) : undefined
  if (!livening || struck?.kind !== 'back-feed' || findRemovedCause(site, struck) === undefined) return site
  return { ...mark(site, 'source-off'), livening: { ...livening, provedOff: true } }
}
