/**
 * Chance that a 15–100 Hz body current stops the heart (ventricular fibrillation), as IEC 60479-1 Figure 20 words its
 * lines: c2 about 5 %, c3 about 50 %, below c1 unlikely. A lognormal distribution of thresholds through c2 and c3 (own
 * model): P(I, t) = Φ(ln(I/c3)/σ), σ = ln(c3/c2)/1.645; 0.34 for the c3 = 1.75 c2 used here. Below c1 it is taken as 0.
 *
 * It is never told without its interval: `low` and `high` are the least and the most that c3 = 1.5 c2 … 2 c2 give, the
 * range in which c3 can be read from the figure; `high` keeps the distribution's tail below c1.
 *
 * Valid for adults, for the heart-current equivalent (left hand to both feet), for 0.05–10 s; a shorter shock is judged
 * as one of 0.05 s, a longer one as one of 10 s (the lines are level there), both marked. The lines come from animals,
 * scaled: they say how dangerous, not how many. Dalziel's 0.116/√t of IEEE 80, said to spare 99.5 %, lies near this
 * distribution's 1 % at 0.5 s and well inside its 5–50 % at 1 s: the two sources disagree, this one is the more careful.
 */
import { ln } from '../../math/portable'
import { normalBelow, normalQuantile } from '../../math/normal'
import { invariant } from '../../units/invariant'
import { c3OverC2, lineC1, lineC2 } from './shockZone'

/** Shares of 1. */
export interface FibrillationChance {
  readonly likely: number
  readonly low: number
  readonly high: number
  /** The duration lies outside 0.05–10 s. */
  readonly beyondRange: boolean
}

const shortest = 0.05
const longest = 10
const shareAtC2 = 0.05

/**
 * @param heartEquivalent A, left hand to both feet
 * @param duration s; Infinity for a current that nothing clears
 * @throws on a current or duration that is negative or not a number
 */
export function chanceOfFibrillation(heartEquivalent: number, duration: number): FibrillationChance {
  invariant(heartEquivalent >= 0, 'a heart-current equivalent of 0 A or more', heartEquivalent)
  const c2 = lineC2(duration)
  const isFloor = heartEquivalent < lineC1(duration)
  const readings = [c3OverC2.low, c3OverC2.high].map((ratio) => shareBelow(heartEquivalent, c2, ratio))
  return {
    likely: isFloor ? 0 : shareBelow(heartEquivalent, c2, c3OverC2.chosen),
    low: isFloor ? 0 : Math.min(...readings),
    high: Math.max(...readings),
    beyondRange: duration < shortest || duration > longest,
  }
}

/** Share of people whose threshold lies below the current. */
function shareBelow(current: number, c2: number, ratio: number): number {
  if (current === 0) return 0
  const spread = ln(ratio) / -normalQuantile(shareAtC2)
  return normalBelow(ln(current / (ratio * c2)) / spread)
}
