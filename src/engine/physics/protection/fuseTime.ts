/**
 * How long an expulsion fuse takes at a steady current: it melts, then arcs until a current zero.
 * Between the prescribed points (fuseLinks.ts) in log–log: a straight line from the longest time to 10 s; from 10 s to
 * 0.1 s a parabola that meets the second point with the slope −2 of a wire that loses no heat; below 0.1 s that wire
 * itself, I²t = constant. A straight line there too would be up to a third of the current too high: makers' curves bend.
 * Against an open per-unit curve of each type (one for all ratings, itself a tenth below the 0.1 s point): current up to a
 * quarter higher, time up to 1.7 times, always on the slow, careful side.
 * Below the melting current of the longest time it never melts. Ambient and preloading are left out.
 */
import { exp, ln } from '../../math/portable'
import { invariant } from '../../units/invariant'
import { meltingCurrents, type FuseLinkType } from './fuseLinks'

/** The quickest link of its kind, or the slowest that the standard allows. */
export type FuseEdge = 'least' | 'most'

const longest = { upTo100: 300, above: 600 }
const [tenSeconds, tenthOfSecond] = [10, 0.1]

/**
 * Seconds until a link of `rating` (A) melts at `current` (A, rms); 'never' below its least melting current.
 * @throws on a rating that the standard does not list.
 */
export function meltingTime(link: FuseLinkType, rating: number, current: number, edge: FuseEdge): number | 'never' {
  const points = meltingCurrents[link].get(rating)
  invariant(points, 'a rating of the standard', rating)
  invariant(!Number.isNaN(current), 'a numeric fuse current', current)
  const [long, ten, tenth] = points.map((pair) => pair[edge === 'least' ? 0 : 1])
  if (current < long!) return 'never'
  if (current >= tenth!) return tenthOfSecond * (tenth! / current) * (tenth! / current)
  if (current >= ten!) return bent(current, ten!, tenth!)
  return straight(current, long!, ten!, rating > 100 ? longest.above : longest.upTo100)
}

/** From (`ten`, 10 s) to (`tenth`, 0.1 s), ending with the slope −2. */
function bent(current: number, ten: number, tenth: number): number {
  const whole = ln(ten / tenth)
  const bend = (ln(tenSeconds / tenthOfSecond) + 2 * whole) / (whole * whole)
  const along = ln(current / tenth)
  return tenthOfSecond * exp(along * (bend * along - 2))
}

function straight(current: number, long: number, ten: number, longTime: number): number {
  return longTime * exp((ln(current / long) / ln(ten / long)) * ln(tenSeconds / longTime))
}

/** Seconds that the arc burns after melting: one whole period, the end of the usual half to one (common practice). */
export function arcTime(frequency: number): number {
  return 1 / frequency
}
