/**
 * How long a relay takes at a steady current.
 *   IEC 60255-151:  t = T · k/(M^α − 1)                 (constants as printed in relay manuals, found)
 *   IEEE C37.112:   t = D · (A/(M^p − 1) + B)           (found, with open time-current data)
 *   definite time:  t = the multiplier itself, in seconds
 * M = current over pickup. At or below pickup the relay never operates. Breaker time is not included. No ceiling on M is
 * applied: makers level the curves off at 20 to 30 times pickup, each at its own place.
 */
import { pow } from '../../math/portable'
import { invariant } from '../../units/invariant'

export const curveNames = [
  'iec-standard-inverse',
  'iec-very-inverse',
  'iec-extremely-inverse',
  'iec-long-time-inverse',
  'iec-short-time-inverse',
  'ieee-moderately-inverse',
  'ieee-very-inverse',
  'ieee-extremely-inverse',
  'definite-time',
] as const

export type CurveName = (typeof curveNames)[number]

/** factor/(M^exponent − 1) + offset, seconds at multiplier 1. */
interface InverseCurve {
  readonly factor: number
  readonly exponent: number
  readonly offset: number
}

const inverseCurves: Readonly<Record<Exclude<CurveName, 'definite-time'>, InverseCurve>> = {
  'iec-standard-inverse': { factor: 0.14, exponent: 0.02, offset: 0 },
  'iec-very-inverse': { factor: 13.5, exponent: 1, offset: 0 },
  'iec-extremely-inverse': { factor: 80, exponent: 2, offset: 0 },
  'iec-long-time-inverse': { factor: 120, exponent: 1, offset: 0 },
  'iec-short-time-inverse': { factor: 0.05, exponent: 0.04, offset: 0 },
  'ieee-moderately-inverse': { factor: 0.0515, exponent: 0.02, offset: 0.114 },
  'ieee-very-inverse': { factor: 19.61, exponent: 2, offset: 0.491 },
  'ieee-extremely-inverse': { factor: 28.2, exponent: 2, offset: 0.1217 },
}

/**
 * Operating time in seconds at `current` (A, rms) with the relay set to `pickup` (A, primary) and `multiplier` (time
 * multiplier T, time dial D, or the delay in seconds of a definite-time relay); 'never' at or below pickup.
 * @throws on a pickup that is not positive or a negative multiplier.
 */
export function operatingTime(curve: CurveName, pickup: number, multiplier: number, current: number): number | 'never' {
  invariant(pickup > 0, 'pickup above 0 A', pickup)
  invariant(multiplier >= 0, 'multiplier 0 or more', multiplier)
  invariant(!Number.isNaN(current), 'a numeric relay current', current)
  if (current <= pickup) return 'never'
  if (curve === 'definite-time') return multiplier
  const { factor, exponent, offset } = inverseCurves[curve]
  const aboveOne = pow(current / pickup, exponent) - 1
  // A current one bit above pickup can round M^α to 1: the time is then beyond any clock.
  return aboveOne > 0 ? multiplier * (factor / aboveOne + offset) : 'never'
}
