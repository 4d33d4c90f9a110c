/** What a path is judged by, and whether a set of corners is below, above or between. */
import { lineB, tolerable } from '../physics/body'
import type { Scenario } from '../site/scenario'
import { invariant } from '../units/invariant'
import type { LimitVerdict } from './exposure'
import type { LimitKind } from './paths/exposurePath'

/** The public's weight, kg: the lighter of the two published ones. */
const bystanderWeight = 50

export interface Limit {
  readonly limit: number
  readonly beyondRange: boolean
}

/** @param scenario in its corner: the surface soil counts; @returns A for line b, V for the tolerable voltages */
export function limitOf(kind: LimitKind, scenario: Scenario, duration: number): Limit {
  if (kind === 'line-b') return { limit: lineB(duration), beyondRange: false }
  invariant(kind !== 'stated' && kind !== 'words', 'a path that a standard judges', kind)
  const values = tolerable(bystanderWeight, duration, { surface: scenario.soil.layers[0]!.resistivity })
  return { limit: kind === 'tolerable-step' ? values.step : values.touch, beyondRange: values.beyondRange }
}

/** One corner: the value over its limit, and the same where a layer may fail and did. */
export interface CornerRatio {
  readonly held: number
  readonly failed: number | null
}

/** A value on its limit is above it: current on line b belongs to AC-3. A layer that may fail is at best marginal. */
export function verdictOf(corners: readonly CornerRatio[]): LimitVerdict {
  const isAbove = (it: CornerRatio): boolean => it.held >= 1 && (it.failed === null || it.failed >= 1)
  const isBelow = (it: CornerRatio): boolean => it.held < 1 && it.failed === null
  if (corners.length > 0 && corners.every(isAbove)) return 'above'
  return corners.every(isBelow) ? 'below' : 'marginal'
}
