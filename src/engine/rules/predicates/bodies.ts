/** Questions about what bodies touch at a moment: only while time passes are contacts in force. */
import type { Contact } from '../../site/contact'
import { clampsOn, groundPointOf, isAloft, requireItem, requirePerson } from '../../site/questions'
import type { Site } from '../../site/site'
import { isOnNextPole, poleFoot } from '../../site/nextPole'
import { distance } from '../../site/place'
import { matches } from '../language/pattern'
import type { Scope, SitePredicate } from '../language/predicate'
import { poleOf, thingAt, workedPole } from './workedPole'

/** What this person touches now, what is reached only by an insulating stick left out. */
function touchedBy(scope: Scope): readonly Contact[] {
  const body = scope.moment?.bodies.find((each) => each.person === scope.person)
  return (body?.contacts ?? []).filter(
    (contact) => !contact.through.some((id) => requireItem(scope.site, id).type === 'operating-stick'),
  )
}

const offLead: SitePredicate = {
  id: 'off-lead',
  says: 'touches no lead, bond or rod',
  about: 'moment',
  takes: {},
  fails(scope) {
    const contact = touchedBy(scope).find(({ on }) => on.kind === 'lead' || on.kind === 'rod')
    if (contact === undefined) return undefined
    const item = 'item' in contact.on ? contact.on.item : ''
    return { why: 'on-lead', person: scope.person ?? '', lead: item, limb: contact.limb }
  },
}

const offBarePole: SitePredicate = {
  id: 'not-between-bare-pole-and-earths',
  says: 'is not on uncovered, unbonded pole while touching a lead, an earthed conductor or bonded metal',
  about: 'moment',
  takes: {},
  fails(scope) {
    const { site } = scope
    const contacts = touchedBy(scope)
    const bare = contacts.find((contact) => contact.on.kind === 'pole' && !isCovered(site, contact))
    if (bare === undefined || isBondWhole(site, poleOf(site, scope.person) === 'next')) return undefined
    const earthed = contacts.find((contact) => isOnEarths(site, contact))
    return earthed === undefined
      ? undefined
      : { why: 'bare-pole', person: scope.person ?? '', limb: earthed.limb, against: bare.limb }
  },
}

function isCovered(site: Site, contact: Contact): boolean {
  return contact.through.some((id) => ['blanket', 'pole-cover'].includes(requireItem(site, id).type))
}

/** Both ends of some bond are on at that pole. */
function isBondWhole(site: Site, isNext: boolean): boolean {
  return site.clamps.some(
    ({ end, lead, on }) =>
      end === 'metal' &&
      isOnNextPole(on) === isNext &&
      site.clamps.some((other) => other.lead === lead && other.end === 'line'),
  )
}

function isOnEarths(site: Site, { on }: Contact): boolean {
  // A low-voltage bond is on nothing but wires of the low voltage.
  if (on.kind === 'lead') return requireItem(site, on.item).type !== 'lv-bond-set'
  if (on.kind === 'rod') return true
  if (on.kind === 'metalwork') return clampsOn(site, on.id).length > 0
  return on.kind === 'conductor' && clampsOn(site, thingAt(on.id, on.at)).length > 0
}

const dropZoneEmpty: SitePredicate = {
  id: 'not-under-load',
  says: 'does not stand within three metres of the pole while something hangs on the line',
  about: 'moment',
  takes: { clear: { kind: 'number', least: 0, says: 'metres from the pole' } },
  fails(scope, given) {
    const person = scope.person ?? ''
    const who = requirePerson(scope.site, person)
    if (isAloft(who) || who.place.kind === 'switch') return undefined
    const foot = poleFoot(scope.site.scenario, workedPole(scope.site))
    const away = distance(groundPointOf(scope.site, person), foot)
    return away >= Number(given['clear']) ? undefined : { why: 'under-load', person, distance: away }
  },
}

const notBusyWith: SitePredicate = {
  id: 'not-busy-with',
  says: 'is doing none of these acts',
  about: 'moment',
  takes: { acts: { kind: 'patterns', least: 1, says: 'the acts' } },
  fails(scope, given) {
    const acts = Array.isArray(given['acts']) ? given['acts'] : [given['acts']]
    const busy = (scope.moment?.busy ?? []).flatMap((index) => scope.view.timeline.entries[index] ?? [])
    const found = busy.find(
      (entry) => entry.order.who === scope.person && acts.some((act) => matches(scope.view, act, entry)),
    )
    return found === undefined ? undefined : { why: 'busy', person: scope.person ?? '', do: found.order.do }
  },
}

export const bodiesPredicates = [offLead, offBarePole, dropZoneEmpty, notBusyWith]
