/**
 * A circuit beside the section that stays alive. Over the stretch where the two run together its conductors are branches
 * of the same coupled element (section.ts): series and capacitance. An ideal source holds its voltages where the stretch
 * begins, and ideal sources draw its load where it ends; a fault elsewhere draws its current there too, to remote earth.
 * A balanced load has power factor 1, a fault's current is in phase with its own phase's voltage (own choice: its angle
 * only matters beside the load).
 */
import { magnitude, negate, scale, subtract, type Complex } from '../../math/complex'
import type { Element } from '../../physics/network'
import { REMOTE_EARTH } from '../../physics/network'
import { phasesOf, voltageToEarth } from '../../site/phasesOf'
import type { ParallelCircuit, Phase, Scenario } from '../../site/scenario'
import { invariant } from '../../units/invariant'
import { conductorNode } from './nodes'
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

/** What it is fed with; its conductors are in the section's elements. */
export function parallelSources(it: ParallelCircuit): readonly Element[] {
  return [
    ...it.conductors.map(
      ({ id, phase }): Element => ({
        id: parallelEmfId(it, phase),
        kind: 'voltage',
        from: conductorNode(id, `${it.id}-from`),
        to: REMOTE_EARTH,
        voltage: voltageOf(it, phase),
      }),
    ),
    ...(it.loadCurrent === 0 ? [] : it.conductors.map(({ phase }) => drawn(it, phase, 'load', loadOf(it, phase)))),
  ]
}

export function parallelEmfId({ id }: ParallelCircuit, phase: Phase): string {
  return `beside/${id}/emf-${phase}`
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

function drawn(it: ParallelCircuit, phase: Phase, what: string, current: Complex): Element {
  const conductor = it.conductors.find((one) => one.phase === phase)
  invariant(conductor, 'a conductor of that phase', it.id, phase)
  return {
    id: `beside/${it.id}/${what}-${phase}`,
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
