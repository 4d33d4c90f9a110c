/** Per-metre matrices of conductors in the air: series with earth return, shunt by Maxwell's coefficients. */
import { complex, type Complex } from '../../math/complex'
import { capacitanceMatrix, seriesImpedance } from '../../physics/line'
import type { Conductor, Scenario } from '../../site/scenario'
import { angularFrequency } from './parts'

/** Whatever hangs in the air and carries current: a conductor of any circuit, a neutral wire. */
export type Wire = Pick<Conductor, 'x' | 'height' | 'radius' | 'gmr' | 'resistance'>

/**
 * Ohm per metre. The return current runs hundreds of metres deep, so the lowest layer's resistivity counts.
 */
export function seriesOf(scenario: Scenario, conductors: readonly Wire[]): readonly (readonly Complex[])[] {
  const { layers } = scenario.soil
  return seriesImpedance(
    scenario.frequency,
    layers[layers.length - 1]!.resistivity,
    conductors.map((it) => ({ x: it.x, y: it.height, acResistance: it.resistance, gmr: it.gmr })),
  )
}

/** Siemens per metre, to remote earth and between the conductors. */
export function capacitanceAdmittance(frequency: number, conductors: readonly Wire[]): readonly (readonly Complex[])[] {
  const omega = angularFrequency(frequency)
  const farad = capacitanceMatrix(conductors.map((it) => ({ x: it.x, y: it.height, radius: it.radius })))
  return farad.map((row) => row.map((c) => complex(0, omega * c)))
}
