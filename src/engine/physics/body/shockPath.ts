/**
 * Current paths through the body and their heart-current factor F.
 * Source: IEC 60479-1:2005/2018 Table 12 (from memory, high confidence).
 * F compares the chance of fibrillation only: a current I on a path is as likely to stop the heart as F·I from the
 * left hand to both feet. It says nothing about cramp or breathing (lines a and b).
 */

/** All current paths that a shock is judged on; both hands to both feet counts as the left hand. */
export const shockPaths = [
  'left-hand-feet',
  'right-hand-feet',
  'both-hands-feet',
  'hand-hand',
  'foot-foot',
  'chest-left-hand',
  'chest-right-hand',
  'seat-hand',
] as const

export type ShockPath = (typeof shockPaths)[number]

/** Heart-current factor by path, dimensionless (IEC 60479-1 Table 12). */
export const heartFactor: Readonly<Record<ShockPath, number>> = {
  'left-hand-feet': 1.0,
  'right-hand-feet': 0.8,
  'both-hands-feet': 1.0,
  'hand-hand': 0.4,
  'foot-foot': 0.04,
  'chest-left-hand': 1.5,
  'chest-right-hand': 1.3,
  'seat-hand': 0.7,
}

/** The current (A) from left hand to both feet with the same chance of fibrillation as `current` (A) on `path`. */
export function heartEquivalent(current: number, path: ShockPath): number {
  return heartFactor[path] * current
}
