/**
 * What a thing affords to a person now: every act that can be named on it, the impossible ones with the world's reason.
 * The truth is asked here and only refusals come out.
 */
import { type Action, type Order, type Refusal, type Site, type Value, type ValueSpec, actions } from '../../engine'
import { actsOfGroup, isGroup, isTicked, membersOf } from './groups'
import { requireHeld, siteNow } from './held'
import { type Notice, jobStore } from './jobStore'

export interface Field {
  readonly name: string
  readonly kind: 'number' | 'one' | 'many' | 'point' | 'outline' | 'text' | 'cards'
  readonly unit: string
  readonly low: number
  readonly high: number
  readonly step: number
  readonly choices: readonly string[]
}

export interface Afford {
  /** Unique among those of one thing. */
  readonly key: string
  readonly act: string
  readonly on: string | null
  readonly item: string | null
  readonly refusal: Notice | null
  readonly fields: readonly Field[]
  /** The item in the hand is the verb. */
  readonly isByHand: boolean
}

/** Acts that name no thing hang where a person would look for them. */
const homes: Readonly<Record<string, string>> = {
  climb: 'pole',
  'inspect-pole': 'pole',
  'match-pole': 'pole',
  'strap-on': 'pole',
  unstrap: 'pole',
  'locate-services': 'ground',
  walk: 'ground',
  'park-truck': 'truck',
  'set-barrier': 'barrier',
  'take-in-barrier': 'barrier',
  'fit-cover': 'cover',
  'remove-cover': 'cover',
  'check-from-ground': 'pole-top',
}

/** @param thing null: acts on nothing in particular */
export function affordsOf(who: string, thing: string | null): readonly Afford[] {
  if (isGroup(thing)) return affordsOfGroup(who, thing)
  const site = siteNow(requireHeld())
  return [...actions.values()].flatMap((action) => {
    const isOnThing = thing !== null && (action.things?.(site).includes(thing) ?? false)
    const isUsed = thing !== null && isItemFor(action, site, thing)
    const isAtHome = (homes[action.id] ?? null) === thing && isFreeOfThing(action)
    const rod = action.id === 'drive-rod' ? rodOf(site, thing) : undefined
    if (!isOnThing && !isUsed && !isAtHome && !rod) return []
    const items = rod ? [rod] : isUsed ? [thing] : itemsFor(action, site, who)
    const on = isOnThing ? thing : null
    // An item that is pointed at cannot also be where it is used.
    if (isUsed && action.things && !isOnThing) return []
    return items.map((item) => afford(action, site, who, on, item))
  })
}

/** The rod that a place in the list is kept for, whether it is driven yet or not. */
const rodOf = (site: Site, thing: string | null): string | undefined =>
  thing?.startsWith('rod/') && site.items[thing.slice(4)] ? thing.slice(4) : undefined

/** What can be done on at least one of them; refused only when it is so for all. */
function affordsOfGroup(who: string, group: string): readonly Afford[] {
  const { belief } = jobStore.getState()
  const found = new Map<string, { readonly afford: Afford; readonly members: string[] }>()
  for (const member of belief ? membersOf(belief, group) : []) {
    for (const each of affordsOf(who, member)) {
      if (!actsOfGroup(group).includes(each.act) || each.fields.length > 0) continue
      const before = found.get(each.key)
      const members = [...(before?.members ?? []), ...(each.refusal ? [] : [member])]
      const isBetter = !before || (before.afford.refusal && !each.refusal)
      found.set(each.key, { afford: isBetter ? { ...each, on: group } : before.afford, members })
    }
  }
  return [...found.values()].map(({ afford, members }) =>
    isTicked(group) && !afford.refusal ? { ...afford, fields: [tickField(members)] } : afford,
  )
}

/** Name of the list of things of a heading. */
export const ticked = 'things'

const tickField = (choices: readonly string[]): Field => ({
  name: ticked,
  kind: 'many',
  unit: '',
  low: 0,
  high: 0,
  step: 1,
  choices,
})

const isFreeOfThing = (action: Action): boolean =>
  (!action.things || (action.optional?.includes('on') ?? false)) &&
  (!action.withTypes || homes[action.id] !== undefined)

const isItemFor = (action: Action, site: Site, id: string): boolean =>
  action.withTypes?.includes(site.items[id]?.type ?? '') ?? false

/** Items of the wanted types that are in the hands or hang up there; one empty place when there is none. */
function itemsFor(action: Action, site: Site, who: string): readonly (string | null)[] {
  const types = action.withTypes
  if (!types) return [null]
  const person = site.persons[who]
  const carried = [...(person?.holds ?? [])].reverse().concat(person?.wears ?? [])
  const near = Object.values(site.items).filter((item) => item.where.kind === 'aloft' || item.where.kind === 'fitted')
  const found = [...carried, ...near.map((item) => item.id), ...site.hauled].filter((id) => isItemFor(action, site, id))
  const unique = [...new Set(found)]
  return unique.length > 0 ? unique : [Object.keys(site.items).find((id) => isItemFor(action, site, id)) ?? null]
}

