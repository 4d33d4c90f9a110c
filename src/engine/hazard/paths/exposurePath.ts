/** An exposure path: which two contacts it joins, and what it is judged by. One file each, in the register paths/index.ts. */
import type { PathId } from '../exposure'
import type { Touch } from '../bodies/touch'

/**
 * `line-b`: the top of AC-2 by the actual body current at its duration (crew). `tolerable-step`, `tolerable-touch`:
 * prospective voltage by IEEE 80 without layers, 50 kg, surface soil, actual clearing time (bystander). `stated`: by a
 * voltage that the scenario states (livestock). `words`: not computed, told in words.
 */
export type LimitKind = 'line-b' | 'tolerable-step' | 'tolerable-touch' | 'stated' | 'words'

export interface ExposurePath {
  readonly id: PathId
  /** Rows of the procedure's table of exposure paths. */
  readonly rows: readonly number[]
  readonly limit: LimitKind
  /** Whether a current from one of the two contacts to the other is on this path; either way round. */
  joins(a: Touch, b: Touch): boolean
}

/** Turns a question about an ordered pair into one about a pair. */
export function eitherWay(question: (a: Touch, b: Touch) => boolean): (a: Touch, b: Touch) => boolean {
  return (a, b) => question(a, b) || question(b, a)
}

export function isHand(touch: Touch): boolean {
  return touch.limb === 'left-hand' || touch.limb === 'right-hand'
}

/** What one stands or kneels on. */
export function isFoot(touch: Touch): boolean {
  return touch.limb === 'left-foot' || touch.limb === 'right-foot' || touch.limb === 'knee'
}

export function isTrunk(touch: Touch): boolean {
  return touch.limb === 'thigh' || touch.limb === 'chest'
}
