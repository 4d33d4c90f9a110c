/** Questions about one person: what they wear, where they are, what they were told. */
import { gearOf, groundPointOf, isAloft, isOverdue, requireItem, requirePerson } from '../../site/questions'
import { nearestPole, poleFoot } from '../../site/nextPole'
import type { ItemId, PersonId } from '../../site/scenario'
import type { Site } from '../../site/site'
import { distance, isInside } from '../../site/place'
import { feetAt } from '../../site/stations'
import { bucketPlace, isBucketUp } from '../../site/truckState'
import { invariant } from '../../units/invariant'
import type { Scope, SitePredicate } from '../language/predicate'
import { findRole } from '../language/runView'
import { clearanceOfPoint, electrodePoints } from './ground'
import { poleOf } from './workedPole'

const whom = (scope: Scope): PersonId => {
  invariant(scope.person !== undefined, 'a person to ask about')
  return scope.person
}

const wornOfType = (site: Site, person: PersonId, type: string): ItemId | undefined =>
  requirePerson(site, person).wears.find((id) => requireItem(site, id).type === type)

/** Class printed on insulating gear, 0 when it has none. */
function classOf(site: Site, item: ItemId): number {
  return Number(gearOf(site, item).is['class'] ?? 0)
}

const bootsOnAndPassed: SitePredicate = {
  id: 'boots-on-and-passed',
  says: 'wears boots that were judged fit, are in test and of the class asked for',
  about: 'person',
  takes: { leastClass: { kind: 'number', least: 0, most: 4, optional: true, says: 'lowest class' } },
  fails(scope, given) {
    const person = whom(scope)
    const boots = wornOfType(scope.site, person, 'boots')
    if (boots === undefined) return { why: 'no-boots', person }
    const item = requireItem(scope.site, boots)
    if (item.verdict !== 'pass') return { why: 'boots-not-judged', person, item: boots }
    if (isOverdue(item, scope.site.scenario.date)) return { why: 'boots-overdue', person, item: boots }
    const leastClass = typeof given['leastClass'] === 'number' ? given['leastClass'] : 0
    return classOf(scope.site, boots) < leastClass ? { why: 'boots-class', person, item: boots } : undefined
  },
}

const wears: SitePredicate = {
  id: 'wears',
  says: 'wears a piece of gear of this type',
  about: 'person',
  takes: { type: { kind: 'names', of: 'gearType', says: 'the type' } },
  fails(scope, given) {
    const type = String(given['type'])
    const person = whom(scope)
    return wornOfType(scope.site, person, type) === undefined ? { why: 'not-worn', person, type } : undefined
  },
}

const strapped: SitePredicate = {
  id: 'strapped',
  says: 'strapped to the pole',
  about: 'person',
  takes: {},
  fails: (scope) =>
    requirePerson(scope.site, whom(scope)).strapped ? undefined : { why: 'not-strapped', person: whom(scope) },
}

/** In a bucket that rests on the truck nobody is up yet. */
function isUp(site: Site, person: PersonId): boolean {
  const it = requirePerson(site, person)
  return isAloft(it) && (it.place.kind !== 'bucket' || isBucketUp(site))
}

const aloft: SitePredicate = {
  id: 'aloft',
  says: 'up the pole, or in the bucket off the truck',
  about: 'person',
  takes: {},
  fails: (scope) => (isUp(scope.site, whom(scope)) ? undefined : { why: 'not-aloft', person: whom(scope) }),
}

const onMat: SitePredicate = {
  id: 'on-mat',
  says: 'stands on the operator mat',
  about: 'person',
  takes: {},
  fails: (scope) =>
    requirePerson(scope.site, whom(scope)).onMat ? undefined : { why: 'not-on-mat', person: whom(scope) },
}

const briefed: SitePredicate = {
  id: 'briefed',
  says: 'was at the briefing and has signed on',
  about: 'person',
  takes: {},
  fails(scope) {
    const person = requirePerson(scope.site, whom(scope))
    if (!person.briefed) return { why: 'not-briefed', person: person.id }
    return person.signedOn ? undefined : { why: 'not-signed-on', person: person.id }
  },
}

const atBriefing: SitePredicate = {
  id: 'at-briefing',
  says: 'was at the briefing',
  about: 'person',
  takes: {},
  fails: (scope) =>
    requirePerson(scope.site, whom(scope)).briefed ? undefined : { why: 'not-briefed', person: whom(scope) },
}

const atDevice: SitePredicate = {
  id: 'at-device',
  says: 'stands at the switch of the act',
  about: 'act',
  takes: {},
  fails({ site, entry }) {
    const device = entry?.order.on?.split('/')[0] ?? ''
    const { place } = requirePerson(site, entry?.order.who ?? '')
    return place.kind === 'switch' && place.id === device ? undefined : { why: 'not-there', device }
  },
}

