/**
 * What a clamp adds to a lead: the resistance of its seat by state, and how long a seat stands the heat that makes.
 * Sources: a handbook of earthing gear gives about 0.1 mΩ for a new clamp and ferrule and 0.5 mΩ typical when aged
 * (found); a seat on oxide, not brushed: milliohms to tens of milliohms (common practice, no source; 1–50 mΩ recalled,
 * low confidence); a painted or rusty rod-clamp seat 0.1–1 Ω (common practice, no source). Seated by hand only, not
 * tightened: between good and unbrushed (common practice, no source). The declared value is the middle on log paper.
 */
import { invariant } from '../../units/invariant'

export const contactStates = ['good', 'hand-tight', 'unbrushed', 'unbrushed-hand-tight', 'painted'] as const
export type ContactState = (typeof contactStates)[number]

/** ohm: the value to work with and the ends of its range. */
export interface ContactResistance {
  readonly low: number
  readonly declared: number
  readonly high: number
}

export const contactResistance: Readonly<Record<ContactState, ContactResistance>> = {
  good: { low: 0.0001, declared: 0.0005, high: 0.001 },
  'hand-tight': { low: 0.002, declared: 0.005, high: 0.01 },
  unbrushed: { low: 0.005, declared: 0.01, high: 0.02 },
  'unbrushed-hand-tight': { low: 0.01, declared: 0.02, high: 0.05 },
  painted: { low: 0.1, declared: 0.3, high: 1 },
}

/**
 * Heat (J) that a clamp's seat takes before it burns off. Our own choice, common practice, no source: about half a
 * kilogram of bronze through 260 K. Bounded below by ASTM F855 grade 1, whose clamp holds 14 kA for 15 cycles at
 * 0.5 mΩ (24.5 kJ), and above by "10 mΩ at 5 kA, 250 kW, burns off" within a usual clearing time.
 */
export const contactHeatLimit = 50_000

/** Heat (J) made in a contact of `resistance` ohm by `current` (A rms) in `seconds`. */
export function contactHeat(resistance: number, current: number, seconds: number): number {
  return resistance * current * current * seconds
}

/** Seconds until a seat burns off at `current` (A rms), from the heat (J) it has already taken. */
export function contactBurnTime(resistance: number, current: number, heatTaken: number): number | 'never' {
  invariant(resistance >= 0, 'contact resistance 0 ohm or more', resistance)
  invariant(heatTaken >= 0, 'heat taken 0 J or more', heatTaken)
  if (heatTaken >= contactHeatLimit) return 0
  const time = (contactHeatLimit - heatTaken) / contactHeat(resistance, current, 1)
  return Number.isFinite(time) ? time : 'never'
}
