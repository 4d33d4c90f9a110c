/**
 * A feeder: EMFs behind the source impedance (Z1 = Z0, so no coupling between phases), the capacitance of the other lines
 * on its busbar, the neutral's earthing (neutralEarthing.ts), and the line to where the feeder meets the section, with
 * earth return (modified Carson), its neutral wire where it has one, and its own capacitance, half at each end. Phase A
 * leads: EMFs at 0°, -120°, 120°, rms to the star point. A spur of two conductors comes off a busbar of three phases; a
 * single wire is fed by its isolating transformer, one winding between the wire and the earth of the station.
 */
import { complex, scale, ZERO } from '../../math/complex'
import { invariant } from '../../units/invariant'
import type { Element } from '../../physics/network'
import { phasesOf, voltageToEarth } from '../../site/phasesOf'
import { phases, type Conductor, type Feeder, type Phase, type Scenario, type ThingId } from '../../site/scenario'
import { ladderImpedance } from './ladder'
import { networkSusceptance, neutralEarthing, stationEarth, stationNode } from './neutralEarthing'
import { feederNeutral, neutralEnd } from './neutralWire'
import { feederFuseId, feederLineId, feederNode } from './nodes'
import { capacitanceAdmittance, seriesOf } from './overhead'
import { phasor } from './phasor'
import { jointResistance, resistor } from './parts'

export function requireFeeder(scenario: Scenario, id: string): Feeder {
  const feeder = scenario.feeders.find((it) => it.id === id)
  invariant(feeder, 'a feeder of the scenario', id)
  return feeder
}

/** The source's own impedance in one phase: carries all that leaves the busbar by this phase and its capacitances. */
function sourceId(feeder: ThingId, phase: Phase): string {
  return `${feeder}/source-${phase}`
}

export function supply(scenario: Scenario, feeder: Feeder): readonly Element[] {
  return [
    ...sources(feeder),
    ...othersOnBusbar(scenario, feeder),
    ...neutralEarthing(scenario, feeder),
    ...stationEarth(feeder),
    ...line(scenario, feeder),
  ]
}

function phasesAtBusbar({ conductors }: Feeder): readonly Phase[] {
  return conductors.length === 1 ? phasesOf(conductors) : phases
}

function sources(feeder: Feeder): readonly Element[] {
  const { id } = feeder
  return phasesAtBusbar(feeder).flatMap((phase): Element[] => [
    {
      id: `${id}/emf-${phase}`,
      kind: 'voltage',
      from: feederNode(id, 'emf', phase),
      to: feederNode(id, 'star'),
      voltage: phasor(voltageToEarth(feeder), phase),
    },
    {
      id: sourceId(id, phase),
      kind: 'impedance',
      from: feederNode(id, 'emf', phase),
      to: feederNode(id, 'bus', phase),
      impedance: feeder.sourceImpedance,
    },
  ])
}

/** The other lines as one capacitance to earth a phase, with no coupling between phases. */
function othersOnBusbar(scenario: Scenario, feeder: Feeder): readonly Element[] {
  if (feeder.networkCapacitance === undefined) return []
  const own = complex(0, networkSusceptance(scenario, feeder))
  const at = phasesAtBusbar(feeder)
  return [
    {
      id: `${feeder.id}/network`,
      kind: 'shunt',
      nodes: at.map((phase) => feederNode(feeder.id, 'bus', phase)),
      admittance: at.map((row) => at.map((column) => (row === column ? own : ZERO))),
    },
  ]
}

function line(scenario: Scenario, feeder: Feeder): readonly Element[] {
  const { id, length, neutralWire: wire } = feeder
  const own = phasesOf(feeder.conductors)
  const ordered = own.map((phase) => conductorOfPhase(feeder.conductors, phase))
  const wires = wire === undefined ? ordered : [...ordered, wire]
  const neutral = wire === undefined ? undefined : feederNeutral(scenario, feeder, wire)
  const admittance = capacitanceAdmittance(scenario.frequency, wires).map((row) => row.map((y) => scale(y, length / 2)))
  const begin = feeder.fuses === undefined ? 'bus' : 'line'
  const ends = (part: 'bus' | 'line' | 'end', neutralNode: readonly string[]): readonly string[] => [
    ...own.map((phase) => feederNode(id, part, phase)),
    ...neutralNode,
  ]
  return [
    ...(neutral?.earths ?? []),
    ...(feeder.fuses === undefined ? [] : own.map((phase) => fuse(id, phase))),
    {
      id: `${id}/line`,
      kind: 'coupled',
      branches: [
        ...own.map((phase) => ({
          id: feederLineId(id, phase),
          from: feederNode(id, begin, phase),
          to: feederNode(id, 'end', phase),
        })),
        ...(neutral?.branches ?? []),
      ],
      impedance: ladderImpedance(seriesOf(scenario, wires), length, neutral?.spans ?? []),
    },
    {
      id: `${id}/shunt-bus`,
      kind: 'shunt',
      nodes: ends(begin, wire === undefined ? [] : [stationNode(feeder)]),
      admittance,
    },
    {
      id: `${id}/shunt-end`,
      kind: 'shunt',
      nodes: ends('end', wire === undefined ? [] : [neutralEnd(scenario, feeder, wire)]),
      admittance,
    },
  ]
}

function fuse(feeder: ThingId, phase: Phase): Element {
  const id = feederFuseId(feeder, phase)
  return resistor(id, feederNode(feeder, 'bus', phase), feederNode(feeder, 'line', phase), jointResistance)
}

export function conductorOfPhase(conductors: readonly Conductor[], phase: Phase): Conductor {
  const conductor = conductors.find((it) => it.phase === phase)
  invariant(conductor, 'a conductor of each phase', phase)
  return conductor
}