const onSite: SitePredicate = {
  id: 'on-site',
  says: 'is on the site, not away at a switch',
  about: 'person',
  takes: {},
  fails(scope) {
    const { place } = requirePerson(scope.site, whom(scope))
    return place.kind === 'switch' ? { why: 'away', person: whom(scope) } : undefined
  },
}

const belowLv: SitePredicate = {
  id: 'below-low-voltage',
  says: 'is on the pole or in the bucket below the low-voltage wires, or on the ground',
  about: 'person',
  takes: {},
  fails(scope) {
    const { site } = scope
    const { place } = requirePerson(site, whom(scope))
    const isAbove =
      (place.kind === 'pole' && place.station === 'above-lv') ||
      (place.kind === 'bucket' && bucketPlace(site).height >= feetAt(site.scenario.pole, 'above-lv'))
    return isAbove ? { why: 'above-low-voltage', person: whom(scope) } : undefined
  },
}

const namesOther: SitePredicate = {
  id: 'names-another-role',
  says: 'the person named in a value of the act is not of this role',
  about: 'act',
  takes: {
    value: { kind: 'names', of: 'any', says: 'the value' },
    role: { kind: 'names', of: 'role', says: 'the role' },
  },
  fails({ view, entry }, given) {
    const named = entry?.order.values[String(given['value'])]
    const role = typeof named === 'string' ? findRole(view, named) : undefined
    return role === given['role'] ? { why: 'wrong-person', person: String(named) } : undefined
  },
}

const atNextPole: SitePredicate = {
  id: 'at-next-pole',
  says: 'is up the next pole, or on the ground nearer to it than to the first',
  about: 'person',
  takes: {},
  fails({ site, person = '' }) {
    const { place } = requirePerson(site, person)
    if (place.kind === 'switch') return { why: 'away', person }
    return nearestPole(site.scenario, groundPointOf(site, person)) === 'next'
      ? undefined
      : { why: 'first-pole', person }
  },
}

const insideBarrier: SitePredicate = {
  id: 'inside-barrier',
  says: 'stands inside the barrier; up the pole counts as inside',
  about: 'person',
  takes: {},
  fails(scope) {
    const person = requirePerson(scope.site, whom(scope))
    const { barrier } = scope.site
    if (barrier === null) return { why: 'no-barrier' }
    const isIn =
      isAloft(person) || (person.place.kind !== 'switch' && isInside(barrier, groundPointOf(scope.site, person.id)))
    return isIn ? undefined : { why: 'outside', person: person.id }
  },
}

const clearOfElectrodes: SitePredicate = {
  id: 'clear-of-electrodes',
  says: 'stands at least so far from every rod and from the pole',
  about: 'person',
  takes: { least: { kind: 'number', least: 0, says: 'metres' } },
  fails(scope, given) {
    const person = requirePerson(scope.site, whom(scope))
    if (person.place.kind === 'switch') return undefined
    const away = isAloft(person)
      ? 0
      : clearanceOfPoint(groundPointOf(scope.site, person.id), electrodePoints(scope.site))
    const least = Number(given['least'])
    return away >= least ? undefined : { why: 'near-electrode', person: person.id, distance: away, least }
  },
}

/** Whoever last took the post of watcher, and whoever was named rescuer. */
function lookersOf({ view, site }: Scope): readonly PersonId[] {
  const post = view.done.findLast((entry) => entry.order.do === 'watch' && entry.end <= site.time)?.order.who
  const rescuer = site.written['rescuer']
  return [...(post === undefined ? [] : [post]), ...(typeof rescuer === 'string' ? [rescuer] : [])]
}

const notLeftAlone: SitePredicate = {
  id: 'not-left-alone',
  says: 'is on the ground, or the watcher and the rescuer stand on the site in sight of the pole',
  about: 'person',
  takes: { within: { kind: 'number', least: 0, says: 'metres from the pole' } },
  fails(scope, given) {
    const { site } = scope
    const person = whom(scope)
    if (!isAloft(requirePerson(site, person))) return undefined
    const foot = poleFoot(site.scenario, poleOf(site, person))
    const gone = lookersOf(scope).find((id) => {
      const looker = requirePerson(site, id)
      if (looker.place.kind === 'switch' || isAloft(looker) || site.away?.includes(id) === true) return true
      return distance(groundPointOf(site, id), foot) > Number(given['within'])
    })
    return gone === undefined ? undefined : { why: 'left-alone', person, gone }
  },
}

export const peoplePredicates = [
  notLeftAlone,
  bootsOnAndPassed,
  wears,
  atBriefing,
  atDevice,
  onSite,
  belowLv,
  namesOther,
  strapped,
  aloft,
  onMat,
  briefed,
  atNextPole,
  insideBarrier,
  clearOfElectrodes,
]
