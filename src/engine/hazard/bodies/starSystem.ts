/**
 * One body as a star on the circuit's ports: (T + diag z) I = Vopen - Vtrunk, Σ I = 0, currents into the body. Gauss
 * with partial pivoting on a handful of unknowns.
 */
import type { Complex } from '../../math/complex'
import { add, divide, magnitude, multiply, subtract, ZERO } from '../../math/complex'

export interface StarSolution {
  /** Ampere into the body at each contact. */
  readonly currents: readonly Complex[]
  readonly trunk: Complex
}

/** @param limbs ohm in series with each contact, the body's own limb included. Undefined when it has no one answer. */
export function solveStar(
  open: readonly Complex[],
  transfer: readonly (readonly Complex[])[],
  limbs: readonly Complex[],
): StarSolution | undefined {
  const size = open.length
  const rows = transfer.map((row, i) => [
    ...row.map((value, j) => (i === j ? add(value, limbs[i]!) : value)),
    open[i]!,
    { re: 1, im: 0 },
  ])
  const solved = eliminate(rows, size, 2)
  if (solved === undefined) return undefined
  const [x, y] = [solved[0]!, solved[1]!]
  const trunk = divide(x.reduce(add, ZERO), y.reduce(add, ZERO))
  const currents = x.map((value, i) => subtract(value, multiply(trunk, y[i]!)))
  const isFinite = currents.every((it) => Number.isFinite(it.re) && Number.isFinite(it.im))
  return isFinite ? { currents, trunk } : undefined
}

/** Solves for each right-hand side that stands behind the matrix; undefined when it is singular. */
export function eliminate(rows: Complex[][], size: number, rights: number): readonly Complex[][] | undefined {
  for (let k = 0; k < size; k++) {
    let best = k
    for (let i = k + 1; i < size; i++) if (magnitude(rows[i]![k]!) > magnitude(rows[best]![k]!)) best = i
    const pivotRow = rows[best]!
    rows[best] = rows[k]!
    rows[k] = pivotRow
    if (magnitude(pivotRow[k]!) === 0) return undefined
    for (let i = k + 1; i < size; i++) {
      const factor = divide(rows[i]![k]!, pivotRow[k]!)
      for (let j = k; j < size + rights; j++) rows[i]![j] = subtract(rows[i]![j]!, multiply(factor, pivotRow[j]!))
    }
  }
  const solve = (column: number): Complex[] => {
    const x: Complex[] = Array.from({ length: size }, () => ZERO)
    for (let i = size - 1; i >= 0; i--) {
      let sum = rows[i]![column]!
      for (let j = i + 1; j < size; j++) sum = subtract(sum, multiply(rows[i]![j]!, x[j]!))
      x[i] = divide(sum, rows[i]![i]!)
    }
    return x
  }
  return Array.from({ length: rights }, (_, i) => solve(size + i))
}
