/**
 * A circuit beside the section that stays alive. Over the stretch where the two run together its conductors are branches
 * of the same coupled element (section.ts): series and capacitance. Where the stretch begins an ideal source holds its
 * voltages, or a feeder goes on into it; where it ends ideal sources draw its load. A fault elsewhere draws its current
 * there too, to remote earth.
 * A balanced load has power factor 1, a fault's current is in phase with its own phase's voltage (own choice: its angle
 * only matters beside the load).
 */
import { magnitude, negate, scale, subtract, type Complex } from '../../math/complex'
import type { Element } from '../../physics/network'
import { REMOTE_EARTH } from '../../physics/network'
import { phasesOf, voltageToEarth } from '../../site/phasesOf'
import type { ParallelCircuit, Phase, Scenario, ThingId } from '../../site/scenario'
import { invariant } from '../../units/invariant'
import { conductorNode, feederFuseId, feederNode } from './nodes'
import { jointResistance, resistor } from './parts'
import { phasor } from './phasor'

export function requireParallel(scenario: Scenario, id: string): ParallelCircuit {
  const found = scenario.parallels?.find((it) => it.id === id)
  invariant(found, 'a parallel circuit of the scenario', id)
  return found
}

/** The places of the section where the common stretch begins and ends. */
export function parallelPlaces(it: ParallelCircuit): readonly { readonly name: string; readonly along: number }[] {
  return [
    { name: `${it.id}-from`, along: it.from },
    { name: `${it.id}-to`, along: it.to },
  ]
}

/** What it is fed with while it is alive; its conductors are in the section's elements. */
export function parallelSources(it: ParallelCircuit): readonly Element[] {
  return [
    ...it.conductors.map(({ id, phase }): Element => {
      const begins = conductorNode(id, `${it.id}-from`)
      if (it.feeder !== undefined) {
        return resistor(`beside/${it.id}/from-${phase}`, feederNode(it.feeder, 'end', phase), begins, jointResistance)
      }
      const voltage = voltageOf(it, phase)
      return { id: parallelEmfId(it, phase), kind: 'voltage', from: begins, to: REMOTE_EARTH, voltage }
    }),
    ...loads(it),
  ]
}

function loads(it: ParallelCircuit): readonly Element[] {
  if (it.loadCurrent === 0) return []
  return it.conductors.map(({ phase }) => drawn(it, phase, 'load', loadOf(it, phase)))
}

/** Draws from a conductor of that circuit: what of it a dead feeder no longer gives. */
function isDrawn({ id }: ParallelCircuit, element: Element): boolean {
  return element.kind === 'current' && element.id.startsWith(`beside/${id}/`)
}

/** Nothing is drawn where the feeder that it is drawn from is not alive: a stated current has no way there. */
export function drawnFrom(scenario: Scenario, alive: readonly ThingId[], elements: readonly Element[]) {
  const dead = (scenario.parallels ?? []).filter(({ feeder }) => feeder !== undefined && !alive.includes(feeder))
  return elements.filter((element) => !dead.some((it) => isDrawn(it, element)))
}

/**
 * What is drawn once fuses of its feeder have blown: its load between the two phases that are left, none of one alone,
 * and no fault of a phase that is dead.
 */
export function drawnAfter(
  scenario: Scenario,
  blown: ReadonlySet<string>,
  elements: readonly Element[],
): readonly Element[] {
  return (scenario.parallels ?? []).reduce((now, it) => {
    const { feeder, conductors } = it
    const left = conductors.filter(({ phase }) => feeder === undefined || !blown.has(feederFuseId(feeder, phase)))
    if (left.length === conductors.length) return now
    const fault = now.filter((one) => left.some(({ phase }) => one.id === drawnId(it, 'fault', phase)))
    const load = left.length > 1 ? loads({ ...it, conductors: left }) : []
    return [...now.filter((one) => !isDrawn(it, one)), ...fault, ...load.filter((one) => isDrawnIn(now, one))]
  }, elements)
}

function isDrawnIn(elements: readonly Element[], one: Element): boolean {
  return elements.some(({ id }) => id === one.id)
}

export function parallelEmfId({ id }: ParallelCircuit, phase: Phase): string {
  return `beside/${id}/emf-${phase}`
}

/** Where a conductor of the feeder comes to at the crossing: its line ends there, or goes on beside the section. */
export function feederAtCrossing(scenario: Scenario, feeder: ThingId, phase: Phase): string {
  const along = scenario.section.crossingAlong
  const beside = scenario.parallels?.find((it) => it.feeder === feeder && it.from <= along && along <= it.to)
  const conductor = beside?.conductors.find((it) => it.phase === phase)
  return conductor === undefined ? feederNode(feeder, 'end', phase) : conductorNode(conductor.id, 'crossing')
}

/** To earth, volts. */
export function voltageOf(it: ParallelCircuit, phase: Phase): Complex {
  return phasor(voltageToEarth(it), phase)
}

/** An earth fault elsewhere, in one phase. */
export function faultDrawn(it: ParallelCircuit, phase: Phase): Element {
  invariant(it.faultCurrent !== undefined, 'a fault current of the parallel circuit', it.id)
  return drawn(it, phase, 'fault', scale(unit(voltageOf(it, phase)), it.faultCurrent))
}

function drawnId({ id }: ParallelCircuit, what: 'fault' | 'load', phase: Phase): string {
  return `beside/${id}/${what}-${phase}`
}

function drawn(it: ParallelCircuit, phase: Phase, what: 'fault' | 'load', current: Complex): Element {
  const conductor = it.conductors.find((one) => one.phase === phase)
  invariant(conductor, 'a conductor of that phase', it.id, phase)
  return {
    id: drawnId(it, what, phase),
    kind: 'current',
    from: conductorNode(conductor.id, `${it.id}-to`),
    to: REMOTE_EARTH,
    current,
  }
}

/** Three phases: with their voltages. Two: through the load between them. One: back through the earth. */
function loadOf(it: ParallelCircuit, phase: Phase): Complex {
  const [first, second] = phasesOf(it.conductors)
  if (it.conductors.length === 2 && first !== undefined && second !== undefined) {
    const between = scale(unit(subtract(voltageOf(it, first), voltageOf(it, second))), it.loadCurrent)
    return phase === first ? between : negate(between)
  }
  return scale(unit(voltageOf(it, phase)), it.loadCurrent)
}

function unit(phasor: Complex): Complex {
  return scale(phasor, 1 / magnitude(phasor))
}
