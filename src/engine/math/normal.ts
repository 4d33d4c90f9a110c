/** The standard normal distribution, by the complementary error function of the portable library. */
import erfc from '@stdlib/math-base-special-erfc'
import erfcinv from '@stdlib/math-base-special-erfcinv'
import { invariant } from '../units/invariant'

/** Chance of a value below `z` standard deviations. */
export function normalBelow(z: number): number {
  return 0.5 * erfc(-z / Math.sqrt(2))
}

/** The z below which a share of all values lies. @throws unless 0 < share < 1 */
export function normalQuantile(share: number): number {
  invariant(share > 0 && share < 1, 'a share between 0 and 1', share)
  return -Math.sqrt(2) * erfcinv(2 * share)
}
