/** Rounding to a decimal step, halves away from zero, never -0. */
import { invariant } from '../units/invariant'

/**
 * The multiple of `step` nearest to `value`. For steps like 1e-6 the answer is the double nearest to the decimal
 * number, because it divides by the whole number 1/step instead of multiplying by an inexact step.
 */
export function roundTo(value: number, step: number): number {
  invariant(step > 0 && Number.isFinite(step), 'a positive step', step)
  const perUnit = Math.round(1 / step)
  const isUnitFraction = perUnit > 1 && Math.abs(perUnit * step - 1) < 1e-9
  const count = Math.round(Math.abs(isUnitFraction ? value * perUnit : value / step))
  const size = isUnitFraction ? count / perUnit : count * step
  return value < 0 && size !== 0 ? -size : size
}
