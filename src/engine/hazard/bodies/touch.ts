/**
 * Where a limb meets the circuit: the node behind what it touches, what lies between that node and the surface (concrete
 * by its spreading, a step bolt by its fixing, the same for both feet on one bolt), and the layers on the skin.
 */
import type { Body, Contact, Limb, Stance, Surface } from '../../site/contact'
import type { GroundPoint } from '../../site/place'
import type { ItemId, Scenario } from '../../site/scenario'
import { boomParameter } from '../../site/boomParameter'
import { isOpened } from '../../site/gaps'
import { onNextPole, withoutPole } from '../../site/nextPole'
import { findSectionNeutral } from '../../site/findSectionNeutral'
import type { Item, Site } from '../../site/site'
import { weatherAt } from '../../site/weather'
import {
  armNode,
  bucketNode,
  conductorAtPole,
  conductorNode,
  farEndNode,
  handleNode,
  leadNode,
  personNode,
  rodNode,
  truckNode,
} from '../circuit/nodes'
import { nodeOfPlace } from '../circuit/nodeOfPlace'
import { poleNode, spreadingResistance } from '../circuit/pole'
import { woodPerMetre } from '../circuit/poleWood'
import { REMOTE_EARTH } from '../../physics/network'
import { effectiveParameters, isAloft, itemsOf, requireItem, requirePerson } from '../../site/questions'
import { layerOf, type Layer } from './layer'

export type TouchPoint =
  | { readonly kind: 'node'; readonly node: string }
  | { readonly kind: 'ground'; readonly at: GroundPoint; readonly stance: Stance }

export interface Touch {
  readonly limb: Limb
  readonly on: Surface['kind']
  /** Which of its kind, where a path asks: a conductor, `neutral`, `leg-2`. */
  readonly thing?: string
  /** The far end of an opened conductor. */
  readonly end?: 'far'
  /** A hand that holds a stick, for naming the path. */
  readonly isThroughStick: boolean
  readonly point: TouchPoint
  /** Ohm from the node to the surface. */
  readonly series: number
  /** Touches of one body with the same name share their `series`: two feet on one bolt, two hands on one stick. */
  readonly sharedSeries: string | null
  /** The lead or bond that is touched; `person/` and who, where it is somebody. */
  readonly lead: ItemId | null
  readonly layers: readonly Layer[]
}

export interface TouchingBody {
  readonly person: string
  readonly touches: readonly Touch[]
}

/** @param scenario in its corner: concrete and fixings count */
export function touchingBody(site: Site, scenario: Scenario, body: Body): TouchingBody {
  return { person: body.person, touches: body.contacts.map((contact) => touchOf(site, scenario, body.person, contact)) }
}

function touchOf(site: Site, scenario: Scenario, person: string, contact: Contact): Touch {
  const { limb, on, through } = contact
  const area = contactArea(scenario, limb, on)
  const met = onBondedMat(site, person, contact) ?? meeting(site, scenario, person, on, area)
  const touch = { limb, on: on.kind, ...particular(scenario, on), lead: leadOf(on) }
  const layers = through.map((item) => layerOf(site, scenario, item, limb, area))
  const stick = through.find((item) => site.items[item]?.type === 'operating-stick')
  const leakage = layers.find((it) => it.item === stick)
  if (stick === undefined || leakage?.kind !== 'resistance' || met.series > 0 || met.point.kind !== 'node') {
    return { ...touch, isThroughStick: stick !== undefined, layers, ...met }
  }
  // one stick is one resistance, however many hands hold it
  return {
    ...touch,
    isThroughStick: true,
    layers: layers.filter((it) => it !== leakage),
    point: met.point,
    series: leakage.ohm,
    sharedSeries: leakage.ohm > 0 ? `${person}/stick ${stick} on ${met.point.node}` : null,
  }
}

function contactArea(scenario: Scenario, limb: Limb, on: Surface): number {
  const { area } = scenario.contact
  if (limb === 'thigh' || limb === 'chest') return area.thigh
  if (limb === 'left-hand' || limb === 'right-hand') return area.hand
  if (on.kind === 'ground') return area.sole
  // a leg that slips onto a wire touches it like a hand does
  return on.kind === 'step-bolt' ? area.bootOnBolt : area.hand
}

function particular(scenario: Scenario, on: Surface): Pick<Touch, 'thing' | 'end'> {
  if (on.kind === 'conductor') {
    const isNeutral = findSectionNeutral(scenario)?.id === on.id
    const thing = isNeutral ? 'neutral' : on.id
    return { thing: on.at === undefined ? thing : onNextPole(thing), ...(on.end ? { end: on.end } : {}) }
  }
  return (on.kind === 'pole' || on.kind === 'step-bolt') && on.leg === 2 ? { thing: 'leg-2' } : {}
}

function leadOf(on: Surface): string | null {
  if (on.kind === 'person') return personNode(on.id)
  return on.kind === 'lead' ? on.item : null
}

