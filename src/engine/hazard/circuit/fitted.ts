/**
 * Everything of a site that conducts and can change, as plain facts in a fixed order: two sites with equal facts are
 * the same circuit. Covers, guards, boots and people are not here; they stand between a body and this.
 */
import { conductorOf, isFarEnd, isOpened } from '../../site/gaps'
import { isPieceOfEnd, leadPieces, type LeadPiece } from '../../gear/leadPieces'
import { feedersOf } from '../../site/liveningTraits'
import { gearTypeOf, effectiveParameters, numberOf, requireItem } from '../../site/questions'
import type { GroundPoint } from '../../site/place'
import { phases, type ItemId, type Phase, type ThingId } from '../../site/scenario'
import type { Clamp, Site } from '../../site/site'
import type { ConductorMaterial } from '../../physics/conductor'
import { leadsAtWire } from '../../site/leadsAtWire'
import { boomParameter } from '../../site/boomParameter'
import { isOnPads } from '../../site/truckState'
import { isCutOff } from '../../site/mains'
import { isFedThrough } from '../../site/supplied'
import { invariant } from '../../units/invariant'
import { clampResistance, isClampTight } from './clampSeat'
import { findNodeOfPlace } from './nodeOfPlace'
import { rodNode } from './nodes'

export interface FittedPiece extends LeadPiece {
  /** m² that carries. */
  readonly area: number
  /** Ohm beside its metal: in the cable and in the crimps of its ends. */
  readonly added: number
}

export interface FittedLead {
  readonly item: ItemId
  readonly material: ConductorMaterial
  readonly pieces: readonly FittedPiece[]
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
  /** Wires of the low voltage whose own switch is open. */
  readonly wiresOff?: readonly ThingId[]
  readonly feedersOut: readonly ThingId[]
  readonly recloseBlocked: readonly ThingId[]
  /** Where the truck stands and on what, where the scenario says what current does with it; ohm along its boom. */
  readonly truck?: { readonly at: GroundPoint; readonly isOnPads: boolean; readonly boom: number | null }
  /** Conductors opened at the pole. */
  readonly opened?: readonly ThingId[]
  /** Other poles of the section whose jumpers are out. */
  readonly jumpersOut?: readonly ThingId[]
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
    ...wiresOff(site),
    feedersOut: feedersOut(site),
    recloseBlocked: site.scenario.feeders
      .map((it) => it.id)
      .filter((id) => site.paper.recloseBlocked[id] === true)
      .sort(),
    ...truckOf(site),
    ...(site.opened ? { opened: [...site.opened].sort() } : {}),
    ...(site.jumpersOut ? { jumpersOut: site.jumpersOut.map((it) => it.at).sort() } : {}),
  }
}

/** Said only where there are such wires. */
function wiresOff(site: Site): Pick<Fitted, 'wiresOff'> {
  const off = site.scenario.lv.wires.filter(({ id }) => isCutOff(site, id)).map(({ id }) => id)
  return off.length > 0 ? { wiresOff: off.sort() } : {}
}

/** Taken out by the control room, or proved off after it had come alive. */
function feedersOut(site: Site): readonly ThingId[] {
  const { scenario, livening } = site
  const struck = livening?.provedOff ? scenario.livenings.find((it) => it.id === livening.id) : undefined
  const proved = struck === undefined ? [] : feedersOf(scenario, struck)
  return [...new Set([...site.feedersOut, ...proved])].sort()
}

/** A dirty boom leaks as its item says. */
function truckOf(site: Site): Pick<Fitted, 'truck'> {
  const { truck } = site.scenario
  if (truck === undefined) return {}
  const boom = truck.boom ? (boomParameter(site, 'boom') ?? truck.boom.leakage) : null
  return { truck: { at: site.truck, isOnPads: isOnPads(site), boom } }
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
  const clamps = site.clamps.filter((clamp) => clamp.lead === item)
  return {
    item,
    material: is['material'] === 'aluminium' ? 'aluminium' : 'copper',
    pieces: piecesOf(site, item),
    clamps: [...clamps].sort((a, b) => compare(a.end, b.end)).map((clamp) => clampOf(site, clamp)),
  }
}

/** What the cable has lost counts all along it, what an end has lost on the piece that it is crimped to. */
function piecesOf(site: Site, id: ItemId): readonly FittedPiece[] {
  const item = requireItem(site, id)
  const type = gearTypeOf(site, id)
  const is = effectiveParameters(item)
  const hop = type.ends !== undefined && type.ends.length > 2 ? numberOf(is, 'hop') : 0
  return leadPieces(type, numberOf(is, 'length'), hop).map((piece, i): FittedPiece => {
    const ends = (type.ends ?? []).filter((end) => isPieceOfEnd(type, piece, end))
    const atEnds = ends.map((end) => effectiveParameters(item, end))
    const carrying = [is, ...atEnds].map((it) => numberOf(it, 'strandsCarrying'))
    return {
      ...piece,
      area: numberOf(is, 'area') * Math.min(...carrying) * 1e-6,
      added: (i === 0 ? numberOf(is, 'added') : 0) + atEnds.reduce((sum, it) => sum + numberOf(it, 'ferrule'), 0),
    }
  })
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
  const node = findNodeOfPlace(
    site.scenario,
    isFarEnd(thing) && !isOpened(site, conductorOf(thing)) ? conductorOf(thing) : thing,
  )
  if (node !== undefined) return node
  const rod = site.rods.find((it) => it.item === thing || rodNode(it.item) === thing)
  invariant(rod, 'a thing that a clamp can be on', thing)
  return rodNode(rod.item)
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0
}
