/**
 * Everything of a site that conducts and can change, as plain facts in a fixed order: two sites with equal facts are
 * the same circuit. Covers, guards, boots and people are not here; they stand between a body and this.
 */
import { feedersOf } from '../../site/liveningTraits'
import { gearTypeOf, effectiveParameters, numberOf, requireItem } from '../../site/questions'
import type { GroundPoint } from '../../site/place'
import { phases, type ItemId, type Phase, type ThingId } from '../../site/scenario'
import type { Clamp, Site } from '../../site/site'
import type { ConductorMaterial } from '../../physics/conductor'
import { leadsAtWire } from '../../site/leadsAtWire'
import { isFedThrough } from '../../site/supplied'
import { invariant } from '../../units/invariant'
import { clampResistance, isClampTight } from './clampSeat'
import { findNodeOfPlace } from './nodeOfPlace'
import { rodNode } from './nodes'

export interface FittedLead {
  readonly item: ItemId
  readonly material: ConductorMaterial
  /** m² that carries. */
  readonly area: number
  /** Ohm in the first piece of cable beside its metal. */
  readonly added: number
  readonly pieces: readonly { readonly from: string; readonly to: string; readonly length: number }[]
  readonly clamps: readonly {
    readonly end: string
    readonly node: string
    readonly resistance: number
    readonly isTight: boolean
  }[]
}

export interface FittedTransformer {
  readonly id: ThingId
  /** Fuse carriers in their cut-outs. */
  readonly carriers: boolean
  /** Its main switch on low voltage. */
  readonly isClosed: boolean
}

export interface Fitted {
  readonly leads: readonly FittedLead[]
  readonly rods: readonly {
    readonly item: ItemId
    readonly at: GroundPoint
    readonly depth: number
    readonly radius: number
  }[]
  readonly switches: readonly {
    readonly id: ThingId
    readonly closed: readonly Phase[]
    readonly earth: { readonly resistance: number; readonly phases: number } | null
  }[]
  readonly transformers: readonly FittedTransformer[]
  /** Leads whose bare metal can touch this low-voltage wire, by wire; only those that some livening asks about. */
  readonly atLowVoltage: readonly { readonly wire: ThingId; readonly leads: readonly FittedLead[] }[]
  readonly feedersOut: readonly ThingId[]
  readonly recloseBlocked: readonly ThingId[]
  /** Where the truck stands, where the scenario says what current does with it. */
  readonly truck?: GroundPoint
  /** Conductors opened at the pole. */
  readonly opened?: readonly ThingId[]
}

export function fittedOf(site: Site): Fitted {
  return {
    leads: leadsOf(site),
    rods: [...site.rods]
      .sort((a, b) => compare(a.item, b.item))
      .map(({ item, at, depth }) => {
        const diameter = numberOf(effectiveParameters(requireItem(site, item)), 'diameter')
        return { item, at: { x: at.x, y: at.y }, depth, radius: diameter / 2 }
      }),
    switches: site.scenario.switches
      .map(({ id }) => {
        const state = site.switches[id]
        invariant(state, 'a state of each switch', id)
        return {
          id,
          closed: phases.filter((phase) => isFedThrough(site, id, phase)),
          earth: state.earth && isolationEarth(site, state.earth),
        }
      })
      .sort((a, b) => compare(a.id, b.id)),
    transformers: (site.scenario.transformers ?? [])
      .map(({ id }) => ({
        id,
        carriers: site.carriers[id] === 'in',
        isClosed: site.mains[id]?.position === 'closed',
      }))
      .sort((a, b) => compare(a.id, b.id)),
    atLowVoltage: site.scenario.livenings.flatMap((it) => {
      if (it.kind !== 'lead-on-low-voltage') return []
      return [{ wire: it.wire, leads: leadsAtWire(site, it.wire).map((item) => fittedLead(site, item)) }]
    }),
    feedersOut: feedersOut(site),
    recloseBlocked: site.scenario.feeders
      .map((it) => it.id)
      .filter((id) => site.paper.recloseBlocked[id] === true)
      .sort(),
    ...(site.scenario.truck ? { truck: site.truck } : {}),
    ...(site.opened ? { opened: [...site.opened].sort() } : {}),
  }
}

/** Taken out by the control room, or proved off after it had come alive. */
function feedersOut(site: Site): readonly ThingId[] {
  const { scenario, livening } = site
  const struck = livening?.provedOff ? scenario.livenings.find((it) => it.id === livening.id) : undefined
  const proved = struck === undefined ? [] : feedersOf(scenario, struck)
  return [...new Set([...site.feedersOut, ...proved])].sort()
}

function isolationEarth(site: Site, earth: { readonly item: ItemId; readonly resistance: number }) {
  const item = site.items[earth.item]
  const is = item ? effectiveParameters(item) : {}
  const added = typeof is['added'] === 'number' ? is['added'] : 0
  return {
    resistance: earth.resistance + added,
    phases: typeof is['phases'] === 'number' ? is['phases'] : phases.length,
  }
}

function leadsOf(site: Site): readonly FittedLead[] {
  const items = [...new Set(site.clamps.map((clamp) => clamp.lead))].sort()
  return items.map((item) => fittedLead(site, item))
}

export function fittedLead(site: Site, item: ItemId): FittedLead {
  const is = effectiveParameters(requireItem(site, item))
  const ends = gearTypeOf(site, item).ends ?? []
  const clamps = site.clamps.filter((clamp) => clamp.lead === item)
  return {
    item,
    material: is['material'] === 'aluminium' ? 'aluminium' : 'copper',
    area: numberOf(is, 'area') * numberOf(is, 'strandsCarrying') * 1e-6,
    added: numberOf(is, 'added'),
    pieces: ends.slice(1).map((to, i) => ({ from: ends[i]!, to, length: numberOf(is, i === 0 ? 'length' : 'hop') })),
    clamps: [...clamps].sort((a, b) => compare(a.end, b.end)).map((clamp) => clampOf(site, clamp)),
  }
}

function clampOf(site: Site, clamp: Clamp): FittedLead['clamps'][number] {
  return {
    end: clamp.end,
    node: nodeOfThing(site, clamp.on),
    resistance: clampResistance(site, clamp),
    isTight: isClampTight(site, clamp),
  }
}

/** @throws on a thing that no clamp can go on: actions refuse those. */
export function nodeOfThing(site: Site, thing: ThingId): string {
  const node = findNodeOfPlace(site.scenario, thing)
  if (node !== undefined) return node
  const rod = site.rods.find((it) => it.item === thing || rodNode(it.item) === thing)
  invariant(rod, 'a thing that a clamp can be on', thing)
  return rodNode(rod.item)
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0
}