type Meeting = Pick<Touch, 'point' | 'series' | 'sharedSeries'>

const bare = (node: string): Meeting => ({ point: { kind: 'node', node }, series: 0, sharedSeries: null })

/** Feet on a whole mat that is bonded to the handle are on the handle, where that has an earth of its own. */
function onBondedMat(site: Site, person: string, { on, through }: Contact): Meeting | undefined {
  if (on.kind !== 'ground') return undefined
  const { place } = requirePerson(site, person)
  if (place.kind !== 'switch') return undefined
  if (site.scenario.switches.find((it) => it.id === place.id)?.handleEarth === undefined) return undefined
  const mat = through.map((id) => requireItem(site, id)).find((it) => it.type === 'operator-mat')
  const is = mat && effectiveParameters(mat)
  return is?.['bonded'] === true && is['whole'] === true ? bare(handleNode(place.id)) : undefined
}

function meeting(site: Site, scenario: Scenario, person: string, on: Surface, area: number): Meeting {
  switch (on.kind) {
    case 'conductor':
      return bare(conductorTouched(site, on))
    case 'lead':
      return bare(leadNode(on.item, on.end))
    case 'metalwork':
      return {
        ...bare(nodeOfPlace(scenario, on.id)),
        series: withoutPole(on.id) === 'arm' ? armSeries(scenario, area) : 0,
      }
    case 'lv-wire':
      return bare(on.id)
    case 'rod':
      return bare(rodNode(on.item))
    case 'handle':
      return bare(isHandleEarthed(scenario, on.id) ? handleNode(on.id) : REMOTE_EARTH)
    case 'pole':
      return { ...bare(poleNode(scenario, on.height, on.leg)), series: spreadingResistance(scenario.pole, area) }
    case 'step-bolt':
      return {
        ...bare(poleNode(scenario, on.height, on.leg)),
        series: scenario.pole.stepBoltFixing,
        sharedSeries: `${person}/bolt ${on.leg === undefined || on.leg === 1 ? '' : `leg-${on.leg} `}${on.height}`,
      }
    case 'truck':
      return bare(truckNode)
    case 'bucket':
      return {
        ...bare(bucketNode),
        series: boomParameter(site, 'liner') ?? scenario.truck?.boom?.liner ?? 0,
        sharedSeries: `${person}/liner`,
      }
    case 'ground-thing':
      return bare(nodeOfPlace(scenario, on.id))
    case 'handline':
      return { ...bare(ropeNode(site)), series: ropeResistance(site), sharedSeries: `${person}/handline` }
    case 'person':
      return bare(personNode(on.id))
    case 'ground':
      return { point: { kind: 'ground', at: on.at, stance: on.stance }, series: 0, sharedSeries: null }
  }
}

function conductorTouched(site: Site, { id, end, at }: Extract<Surface, { kind: 'conductor' }>): string {
  if (at !== undefined) return conductorNode(id, at)
  return end === 'far' && isOpened(site, id) ? farEndNode(id) : conductorAtPole(id)
}

function isHandleEarthed({ switches }: Scenario, id: string): boolean {
  return switches.find((it) => it.id === id)?.handleEarth !== undefined
}

/** To the bolt of a wooden arm half a metre of it, and what the hand meets; steel is one piece. */
function armSeries({ pole }: Scenario, area: number): number {
  if (pole.kind !== 'wood' || pole.arm !== 'wood') return 0
  return spreadingResistance(pole, area) + 0.5 * woodPerMetre(pole)
}

/** A rope without ohms stated is no conductor: nothing in the circuit, unless a wire is twisted into it. */
function ropeNode(site: Site): string {
  return site.scenario.contact.rope === undefined && !isRopeOnPole(site, 'insulating') ? 'handline' : armNode
}

/** It hangs there, or somebody up there has it. */
const isUp = (site: Site, { where }: Item): boolean =>
  where.kind === 'aloft' || (where.kind === 'person' && isAloft(requirePerson(site, where.person)))

/** A handline up the pole that is not this, of what a sound one is. */
function isRopeOnPole(site: Site, not: 'dry' | 'insulating'): boolean {
  return itemsOf(site, 'handline').some((id) => {
    const item = requireItem(site, id)
    return isUp(site, item) && effectiveParameters(item)[not] === false
  })
}

/** A thin steel wire in the core, ohm a metre (own choice). */
const coreResistance = 0.1

/** Shoulder height of who hauls, metres. */
const haulHeight = 1.4

/** From the pulley at the arm down to the hands; wet in the rain, or when the rope itself is. */
function ropeResistance(site: Site): number {
  const { contact, pole } = site.scenario
  const length = pole.armHeight - haulHeight
  if (isRopeOnPole(site, 'insulating')) return coreResistance * length
  if (contact.rope === undefined) return 0
  return (weatherAt(site).rain || isRopeOnPole(site, 'dry') ? contact.rope.wet : contact.rope.dry) * length
}
