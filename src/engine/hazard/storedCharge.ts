/**
 * What is left on a capacitor some seconds after it was switched off: voltage V·exp(-t/RC) and energy ½CV². V is taken at
 * the crest of the wave, the most that can stay. Without a discharge resistor nothing leaves it (leakage is left out).
 */
import { exp } from '../math/portable'
import type { LiveningOf } from '../site/livening'

export interface ChargeLeft {
  /** Volt, constant. */
  readonly voltage: number
  /** Joule, of all phases together. */
  readonly energy: number
}

/** @param seconds since it was switched off */
export function chargeLeft(bank: LiveningOf<'stored-charge'>, seconds: number): ChargeLeft {
  const { capacitance, voltage: rated, phases, discharge } = bank
  const crest = (rated * Math.sqrt(2)) / Math.sqrt(3)
  const voltage = discharge === undefined ? crest : crest * exp(-seconds / (discharge * capacitance))
  return { voltage, energy: phases.length * 0.5 * capacitance * voltage * voltage }
}
