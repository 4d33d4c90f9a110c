/**
 * Between the star point of a feeder's source and remote earth: the neutral's earthing in series with the station's own
 * earth. On a single wire the star point is the earthed end of the isolating transformer's winding.
 */
import type { Element } from '../../physics/network'
import { REMOTE_EARTH } from '../../physics/network'
import type { Feeder, Scenario } from '../../site/scenario'
import { invariant } from '../../units/invariant'
import { feederNode } from './nodes'
import { capacitanceAdmittance } from './overhead'
import { angularFrequency, reactive, resistor } from './parts'

/** The bar in the station that its earth and a neutral wire are on. */
export function stationNode({ id, neutral }: Feeder): string {
  return feederNode(id, neutral.kind === 'solid' ? 'star' : 'station')
}

/** The earthing alone: nothing where the star point is the station's bar itself, or stands free. */
export function neutralEarthing(scenario: Scenario, feeder: Feeder): readonly Element[] {
  const { id, neutral } = feeder
  const star = feederNode(id, 'star')
  const station = stationNode(feeder)
  switch (neutral.kind) {
    case 'unearthed':
    case 'solid':
      return []
    case 'resistor':
      return [resistor(`${id}/neutral`, star, station, neutral.resistance)]
    case 'reactor':
      return [reactive(`${id}/neutral`, star, station, neutral.impedance.re, neutral.impedance.im)]
    case 'arc-suppression-coil':
      return [
        reactive(`${id}/neutral`, star, station, 0, coilReactance(scenario, feeder, neutral.tuning)),
        resistor(`${id}/coil-losses`, star, station, neutral.lossResistance),
      ]
  }
}

export function stationEarth(feeder: Feeder): readonly Element[] {
  if (feeder.neutral.kind === 'unearthed') return []
  return [resistor(`${feeder.id}/station-earth`, stationNode(feeder), REMOTE_EARTH, feeder.stationEarth)]
}

/**
 * At tuning 1 the coil takes as much as all capacitance of the network with one phase at earth: X = 1/ωΣC, over this
 * line and the others on the busbar. The section is not in it: the coil is set for the network as it stands without.
 */
function coilReactance(scenario: Scenario, feeder: Feeder, tuning: number): number {
  const ofLine = capacitanceAdmittance(scenario.frequency, feeder.conductors).flat()
  const siemens = ofLine.reduce((sum, y) => sum + y.im, 0) * feeder.length + 3 * networkSusceptance(scenario, feeder)
  invariant(siemens > 0 && tuning > 0, 'a network with capacitance to tune a coil to', feeder.id)
  return 1 / (siemens * tuning)
}

/** Siemens to earth of one phase of the other lines on the same busbar. */
export function networkSusceptance({ frequency }: Scenario, { networkCapacitance }: Feeder): number {
  return angularFrequency(frequency) * (networkCapacitance ?? 0)
}
