/** Questions about the register, what is still up there or in the ground, and where the crew is. */
import { groundPointOf, isAloft, isOverdue, requireItem } from '../../site/questions'
import { matchesNames } from '../language/glob'
import type { SitePredicate } from '../language/predicate'
import { findItemOf } from '../language/runView'
import { isInside } from '../../site/place'

const registerBalanced: SitePredicate = {
  id: 'register-balanced',
  says: 'everything that was booked out is booked in, but for these types',
  about: 'site',
  takes: { except: { kind: 'names', of: 'gearType', optional: true, says: 'types that come in later' } },
  fails({ site }, given) {
    const except = (given['except'] ?? []) as readonly string[]
    const out = Object.values(site.items).filter(
      (item) => item.bookedOut && !item.bookedIn && !matchesNames(except, item.type),
    )
    const first = out[0]
    return first === undefined ? undefined : { why: 'still-out', item: first.id, count: out.length }
  },
}

const nothingAloft: SitePredicate = {
  id: 'nothing-aloft',
  says: 'no clamp, cover, guard or tool is up the pole and no rod is in the ground',
  about: 'site',
  takes: {},
  fails({ site }) {
    const up = Object.values(site.items).find(({ where }) => where.kind === 'aloft' || where.kind === 'handline')
    const lead =
      site.clamps[0]?.lead ?? site.hauled[0] ?? site.cover?.item ?? site.guards[0]?.item ?? site.rods[0]?.item ?? up?.id
    return lead === undefined ? undefined : { why: 'left-up', item: lead }
  },
}

const crewClear: SitePredicate = {
  id: 'crew-clear',
  says: 'everybody is off the pole and outside the barrier',
  about: 'site',
  takes: {},
  fails({ site }) {
    const { barrier } = site
    const near = Object.values(site.persons).find(
      (person) =>
        isAloft(person) ||
        (barrier !== null && person.place.kind !== 'switch' && isInside(barrier, groundPointOf(site, person.id))),
    )
    return near === undefined ? undefined : { why: 'not-clear', person: near.id }
  },
}

const crewMustered: SitePredicate = {
  id: 'crew-mustered',
  says: 'everybody was counted and told that the line is now live',
  about: 'site',
  takes: {},
  fails({ site }) {
    const missing = Object.values(site.persons).find((person) => !person.mustered)
    return missing === undefined ? undefined : { why: 'not-counted', person: missing.id }
  },
}

const itemInDate: SitePredicate = {
  id: 'item-in-date',
  says: 'the label of the item in the act is not past its date',
  about: 'act',
  takes: {},
  fails({ site, entry, view }) {
    const id = entry === undefined ? undefined : findItemOf(view, entry)
    if (id === undefined) return undefined
    const item = requireItem(site, id)
    return isOverdue(item, site.scenario.date)
      ? { why: 'overdue', item: id, due: String(item.label['due']) }
      : undefined
  },
}

const itemSound: SitePredicate = {
  id: 'item-unused-by-fault',
  says: 'the item in the act has carried no fault current and its insulation has not failed',
  about: 'act',
  takes: {},
  fails({ site, entry, view }) {
    const id = entry === undefined ? undefined : findItemOf(view, entry)
    const item = id === undefined ? undefined : requireItem(site, id)
    return item === undefined || (!item.faulted && !item.failed) ? undefined : { why: 'carried-fault', item: item.id }
  },
}

const faultedSetAside: SitePredicate = {
  id: 'faulted-set-aside',
  says: 'everything that carried the fault has been judged unfit',
  about: 'site',
  takes: {},
  fails({ site }) {
    const item = Object.values(site.items).find(
      (each) => (each.faulted || each.failed) && each.verdict !== 'quarantine',
    )
    return item === undefined ? undefined : { why: 'not-set-aside', item: item.id }
  },
}

export const custodyPredicates = [
  registerBalanced,
  nothingAloft,
  crewClear,
  crewMustered,
  itemInDate,
  itemSound,
  faultedSetAside,
]
