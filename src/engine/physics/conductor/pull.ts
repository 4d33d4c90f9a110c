/**
 * How hard a fault pulls at a clamp: the force between a lead and the way back of its current,
 *   F = μ0/2π · î²/d · length, î = κ √2 I at the first peak                       (IEC 60865-1; κ as in IEC 60909, at most 1.8)
 * borne half at each end of a piece of cable. Which way it pulls, and where a lead that came off whips, is not computed.
 * A clamp that is screwed home holds. One that is only set by hand holds half of the tug that would have found it loose:
 * our own choice, common practice, no source (a tug is about 100 N).
 */
import { PI } from '../../math/portable'
import { MU0 } from '../../units/constants'

/** First peak over the rms value's own peak, where the circuit is mostly reactance. */
const peakFactor = 1.8

/** Newton. */
export const looseClampHolds = 50

/** Newton at one end of a piece of `length` m with `current` A (rms) in it, whose return is `distance` m away. */
export function pullAtClamp(current: number, length: number, distance: number): number {
  const peak = peakFactor * Math.sqrt(2) * current
  return ((MU0 / (2 * PI)) * peak * peak * length) / (2 * distance)
}
