/**
 * Time-current zones of a 15–100 Hz body current, IEC 60479-1:2005/2018 Figure 20 and Table 11 (from memory).
 * Lines: a 0.5 mA at any time (high confidence); b 200 mA to 10 ms, falling straight on log-log paper to 5 mA at 10 s
 * (medium); c1 from its text points (high); c2, 5 % chance of fibrillation, is the IB table of EN 50522 Annex B (high);
 * c3, 50 %, is 1.75 c2: our own choice inside the 1.5–2 that graph readings give, so AC-4.2 against AC-4.3 is "about".
 * Outside its first and last point each line is level. c2 begins at 0.05 s: below that its 900 mA is kept (careful).
 * Lines a and b are met by the actual current, c1–c3 by the heart-current equivalent; the higher zone is the answer.
 */
import { currentOnLine, type LinePoint } from './timeCurrentLine'

export type Zone = 'AC-1' | 'AC-2' | 'AC-3' | 'AC-4.1' | 'AC-4.2' | 'AC-4.3'

const pointsB: readonly LinePoint[] = [
  [0.01, 0.2],
  [10, 0.005],
]
const pointsC1: readonly LinePoint[] = [
  [0.01, 0.5],
  [0.1, 0.4],
  [0.5, 0.1],
  [1, 0.05],
  [3, 0.04],
]
const pointsC2: readonly LinePoint[] = [
  [0.05, 0.9],
  [0.1, 0.75],
  [0.2, 0.6],
  [0.5, 0.2],
  [1, 0.08],
  [2, 0.06],
  [5, 0.051],
  [10, 0.05],
]
/** As read from graphs: our own choice, and the band that it lies in. */
export const c3OverC2 = { low: 1.5, chosen: 1.75, high: 2 } as const

/** Line a, A: perception. */
export function lineA(): number {
  return 0.0005
}

/** Line b, A at `duration` s: cramp, cannot let go. The top of AC-2. */
export function lineB(duration: number): number {
  return currentOnLine(pointsB, duration)
}

/** Line c1, A at `duration` s: below it fibrillation is unlikely. */
export function lineC1(duration: number): number {
  return currentOnLine(pointsC1, duration)
}

/** Line c2, A at `duration` s: about 5 % chance of fibrillation. */
export function lineC2(duration: number): number {
  return currentOnLine(pointsC2, duration)
}

/** Line c3, A at `duration` s: about 50 % chance of fibrillation. */
export function lineC3(duration: number): number {
  return c3OverC2.chosen * lineC2(duration)
}

/**
 * Zone of a body current (A) lasting `duration` s, with its left-hand-to-feet equivalent (A).
 * A current exactly on a line belongs above it for a and b, below it for c1–c3 (Table 11's wording).
 */
export function shockZone(current: number, heartEquivalent: number, duration: number): Zone {
  if (heartEquivalent > lineC3(duration)) return 'AC-4.3'
  if (heartEquivalent > lineC2(duration)) return 'AC-4.2'
  if (heartEquivalent > lineC1(duration)) return 'AC-4.1'
  if (current >= lineB(duration)) return 'AC-3'
  if (current >= lineA()) return 'AC-2'
  return 'AC-1'
}
