/** Belief to picture: only what was perceived goes in, so only that can be drawn. */
import { type Belief, gearCatalogue, type ItemId, type PersonId, type Phase, type ThingId } from '../../../engine'
import { findFinding } from '../../stores/findFinding'
import type { LeadPicture, PersonPicture, SitePicture, SwitchPicture, WireState } from './sitePicture'

/** An act in progress. */
export interface Doing {
  readonly who: PersonId
  readonly act: string
  readonly thing: ThingId | null
  readonly item: ItemId | null
}

/** @param risen conductors that a drawn livening lifts, though they are earthed */
export function pictureOf(
  belief: Belief,
  doing: readonly Doing[] = [],
  risen: ReadonlySet<ThingId> = new Set(),
): SitePicture {
  const { sheet } = belief
  const typeOf = Object.fromEntries(belief.items.map(({ id, type }) => [id, type]))
  const leads = leadsOf(belief)
  const ofType = (type: string) => belief.items.filter((item) => item.type === type)
  return {
    conductors: Object.fromEntries(
      belief.conductors.map(({ id, state }) => [id, wireState(id, state, leads, risen.has(id))]),
    ),
    rods: belief.rods.map(({ item, at, depth }) => ({ item, at, depth, length: lengthOf(belief, item, 'length', 2) })),
    leads,
    cover: belief.cover && { item: belief.cover.item, from: belief.cover.from, to: belief.cover.to },
    guards: belief.guards,
    barrier: belief.barrier,
    truck: belief.truck,
    bucket: belief.truckState?.bucket ?? null,
    isOnPads: belief.truckState?.outriggers === 'down',
    jumpers: belief.jumpers,
    farJumpers: Object.fromEntries(sheet.place.sectionJumpers.map(({ id }) => [id, tailsTold(belief, id)])),
    tarp: belief.items.filter(({ where }) => where.kind === 'tarp').map(({ id }) => id),
    tied: belief.items.filter(({ where }) => where.kind === 'handline').map(({ id }) => id),
    aloft: belief.items.filter(({ where }) => where.kind === 'aloft').map(({ id }) => id),
    typeOf,
    found: foundOn(belief),
    platforms: belief.platforms,
    hasHandline: ofType('handline').some((item) => isOnPole(belief, item)) || belief.hauled.length > 0,
    hasSigns: ofType('sign-set').some(({ where }) => where.kind === 'fitted'),
    insulator: belief.insulator,
    carriers: Object.fromEntries(belief.mains.map((it) => [it.id, carriersSeen(it.last)])),
    quarantined: belief.items.filter(({ verdict }) => verdict === 'quarantine').map(({ id }) => id),
    isDusk: isDusk(sheet.startsAt + belief.time),
    weather: { ...sheet.weather, ...belief.weather },
    hazards: hazardsOf(belief),
    work: sheet.work.conductor,
    people: belief.persons
      .filter(({ isHere }) => isHere)
      .map((person): PersonPicture => {
        const act = doing.find((it) => it.who === person.id)
        const { id, role, place, holds, wears, strapped, onMat } = person
        return {
          id,
          role,
          place,
          holds,
          wears,
          isStrapped: strapped,
          isOnMat: onMat,
          doing: act ? { act: act.act, on: act.thing, with: act.item } : null,
        }
      }),
    switches: sheet.switches.map((it) => switchOf(belief, it)),
  }
}

/** The last that was said or seen of them says how their tails are. */
function tailsTold({ evidence }: Belief, id: ThingId): SitePicture['farJumpers'][ThingId] {
  const last = evidence.findLast(({ of, says }) => of === id && /jumpers-(on|hanging|tied-back)$/.test(says))
  if (!last || last.says.endsWith('-on')) return 'on'
  return last.says.endsWith('-hanging') ? 'hanging' : 'tied-back'
}

function foundOn({ items }: Belief): SitePicture['found'] {
  const told = items.map(
    ({ id, evidence }) =>
      [id, [...new Set(evidence.flatMap((it) => findFinding(it) ?? []))].filter((name) => name !== 'sound')] as const,
  )
  return Object.fromEntries(told.filter(([, found]) => found.length > 0))
}

/** Fitted, hanging, or taken up by whoever climbed with it. */
function isOnPole({ persons }: Belief, { where }: Belief['items'][number]): boolean {
  if (where.kind !== 'person') return where.kind === 'aloft' || where.kind === 'fitted'
  const { place } = persons.find(({ id }) => id === where.person) ?? {}
  return place?.kind === 'pole' && place.station !== 'foot'
}

