/**
 * Where a limb meets the circuit: the node behind what it touches, what lies between that node and the surface (concrete
 * by its spreading, a step bolt by its fixing, the same for both feet on one bolt), and the layers on the skin.
 */
import type { Body, Contact, Limb, Surface } from '../../site/contact'
import type { GroundPoint } from '../../site/place'
import type { ItemId, Scenario } from '../../site/scenario'
import type { Site } from '../../site/site'
import { cageNode, conductorAtPole, leadNode, rodNode } from '../circuit/nodes'
import { spreadingResistance } from '../circuit/pole'
import { layerOf, type Layer } from './layer'

export type TouchPoint =
  | { readonly kind: 'node'; readonly node: string }
  | { readonly kind: 'ground'; readonly at: GroundPoint; readonly stance: 'standing' | 'pace' }

export interface Touch {
  readonly limb: Limb
  readonly on: Surface['kind']
  /** A hand that holds a stick, for naming the path. */
  readonly isThroughStick: boolean
  readonly point: TouchPoint
  /** Ohm from the node to the surface. */
  readonly series: number
  /** Touches of one body with the same name share their `series`: two feet on one bolt, two hands on one stick. */
  readonly sharedSeries: string | null
  /** The lead or bond that is touched. */
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
  const met = meeting(scenario, person, on, area)
  const touch = { limb, on: on.kind, lead: on.kind === 'lead' ? on.item : null }
  const layers = through.map((item) => layerOf(site, item, limb, area))
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

function meeting(
  scenario: Scenario,
  person: string,
  on: Surface,
  area: number,
): Pick<Touch, 'point' | 'series' | 'sharedSeries'> {
  const bare = (node: string) => ({ point: { kind: 'node', node } as const, series: 0, sharedSeries: null })
  switch (on.kind) {
    case 'conductor':
      return bare(conductorAtPole(on.id))
    case 'lead':
      return bare(leadNode(on.item, on.end))
    case 'metalwork':
      return bare(on.id)
    case 'lv-wire':
      return bare(on.id)
    case 'rod':
      return bare(rodNode(on.item))
    case 'handle':
      return bare('0')
    case 'pole':
      return { ...bare(cageNode), series: spreadingResistance(scenario.pole, area) }
    case 'step-bolt':
      return { ...bare(cageNode), series: scenario.pole.stepBoltFixing, sharedSeries: `${person}/bolt ${on.height}` }
    case 'ground':
      return { point: { kind: 'ground', at: on.at, stance: on.stance }, series: 0, sharedSeries: null }
  }
}
