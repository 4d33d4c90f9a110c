/**
 * Takes the last conductors out of an impedance matrix, Zij - Zin Znn⁻¹ Znj. Right only where the removed conductors
 * are at earth potential all along; a neutral that is earthed at its poles stays in the circuit instead.
 */
import type { Complex } from '../../math/complex'
import { divide, multiply, subtract } from '../../math/complex'
import { invariant } from '../../units/invariant'

/** @param keep how many conductors stay, from the first */
export function kronReduce(matrix: readonly (readonly Complex[])[], keep: number): Complex[][] {
  invariant(
    Number.isInteger(keep) && keep >= 0 && keep <= matrix.length,
    `0 to ${matrix.length} conductors to keep`,
    keep,
  )
  let reduced = matrix.map((row) => [...row])
  while (reduced.length > keep) reduced = withoutLast(reduced)
  return reduced
}

function withoutLast(matrix: readonly (readonly Complex[])[]): Complex[][] {
  const last = matrix.length - 1
  const pivot = matrix[last]![last]!
  return matrix.slice(0, last).map((row) =>
    row.slice(0, last).map((entry, j) => {
      return subtract(entry, divide(multiply(row[last]!, matrix[last]![j]!), pivot))
    }),
  )
}
