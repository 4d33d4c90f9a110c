/**
 * One instant of a livening as one circuit with everybody in it, for export and for checking by other programs: people
 * are stamped as the impedances that they have at their solved body voltage, layers as they then stand, and the feet join
 * the soil's matrix as discs. It is the solved port model written out, everybody in it feeling the others.
 */
import type { Complex } from '../../math/complex'
import { isUnsolvable, type Circuit, type Element, type Unsolvable } from '../../physics/network'
import type { GroundPoint } from '../../site/place'
import { touchingBody } from '../bodies/touch'
import { electrodesId } from '../circuit/nodes'
import type { PhaseView } from '../circuit/phaseView'
import type { Ground } from '../circuit/ground'
import type { Corner } from '../corner'
import { phaseAt, type LinePhase } from '../lineStory'
import { lineOf, scenarioInCorner, type LiveMoment } from '../liven'
import { createSweepCache, type SweepCache } from '../sweepCache'
import { bodiesInPhase } from './bodyInPhase'
import { looseLeads } from './looseLeads'
import { joinFeet, type Foot } from './joinFeet'
import { stampBody, type StampedBody } from './stampBody'

export interface StampedInstant {
  readonly kind: 'stamped-instant'
  readonly livening: string
  readonly corner: string
  /** The stretch of the story, seconds from its start, in which the circuit stays as it is. */
  readonly from: number
  readonly to: number
  /** Hertz. */
  readonly frequency: number
  readonly circuit: Circuit
  /** In order of person. Who touches nothing, or one thing only, carries no current and is left out. */
  readonly bodies: readonly StampedBody[]
  /** With nobody in the circuit: what the site's own electrodes do. */
  readonly ground: StampedGround
}

export interface StampedGround {
  readonly electrodes: readonly {
    readonly node: string
    readonly at: GroundPoint
    readonly radius: number
    readonly voltage: Complex
    /** Ampere into the soil. */
    readonly current: Complex
  }[]
  /** Ohm: potential of one electrode per ampere of another. */
  readonly resistance: readonly (readonly number[])[]
  /** Volt at a place on the surface. */
  potentialAt(at: GroundPoint): Complex
}

/** @param options second of the story, counted from its start; persons: those who are in the circuit, all when not given */
export function stampInstant(
  moment: LiveMoment,
  livening: string,
  corner: Corner,
  options: { readonly second?: number; readonly persons?: readonly string[]; readonly cache?: SweepCache } = {},
): StampedInstant | Unsolvable {
  const { second = 0, persons, cache = createSweepCache() } = options
  const line = lineOf(moment.site, livening, corner, cache)
  if (isUnsolvable(line)) return line
  const scenario = scenarioInCorner(moment.site.scenario, corner)
  const phase = phaseAt(line, second)
  const bodies: StampedBody[] = []
  const elements: Element[] = []
  const feet: Foot[] = []
  const present = moment.bodies
    .filter((it) => persons === undefined || persons.includes(it.person))
    .sort((a, b) => (a.person < b.person ? -1 : 1))
    .map((body) => touchingBody(moment.site, scenario, body))
  const inPhase = bodiesInPhase(scenario, line, phase, present)
  if (isUnsolvable(inPhase)) return inPhase
  for (const solved of inPhase) {
    const stamped = stampBody(scenario, solved)
    bodies.push(stamped.body)
    elements.push(...stamped.elements)
    feet.push(...stamped.feet)
  }
  const own = phase.view.circuit.elements.map((it) => (it.id === electrodesId ? joinFeet(scenario, it, feet) : it))
  return {
    kind: 'stamped-instant',
    livening,
    corner: corner.id,
    ...stretchOf(phase),
    frequency: scenario.frequency,
    circuit: { elements: [...own, ...looseLeads(moment.site, scenario.frequency, inPhase), ...elements] },
    bodies,
    ground: groundIn(phase.view, phase.view.ground),
  }
}

function stretchOf({ from, to }: LinePhase): Pick<StampedInstant, 'from' | 'to'> {
  return { from, to }
}

function groundIn(view: PhaseView, ground: Ground): StampedGround {
  return {
    electrodes: ground.electrodes.map(({ node, at, radius }, i) => ({
      node,
      at,
      radius,
      voltage: view.voltage(node),
      current: view.electrodeCurrents[i]!,
    })),
    resistance: ground.resistance,
    potentialAt: (at) => ground.system.potentialAt(at, view.electrodeCurrents),
  }
}
