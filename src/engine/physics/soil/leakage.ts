/**
 * How the current of each electrode spreads over its segments, by the method of moments: every segment of an electrode
 * at one potential, P I = A V, AᵀI = currents. Electrodes without current float: they keep their potential even by
 * taking current in at one end and giving it out at the other.
 */
import { factorCholesky, invertSymmetric } from '../../math/cholesky'
import { ln, PI } from '../../math/portable'
import type { Electrode } from './electrode'
import { potentialMatrix } from './potentialMatrix'
import type { Segment } from './segments'
import type { LayeredSoil } from './soil'

export interface Leakage {
  /** Ohm at the electrodes' outsides: without the concrete around a core. */
  readonly soilResistance: readonly (readonly number[])[]
  /** Ohm, potential of electrode i per ampere of electrode j, the others present and floating. Symmetric. */
  readonly resistance: readonly (readonly number[])[]
  /** share[j][s]: ampere out of segment s per ampere of electrode j. */
  readonly share: readonly Float64Array[]
}

export function solveLeakage(
  soil: LayeredSoil,
  electrodes: readonly Electrode[],
  segments: readonly Segment[],
): Leakage {
  const factored = factorCholesky(potentialMatrix(soil, segments), segments.length)
  // response[j]: segment currents with electrode j at one volt and the others at zero
  const response = electrodes.map((_, j) =>
    factored.solve(Float64Array.from(segments, (segment) => (segment.electrode === j ? 1 : 0))),
  )
  const conductance = electrodes.map((_, i) => response.map((currents) => totalOf(segments, currents, i)))
  const soilResistance = invertSymmetric(symmetric(conductance))
  const share = electrodes.map((_, j) => {
    const currents = new Float64Array(segments.length)
    electrodes.forEach((__, i) => {
      const volt = soilResistance[i]![j]!
      for (let s = 0; s < currents.length; s++) currents[s] = currents[s]! + volt * response[i]![s]!
    })
    return currents
  })
  const resistance = soilResistance.map((row, i) =>
    row.map((ohm, j) => (i === j ? ohm + encasementOhm(electrodes[i]!) : ohm)),
  )
  return { soilResistance, resistance, share }
}

/** The shell of concrete between core and soil, ρc ln(R/r) / 2πL (Fagan and Lee 1970). */
function encasementOhm(electrode: Electrode): number {
  if (electrode.kind !== 'encased') return 0
  const { encasementResistivity, radius, coreRadius, length } = electrode
  return (encasementResistivity * ln(radius / coreRadius)) / (2 * PI * length)
}

function totalOf(segments: readonly Segment[], currents: Float64Array, electrode: number): number {
  let total = 0
  segments.forEach((segment, s) => {
    if (segment.electrode === electrode) total += currents[s]!
  })
  return total
}

function symmetric(matrix: readonly (readonly number[])[]): number[][] {
  return matrix.map((row, i) => row.map((entry, j) => 0.5 * (entry + matrix[j]![i]!)))
}
