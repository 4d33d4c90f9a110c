/**
 * Shapley's fair division (L. S. Shapley, A value for n-person games, 1953): each of n things gets what it adds to a set
 * of the others, averaged over every order in which they could have come. The shares sum to the worth of all together;
 * two things that do the same get the same; what adds nothing gets nothing.
 */
import { invariant } from '../units/invariant'

/**
 * @param worth by set: bit i of the index is thing i; 2ⁿ values
 * @returns n shares, in the unit of `worth`
 */
export function shapley(worth: Float64Array): Float64Array {
  const count = bitsIn(worth.length - 1)
  invariant(worth.length === 1 << count, 'a worth for each of 2ⁿ sets', worth.length)
  const shares = new Float64Array(count)
  const weight = weights(count)
  for (let set = 0; set < worth.length; set++) {
    const size = bitsIn(set)
    for (let i = 0; i < count; i++) {
      if ((set & (1 << i)) === 0) shares[i] = shares[i]! + weight[size]! * (worth[set | (1 << i)]! - worth[set]!)
    }
  }
  return shares
}

/** Part of all orders in which a given set of a size comes just before a given thing: size! (n - 1 - size)! / n! */
function weights(count: number): readonly number[] {
  const out: number[] = []
  let chosen = 1
  for (let size = 0; size < count; size++) {
    out.push(1 / (count * chosen))
    chosen = (chosen * (count - 1 - size)) / (size + 1)
  }
  return out
}

function bitsIn(set: number): number {
  let rest = set
  let bits = 0
  for (; rest !== 0; rest &= rest - 1) bits++
  return bits
}