/** The trainee's own marks, numbered in the order they were marked, as on the job sheet. */
function hazardsOf({ sheet, written }: Belief): SitePicture['hazards'] {
  const { hazards: marked } = written
  return typeof marked === 'object' ? marked.flatMap((id) => sheet.hazards.filter((it) => it.id === id)) : []
}

function lengthOf(belief: Belief, item: ItemId, name: string, otherwise: number): number {
  const it = belief.items.find(({ id }) => id === item)
  const value = it?.label?.[name] ?? gearCatalogue.get(it?.type ?? '')?.parameters[name]
  return typeof value === 'number' ? value : otherwise
}

/** Leads that are on something or hang aloft; those on the tarp lie there as coils. */
function leadsOf(belief: Belief): readonly LeadPicture[] {
  return belief.items.flatMap((item): LeadPicture[] => {
    const ends = gearCatalogue.get(item.type)?.ends
    const clamps = belief.clamps.filter(({ lead }) => lead === item.id)
    const isAloft = belief.hauled.includes(item.id)
    if (!ends || (clamps.length === 0 && !isAloft)) return []
    const first = lengthOf(belief, item.id, 'length', 12)
    const hop = lengthOf(belief, item.id, 'hop', 1.5)
    return [
      {
        item: item.id,
        isBond: item.type === 'bond-lead',
        ends: ends.map((end) => {
          const clamp = clamps.find((it) => it.end === end)
          return { end, on: clamp?.on ?? null, turns: clamp?.turns ?? 0 }
        }),
        lengths: ends.slice(1).map((_, index) => (index === 0 ? first : hop)),
        isAloft,
        hub: gearCatalogue.get(item.type)?.hub ?? null,
        route: routeOf(belief, item.id),
      },
    ]
  })
}

/** As the crew wrote down; clear of the LV wires unless they said otherwise. */
function routeOf({ written }: Belief, lead: ItemId): LeadPicture['route'] {
  const route = written[`route:${lead}`]
  return route === 'over-lv' || route === 'coiled' ? route : 'clear-of-lv'
}

/** Before seven in the morning and after six in the evening; of no place in particular. */
const isDusk = (secondOfDay: number): boolean => {
  const hour = (secondOfDay / 3600) % 24
  return hour < 7 || hour >= 18
}

function carriersSeen(last: Belief['mains'][number]['last']): SitePicture['carriers'][string] {
  if (!last) return 'not-looked'
  if (last.says === 'did.put-carriers-in') return 'in'
  if (last.says === 'did.take-carriers-out') return 'out'
  const told = Object.values(last.values).join(' ')
  return /hung/.test(told) ? 'hung' : /out/.test(told) ? 'out' : /\bin\b/.test(told) ? 'in' : 'not-looked'
}

/**
 * Earthed: a clamp of a lead whose earth end is on a rod; lifted when a drawn livening raises it all the same. A clamp
 * alone earns no more trust than the test before it.
 */
function wireState(
  id: ThingId,
  state: Belief['conductors'][number]['state'],
  leads: readonly LeadPicture[],
  isRisen: boolean,
): WireState {
  const isEarthed = leads.some(
    ({ isBond, ends }) =>
      !isBond && ends.some(({ on }) => on === id) && ends.some(({ end, on }) => end === 'earth' && on !== null),
  )
  if (isEarthed) return isRisen ? 'risen' : 'earthed'
  return state === 'treat-as-live' ? 'live' : 'tested'
}

const phases: readonly Phase[] = ['A', 'B', 'C']

function switchOf(belief: Belief, { id, label, along }: Belief['sheet']['switches'][number]): SwitchPicture {
  const seen = belief.switches.find((it) => it.id === id)
  const blades = Object.fromEntries(
    phases.map((phase) => [phase, bladeSeen(seen?.blades[phase])]),
  ) as SwitchPicture['blades']
  return {
    id,
    label,
    along,
    handle: seen?.handle ?? 'closed',
    blades,
    hasLock: typeof seen?.lock === 'string',
    hasTag: typeof seen?.tag === 'string',
    isFuses: belief.sheet.place.fuseSwitches.includes(id),
    hasEarth: typeof seen?.earth === 'string',
  }
}

/** The last look at a blade says in which position it was. */
function bladeSeen(look: Belief['switches'][number]['blades'][Phase] | undefined): 'open' | 'closed' | 'not-looked' {
  if (!look) return 'not-looked'
  return /closed/.test(`${look.says} ${Object.values(look.values).join(' ')}`) ? 'closed' : 'open'
}