function afford(action: Action, site: Site, who: string, on: string | null, item: string | null): Afford {
  const fields = fieldsOf(action, site, on)
  const base = {
    at: site.time,
    who,
    do: action.id,
    ...(item === null ? {} : { with: item }),
    ...(on === null ? {} : { on }),
  }
  const refusal = firstRefusal(
    action,
    site,
    samplesOf(fields, site, who).map((values) => ({ ...base, values })),
  )
  return {
    key: `${action.id}:${item ?? ''}`,
    act: action.id,
    on,
    item,
    refusal: refusal ? { who, ...refusal } : null,
    fields,
    isByHand: action.byHand === true,
  }
}

/** Impossible only if it is so with every value that was tried. */
function firstRefusal(action: Action, site: Site, orders: readonly Order[]): Refusal | undefined {
  let first: Refusal | undefined
  for (const order of orders) {
    const refusal = action.check(site, order)
    if (!refusal) return undefined
    first ??= refusal
  }
  return first
}

/** Where somebody walks to is a point or a name: with the name given, nothing is left to fill in. */
function fieldsOf(action: Action, site: Site, on: string | null): readonly Field[] {
  const isEither = action.optional?.includes('on') ?? false
  return Object.entries(action.values ?? {})
    .filter(([name]) => !(on !== null && isEither && action.optional?.includes(name)))
    .map(([name, spec]) => toField(name, spec, site))
}

function toField(name: string, spec: ValueSpec, site: Site): Field {
  const none = { name, unit: '', low: 0, high: 0, step: 1, choices: [] as readonly string[] }
  if (spec.kind === 'number') return { ...none, ...spec }
  if (spec.kind === 'choice') return { ...none, kind: spec.many ? 'many' : 'one', choices: spec.of(site) }
  return { ...none, kind: spec.kind }
}

/** Sets of values inside the possible: figures on a grid, each choice, places beside the person. */
function samplesOf(fields: readonly Field[], site: Site, who: string): readonly Readonly<Record<string, Value>>[] {
  const place = site.persons[who]?.place
  const here = place?.kind === 'ground' ? place.at : { x: 0.3, y: 0.3 }
  return fields.reduce<readonly Readonly<Record<string, Value>>[]>(
    (sets, field) =>
      samplesOfField(field, here).flatMap((value) => sets.map((set) => ({ ...set, [field.name]: value }))),
    [{}],
  )
}

const fractions = Array.from({ length: 13 }, (_, i) => i / 12)

function samplesOfField(field: Field, here: { x: number; y: number }): readonly Value[] {
  switch (field.kind) {
    case 'number':
      return fractions.map((share) => field.low + (field.high - field.low) * share)
    case 'one':
      return field.choices
    case 'point':
      return [{ x: here.x + 0.4, y: here.y }]
    case 'outline':
      return [[here, { x: here.x + 1, y: here.y }, { x: here.x + 1, y: here.y + 1 }]]
    case 'text':
      return ['']
    default:
      return [[]]
  }
}

/** What a free hand does with a loose item. */
const ofFreeHand = ['wear', 'take']

/** Two of the chosen people send an item up together: one ties it on, one hauls when it is tied. */
export interface SendingUp {
  readonly item: string
  readonly ties: string
  readonly hauls: string
}

export function findSendingUp(people: readonly string[], item: string | null): SendingUp | undefined {
  if (item === null || isGroup(item)) return undefined
  const site = siteNow(requireHeld())
  const ties = people.find((who) => affordsOf(who, item).some((it) => it.act === 'tie-on' && it.refusal === null))
  const hauls = people.find((who) => {
    const place = site.persons[who]?.place
    return who !== ties && place?.kind === 'pole' && place.station !== 'foot'
  })
  return ties === undefined || hauls === undefined ? undefined : { item, ties, hauls }
}

/** More is printed on it than its number: to be seen without reading it. */
export function hasPrint(item: string): boolean {
  return Object.keys(siteNow(requireHeld()).items[item]?.label ?? {}).some((name) => name !== 'serial')
}

/** The act that the hand would do: of what was taken last, if the world allows it; a free hand takes what lies there. */
export function findHandAct(who: string, thing: string | null): Afford | undefined {
  const holds = siteNow(requireHeld()).persons[who]?.holds ?? []
  const rank = (it: Afford) => (it.item === null ? -1 : holds.indexOf(it.item))
  const possible = affordsOf(who, thing).filter((it) => it.refusal === null)
  const byHand = possible.filter((it) => it.isByHand).sort((a, b) => rank(b) - rank(a))[0]
  return byHand ?? ofFreeHand.map((act) => possible.find((it) => it.act === act)).find((it) => it !== undefined)
}
