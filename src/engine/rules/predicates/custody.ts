/** Questions about the register, what is still up there or in the ground, and where the crew is. */
import { onNextPole } from '../../site/nextPole'
import { groundPointOf, isAloft, isOverdue, requireItem } from '../../site/questions'
import type { ItemId } from '../../site/scenario'
import type { Site } from '../../site/site'
import { matchesNames } from '../language/glob'
import type { SitePredicate } from '../language/predicate'
import { findItemOf } from '../language/runView'
import { isInside } from '../../site/place'
import { workedPole } from './workedPole'

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

/** Gear that everybody leans on where it is: on the line, in the ground, on the pole, on the feet. */
export function gearInUse(site: Site): readonly ItemId[] {
  const worn = Object.values(site.persons).flatMap(({ wears }) =>
    wears.filter((id) => requireItem(site, id).type === 'boots'),
  )
  const fitted = [
    ...site.clamps.map(({ lead }) => lead),
    ...site.rods.map(({ item }) => item),
    ...(site.cover === null ? [] : [site.cover.item]),
    ...site.guards.map(({ item }) => item),
  ]
  return [...new Set([...fitted, ...worn])]
}

const inUseUnfaulted: SitePredicate = {
  id: 'gear-in-use-unfaulted',
  says: 'nothing fitted or on the feet has carried fault current or failed under voltage',
  about: 'site',
  takes: {},
  fails({ site }) {
    const item = gearInUse(site).find((id) => requireItem(site, id).faulted || requireItem(site, id).failed)
    return item === undefined ? undefined : { why: 'carried-fault', item }
  },
}

const inUseLookedAt: SitePredicate = {
  id: 'gear-in-use-looked-at',
  says: 'nothing came alive, or all that is fitted or on the feet has been looked at since',
  about: 'site',
  takes: {},
  fails({ site }) {
    const { livening } = site
    if (livening === null) return undefined
    const item = gearInUse(site).find((id) => !namesOf(site, id).some((name) => isSeenSince(site, name, livening.at)))
    return item === undefined ? undefined : { why: 'not-looked-at', item }
  },
}

/** What is looked at to see the item: itself, the cover by its name, a guard by its wire, a rod where it stands. */
function namesOf(site: Site, id: ItemId): readonly string[] {
  const wires = site.guards.filter(({ item }) => item === id).map(({ on }) => on)
  return [id, `rod/${id}`, ...wires, ...(site.cover?.item === id ? ['cover'] : [])]
}

function isSeenSince(site: Site, name: string, at: number): boolean {
  return site.evidence.some((it) => it.of === name && it.at > at && ['look', 'test', 'feel'].includes(it.by))
}

const insulatorReplaced: SitePredicate = {
  id: 'insulator-replaced',
  says: 'the cracked insulator of the pole of the work has been changed',
  about: 'site',
  takes: {},
  fails({ site }) {
    const next = workedPole(site) === 'next' ? site.scenario.nextPole?.work : undefined
    const isChanged =
      next === undefined ? site.insulator === 'replaced' : `swapped:${onNextPole(next.conductor)}` in site.marks
    return isChanged ? undefined : { why: 'still-cracked' }
  },
}

const oldInsulatorDown: SitePredicate = {
  id: 'old-insulator-down',
  says: 'the insulator that was taken off is no longer up the pole',
  about: 'site',
  takes: {},
  fails({ site }) {
    const next = workedPole(site) === 'next' ? site.scenario.nextPole?.work : undefined
    const { old } = next ?? site.scenario.work
    return requireItem(site, old).where.kind === 'aloft' ? { why: 'left-up', item: old } : undefined
  },
}

export const custodyPredicates = [
  oldInsulatorDown,
  inUseUnfaulted,
  inUseLookedAt,
  insulatorReplaced,
  registerBalanced,
  nothingAloft,
  crewClear,
  crewMustered,
  itemInDate,
  itemSound,
  faultedSetAside,
]
