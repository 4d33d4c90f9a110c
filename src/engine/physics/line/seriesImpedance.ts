/**
 * Series impedance of conductors with earth return, ohm per metre: Carson 1926 with the correction terms cut after the
 * first (Kersting, Distribution System Modeling and Analysis, "modified Carson"):
 * Zii = r + ωμ0/8 + j ωμ0/2π ln(De/GMR), Zij = ωμ0/8 + j ωμ0/2π ln(De/D), De = 658.87 √(ρ/f) metre.
 * Good while heights and spacings stay well below De (about 850 m at 60 Hz in 100 Ω·m). With these impedances node 0 at
 * a place is that place's own remote earth. Sign: ΔV = V(near end) - V(far end) = Z I, currents towards the far end.
 */
import type { Complex } from '../../math/complex'
import { ln, PI } from '../../math/portable'
import { MU0 } from '../../units/constants'
import { invariant } from '../../units/invariant'
import type { LinePlace } from './conductor'
import { checkPlaces, distanceBetween } from './conductor'

export interface LineConductor extends LinePlace {
  /** Ohm per metre at the frequency in question. */
  readonly acResistance: number
  /** Geometric mean radius, metre. */
  readonly gmr: number
}

/** Carson's equivalent return depth is 658.87 √(ρ/f) metre (Kersting; 2160 √(ρ/f) feet in older books). */
const RETURN_DEPTH = 658.87

/** @param frequency hertz; @param earthResistivity ohm metre */
export function seriesImpedance(
  frequency: number,
  earthResistivity: number,
  conductors: readonly LineConductor[],
): Complex[][] {
  invariant(frequency > 0 && earthResistivity > 0, 'a frequency and an earth', frequency, earthResistivity)
  checkPlaces(conductors.map(({ x, y, gmr }) => ({ x, y, size: gmr })))
  const perMetre = 2 * PI * frequency * MU0
  const returnDepth = RETURN_DEPTH * Math.sqrt(earthResistivity / frequency)
  return conductors.map((a, i) =>
    conductors.map((b, j) => ({
      re: perMetre / 8 + (i === j ? a.acResistance : 0),
      im: (perMetre / (2 * PI)) * ln(returnDepth / (i === j ? a.gmr : distanceBetween(a, b))),
    })),
  )
}
