/** Solves a handful of elements. @throws where they cannot be solved */
import { factor, isUnsolvable, type Element, type Solution } from '../../src/engine/physics/network'

export function solveElements(elements: readonly Element[]): Solution {
  const factored = factor({ elements })
  if (isUnsolvable(factored)) throw new Error(`${factored.reason} at ${factored.node}`)
  const solution = factored.solve()
  if (isUnsolvable(solution)) throw new Error(`${solution.reason} at ${solution.node}`)
  return solution
}
