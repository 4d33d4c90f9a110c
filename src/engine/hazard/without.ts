/**
 * How much each fitted thing mattered, plainly: the same moment and livening again with that one thing away. Leads are
 * tried whole and clamp by clamp; each rod, with what is clamped to it; earths at the switches; a person's boots,
 * overshoes and gloves, the cover, each guard, a platform, the bond, the barrier.
 */
import type { ItemId } from '../site/scenario'
import type { Site } from '../site/site'
import { gearTypeOf } from '../site/questions'
import { rodNode } from './circuit/nodes'
import type { Corner } from './corner'
import type { Exposure } from './exposure'
import { liven, type LiveMoment } from './liven'
import { createSweepCache, type SweepCache } from './sweepCache'

type LayerKind = 'cover' | 'guard' | 'boots' | 'overshoes' | 'gloves' | 'platform'

export type FittedThing =
  | {
      readonly kind: 'lead' | 'bond' | 'rod' | 'isolation-earth' | LayerKind
      readonly item: ItemId
    }
  | { readonly kind: 'clamp'; readonly item: ItemId; readonly end: string }
  | { readonly kind: 'barrier'; readonly item: ItemId | null }

export interface WithoutThing {
  readonly thing: FittedThing
  /** Each person's exposure with the thing and without it; null where nothing flows. The public by its worst path. */
  readonly persons: readonly {
    readonly person: string
    readonly withIt: Exposure | null
    readonly withoutIt: Exposure | null
  }[]
}

/** Empty when the moment cannot be solved; a thing without which it cannot be solved is left out. */
export function withoutEach(
  moment: LiveMoment,
  livening: string,
  corner: Corner,
  cache: SweepCache = createSweepCache(),
): readonly WithoutThing[] {
  const whole = liven(moment, livening, corner, cache)
  if (whole.kind !== 'story') return []
  return fittedThings(moment.site).flatMap((thing) => {
    const story = liven(withoutThing(moment, thing), livening, corner, cache)
    if (story.kind !== 'story') return []
    const names = [...new Set([...whole.exposures, ...story.exposures].map((it) => it.person))].sort()
    const persons = names.map((person) => ({
      person,
      withIt: worstFor(person, whole.exposures),
      withoutIt: worstFor(person, story.exposures),
    }))
    return [{ thing, persons }]
  })
}

function worstFor(person: string, exposures: readonly Exposure[]): Exposure | null {
  const own = exposures.filter((it) => it.person === person)
  return own.reduce<Exposure | null>((worst, it) => {
    return worst === null || it.judged / it.limit > worst.judged / worst.limit ? it : worst
  }, null)
}

/** What is fitted or worn now, in a fixed order. */
export function fittedThings(site: Site): readonly FittedThing[] {
  const leads = [...new Set(site.clamps.map((clamp) => clamp.lead))].sort()
  const worn = Object.values(site.persons).flatMap((person) => person.wears)
  const earths = Object.values(site.switches).flatMap(({ earth }) => earth?.item ?? [])
  const wornOn = (part: 'feet' | 'over-feet' | 'hands') =>
    worn.filter((id) => gearTypeOf(site, id).worn === part).sort()
  return [
    ...leads.map((item): FittedThing => ({ kind: isBond(site, item) ? 'bond' : 'lead', item })),
    ...leads
      .filter((item) => !isBond(site, item))
      .flatMap((item) =>
        site.clamps.filter((it) => it.lead === item).map((it): FittedThing => ({ kind: 'clamp', item, end: it.end })),
      ),
    ...site.rods.map((rod): FittedThing => ({ kind: 'rod', item: rod.item })),
    ...earths.sort().map((item): FittedThing => ({ kind: 'isolation-earth', item })),
    ...(site.cover ? [{ kind: 'cover', item: site.cover.item } as const] : []),
    ...site.guards.map((guard): FittedThing => ({ kind: 'guard', item: guard.item })),
    ...wornOn('feet').map((item): FittedThing => ({ kind: 'boots', item })),
    ...wornOn('over-feet').map((item): FittedThing => ({ kind: 'overshoes', item })),
    ...wornOn('hands').map((item): FittedThing => ({ kind: 'gloves', item })),
    ...(site.platforms ?? []).map(({ item }): FittedThing => ({ kind: 'platform', item })),
    ...(site.barrier ? [{ kind: 'barrier', item: null } as const] : []),
  ]
}

function isBond(site: Site, item: ItemId): boolean {
  return site.items[item]?.type === 'bond-lead'
}

export function withoutThing({ site, bodies }: LiveMoment, thing: FittedThing): LiveMoment {
  switch (thing.kind) {
    case 'lead':
    case 'bond':
      return { bodies, site: { ...site, clamps: site.clamps.filter((it) => it.lead !== thing.item) } }
    case 'clamp':
      return {
        bodies,
        site: { ...site, clamps: site.clamps.filter((it) => it.lead !== thing.item || it.end !== thing.end) },
      }
    case 'rod': {
      const isOnIt = (on: string): boolean => on === thing.item || on === rodNode(thing.item)
      const clamps = site.clamps.filter((it) => !isOnIt(it.on))
      return { bodies, site: { ...site, clamps, rods: site.rods.filter((it) => it.item !== thing.item) } }
    }
    case 'isolation-earth':
      return { bodies, site: { ...site, switches: withoutEarth(site.switches, thing.item) } }
    case 'barrier':
      return { bodies, site: { ...site, barrier: null } }
    default:
      return { site, bodies: withoutLayer(bodies, thing.item) }
  }
}

function withoutEarth(switches: Site['switches'], item: ItemId): Site['switches'] {
  const freed = Object.entries(switches).map(([id, state]) => {
    return [id, state.earth?.item === item ? { ...state, earth: null } : state] as const
  })
  return Object.fromEntries(freed)
}

/** Who wears nothing of it stays the same body. */
function withoutLayer(bodies: LiveMoment['bodies'], item: ItemId): LiveMoment['bodies'] {
  return bodies.map((body) => {
    if (!body.contacts.some((it) => it.through.includes(item))) return body
    const contacts = body.contacts.map((it) => ({ ...it, through: it.through.filter((id) => id !== item) }))
    return { ...body, contacts }
  })
}
