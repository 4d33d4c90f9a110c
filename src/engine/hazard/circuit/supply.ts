/**
 * A feeder: three EMFs behind the source impedance (Z1 = Z0, so no coupling between phases), the neutral earthing as its
 * own branch to the station's earth, and the line to where the feeder meets the section, with earth return (modified
 * Carson) and its own capacitance, half at each end. Phase A leads: EMFs at 0°, -120°, 120°, rms to the star point.
 */
import { polar, scale, type Complex } from '../../math/complex'
import { PI } from '../../math/portable'
import { invariant } from '../../units/invariant'
import type { Element } from '../../physics/network'
import { REMOTE_EARTH } from '../../physics/network'
import { phases, type Conductor, type Feeder, type Phase, type Scenario } from '../../site/scenario'
import { capacitanceAdmittance, seriesOf } from './overhead'
import { feederLineId, feederNode } from './nodes'
import { angularFrequency, reactive, resistor } from './parts'

const phaseAngle: Readonly<Record<Phase, number>> = { A: 0, B: (-2 * PI) / 3, C: (2 * PI) / 3 }

export function phaseEmf(phaseToPhase: number, phase: Phase): Complex {
  return polar(phaseToPhase / Math.sqrt(3), phaseAngle[phase])
}

export function requireFeeder(scenario: Scenario, id: string): Feeder {
  const feeder = scenario.feeders.find((it) => it.id === id)
  invariant(feeder, 'a feeder of the scenario', id)
  return feeder
}

export function supply(scenario: Scenario, feeder: Feeder): readonly Element[] {
  const { id } = feeder
  return [
    ...phases.flatMap((phase): Element[] => [
      {
        id: `${id}/emf-${phase}`,
        kind: 'voltage',
        from: feederNode(id, 'emf', phase),
        to: feederNode(id, 'star'),
        voltage: phaseEmf(feeder.voltage, phase),
      },
      {
        id: `${id}/source-${phase}`,
        kind: 'impedance',
        from: feederNode(id, 'emf', phase),
        to: feederNode(id, 'bus', phase),
        impedance: feeder.sourceImpedance,
      },
    ]),
    ...neutral(scenario, feeder),
    ...line(scenario, feeder),
  ]
}

function neutral(scenario: Scenario, feeder: Feeder): readonly Element[] {
  const { id, neutral: earthing, stationEarth } = feeder
  const star = feederNode(id, 'star')
  switch (earthing.kind) {
    case 'unearthed':
      return []
    case 'solid':
      return [resistor(`${id}/station-earth`, star, REMOTE_EARTH, stationEarth)]
    case 'resistor':
      return [
        resistor(`${id}/neutral`, star, feederNode(id, 'station'), earthing.resistance),
        resistor(`${id}/station-earth`, feederNode(id, 'station'), REMOTE_EARTH, stationEarth),
      ]
    case 'reactor':
      return [
        reactive(`${id}/neutral`, star, feederNode(id, 'station'), earthing.impedance.re, earthing.impedance.im),
        resistor(`${id}/station-earth`, feederNode(id, 'station'), REMOTE_EARTH, stationEarth),
      ]
    case 'arc-suppression-coil':
      return [
        reactive(`${id}/neutral`, star, feederNode(id, 'station'), 0, coilReactance(scenario, feeder, earthing.tuning)),
        resistor(`${id}/coil-losses`, star, feederNode(id, 'station'), earthing.lossResistance),
        resistor(`${id}/station-earth`, feederNode(id, 'station'), REMOTE_EARTH, stationEarth),
      ]
  }
}

/** At tuning 1 the coil takes what the whole network's capacitance takes with one phase at earth: X = 1/(ω ΣC). */
function coilReactance(scenario: Scenario, feeder: Feeder, tuning: number): number {
  const ofLine = capacitanceAdmittance(scenario.frequency, feeder.conductors).flat()
  const siemens = ofLine.reduce((sum, y) => sum + y.im, 0) * feeder.length + 3 * networkSusceptance(scenario, feeder)
  invariant(siemens > 0, 'a network with capacitance to tune a coil to', feeder.id)
  return 1 / (siemens * tuning)
}

/** Of one phase. */
function networkSusceptance(scenario: Scenario, feeder: Feeder): number {
  return angularFrequency(scenario.frequency) * (feeder.networkCapacitance ?? 0)
}

function line(scenario: Scenario, feeder: Feeder): readonly Element[] {
  const { id, length } = feeder
  const ordered = phases.map((phase) => conductorOfPhase(feeder.conductors, phase))
  const admittance = capacitanceAdmittance(scenario.frequency, ordered).map((row) =>
    row.map((y) => scale(y, length / 2)),
  )
  return [
    {
      id: `${id}/line`,
      kind: 'coupled',
      branches: phases.map((phase) => ({
        id: feederLineId(id, phase),
        from: feederNode(id, 'bus', phase),
        to: feederNode(id, 'end', phase),
      })),
      impedance: seriesOf(scenario, ordered).map((row) => row.map((z) => scale(z, length))),
    },
    { id: `${id}/shunt-bus`, kind: 'shunt', nodes: phases.map((phase) => feederNode(id, 'bus', phase)), admittance },
    { id: `${id}/shunt-end`, kind: 'shunt', nodes: phases.map((phase) => feederNode(id, 'end', phase)), admittance },
  ]
}

export function conductorOfPhase(conductors: readonly Conductor[], phase: Phase): Conductor {
  const conductor = conductors.find((it) => it.phase === phase)
  invariant(conductor, 'a conductor of each phase', phase)
  return conductor
}
