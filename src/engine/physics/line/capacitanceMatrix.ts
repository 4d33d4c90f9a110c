/**
 * Capacitance of conductors above ground, farad per metre, in Maxwell form (q = C V, negative off the diagonal):
 * inverse of the potential coefficients Pii = ln(2h/r)/2πε0, Pij = ln(D'/D)/2πε0, D' to the image in the ground.
 * The ground counts as a perfect conductor, which it is at power frequency.
 */
import { invertSymmetric } from '../../math/cholesky'
import { ln, PI } from '../../math/portable'
import { EPS0 } from '../../units/constants'
import type { LinePlace } from './conductor'
import { checkPlaces, distanceBetween, imageDistance } from './conductor'

export interface ChargedConductor extends LinePlace {
  /** Metre. */
  readonly radius: number
}

export function capacitanceMatrix(conductors: readonly ChargedConductor[]): number[][] {
  checkPlaces(conductors.map(({ x, y, radius }) => ({ x, y, size: radius })))
  const coefficients = conductors.map((a, i) =>
    conductors.map((b, j) => ln(imageDistance(a, b) / (i === j ? a.radius : distanceBetween(a, b))) / (2 * PI * EPS0)),
  )
  return invertSymmetric(coefficients)
}
