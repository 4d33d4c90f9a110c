/**
 * A solved body as elements of the circuit: from the node that a limb touches through what lies before the skin (a bolt,
 * the pole's concrete), the layers, and half of Z(U), to the trunk. Currents are positive into the body.
 */
import { complex, magnitude, type Complex } from '../../math/complex'
import { handToHandImpedance } from '../../physics/body'
import type { Element } from '../../physics/network'
import type { Limb, Surface } from '../../site/contact'
import type { Scenario } from '../../site/scenario'
import type { PortedTouch } from '../bodies/bodyPorts'
import type { Layer } from '../bodies/layer'
import { isAtTrunk } from '../bodies/solveBody'
import type { BodyInPhase } from './bodyInPhase'
import type { Foot } from './joinFeet'

export interface StampedBody {
  readonly person: string
  readonly trunk: string
  /** Volt between the two worst contacts inside their layers: what the limbs' impedance is taken at. */
  readonly voltage: number
  /** Ohm of one limb at that voltage. */
  readonly limb: number
  readonly contacts: readonly StampedContact[]
  /** `item limb` of layers that have failed. */
  readonly failed: readonly string[]
}

export interface StampedContact {
  readonly limb: Limb
  readonly on: Surface['kind']
  /** Element that carries this contact's current from outside to the trunk; of several, where its voltage is largest. */
  readonly element: string
  /** Ampere into the body here, as the port model has it. */
  readonly current: Complex
}

interface Stamped {
  readonly body: StampedBody
  readonly elements: readonly Element[]
  readonly feet: readonly Foot[]
}

export function stampBody(scenario: Scenario, solved: BodyInPhase): Stamped {
  const { person, ports, solution } = solved
  const { percentile, skin } = scenario.body
  const limb = 0.5 * handToHandImpedance(solution.bodyVoltage, percentile, skin)
  const trunk = `body/${person}/trunk`
  const contacts: StampedContact[] = []
  const elements: Element[] = []
  const feet: Foot[] = []
  const sharedNodes = new Set<string>()
  ports.ported.forEach((ported, i) => {
    const { touch } = ported
    const place = `body/${person}/${touch.limb}`
    const start = startOf(ported, place)
    if (start.foot !== null) feet.push(start.foot)
    let from = start.node
    if (touch.sharedSeries !== null) {
      const shared = `body/${touch.sharedSeries}`
      const id = touch.isThroughStick ? `${shared} leaks` : `${shared} to steel`
      if (!sharedNodes.has(shared)) elements.push(impedance(id, from, shared, complex(touch.series)))
      sharedNodes.add(shared)
      from = shared
    }
    const parts: Part[] = [
      ...(touch.sharedSeries === null && touch.series > 0 ? [resistance(`${place}/surface`, touch.series)] : []),
      // named from the skin outward
      ...[...solved.layers[i]!].reverse().flatMap((layer) => layerPart(place, layer)),
      ...(isAtTrunk(touch.limb) ? [] : [resistance(`${place}/limb`, limb)]),
    ]
    const chain = chained(place, from, trunk, parts)
    elements.push(...chain)
    contacts.push({ limb: touch.limb, on: touch.on, element: mostTelling(chain), current: solution.currents[i]! })
  })
  const failed = [...solved.failed].sort()
  return { body: { person, trunk, voltage: solution.bodyVoltage, limb, contacts, failed }, elements, feet }
}

function startOf({ terminal, foot }: PortedTouch, place: string): { node: string; foot: Foot | null } {
  if (terminal.kind !== 'ground') return { node: terminal.node, foot: null }
  const node = `${place}/ground`
  return { node, foot: { node, at: foot!, mutual: terminal.mutual } }
}

/** An element without its ends. */
type Part = { readonly id: string } & (
  | { readonly kind: 'impedance'; readonly impedance: Complex }
  | { readonly kind: 'admittance'; readonly admittance: Complex }
)

function resistance(id: string, ohm: number): Part {
  return { id, kind: 'impedance', impedance: complex(ohm) }
}

/** Nothing where a layer adds no ohm. */
function layerPart(place: string, layer: Layer): readonly Part[] {
  const id = `${place}/${layer.item}`
  if (layer.kind === 'insulation') return [{ id, kind: 'admittance', admittance: layer.admittance }]
  return layer.ohm === 0 ? [] : [resistance(id, layer.ohm)]
}

/** The parts one behind the other; bare skin at the trunk is a joint without voltage. */
function chained(place: string, from: string, to: string, parts: readonly Part[]): readonly Element[] {
  if (parts.length === 0) return [{ id: `${place}/skin`, kind: 'voltage', from, to, voltage: complex(0) }]
  return parts.map((part, k): Element => {
    const ends = { from: k === 0 ? from : `${parts[k - 1]!.id}-in`, to: k === parts.length - 1 ? to : `${part.id}-in` }
    return { ...part, ...ends }
  })
}

function mostTelling(chain: readonly Element[]): string {
  return chain.reduce((best, it) => (sizeOf(it) > sizeOf(best) ? it : best)).id
}

/** Ohm; 0 for a joint. */
function sizeOf(element: Element): number {
  if (element.kind === 'impedance') return magnitude(element.impedance)
  return element.kind === 'admittance' ? 1 / magnitude(element.admittance) : 0
}

function impedance(id: string, from: string, to: string, value: Complex): Element {
  return { id, kind: 'impedance', from, to, impedance: value }
}
