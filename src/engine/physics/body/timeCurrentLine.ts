/**
 * A line in the time-current plane through published points, straight between them on log-log paper and level outside
 * them. The lines of IEC 60479-1 Figure 20 are drawn on such paper.
 */
import { exp, ln } from '../../math/portable'
import { invariant } from '../../units/invariant'

/** [duration s, current A], durations rising. */
export type LinePoint = readonly [duration: number, current: number]

/**
 * The line's current (A) at `duration` (s; Infinity for a current that nothing clears).
 * @throws when `duration` is negative or not a number.
 */
export function currentOnLine(points: readonly LinePoint[], duration: number): number {
  invariant(duration >= 0, 'duration 0 s or more', duration)
  const first = points[0]!
  const last = points[points.length - 1]!
  if (duration <= first[0]) return first[1]
  if (duration >= last[0]) return last[1]
  let upper = 1
  while (points[upper]![0] < duration) upper += 1
  const [lowerDuration, lowerCurrent] = points[upper - 1]!
  const [upperDuration, upperCurrent] = points[upper]!
  if (duration === upperDuration) return upperCurrent
  const share = ln(duration / lowerDuration) / ln(upperDuration / lowerDuration)
  return lowerCurrent * exp(share * ln(upperCurrent / lowerCurrent))
}
