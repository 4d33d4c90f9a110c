/**
 * Tolerable body current, step and touch voltage of IEEE Std 80-2000/2013 clauses 6–8 (from memory, high confidence):
 *   I = k/√t, k = 0.116 (50 kg) or 0.157 (70 kg) A·√s (Dalziel and Lee 1968);
 *   step = (1000 + 6 Cs ρs) I, touch = (1000 + 1.5 Cs ρs) I; Cs = 1 − 0.09 (1 − ρ/ρs)/(2 h + 0.09).
 * The body counts 1000 ohm, shoes and gloves nothing. Used for 0.03–5 s as published; a longer shock keeps the 5 s value,
 * a shorter one the 0.03 s value, and both carry the mark *beyond the formula's range*. No other weights are published.
 */
import { invariant } from '../../units/invariant'

export type Weight = 50 | 70
export const weights = [50, 70] as const satisfies readonly Weight[]

/** k in A·√s by body weight in kg. */
const dalzielConstant: Readonly<Record<Weight, number>> = { 50: 0.116, 70: 0.157 }
const bodyResistance = 1000
const shortest = 0.03
const longest = 5

/** What a person stands on: native soil (ohm·m) and, if laid, a surface layer (ohm·m, m). */
export interface StandingSurface {
  readonly surface: number
  readonly layer?: { readonly resistivity: number; readonly thickness: number }
}

export interface Tolerable {
  /** Tolerable body current, A. */
  readonly current: number
  /** Surface layer derating Cs, 1 without a layer. */
  readonly derating: number
  /** Tolerable prospective voltage of a 1 m pace, V. */
  readonly step: number
  /** Tolerable prospective voltage hand to feet, V. */
  readonly touch: number
  /** The duration lies outside 0.03–5 s, so the value at the nearer end is given. */
  readonly beyondRange: boolean
}

/**
 * Tolerable values for a weight (kg) and a shock duration (s; Infinity for one that nothing clears).
 * @throws on a negative duration or a resistivity or thickness that is not positive.
 */
export function tolerable(weight: Weight, duration: number, soil: StandingSurface): Tolerable {
  invariant(duration >= 0, 'duration 0 s or more', duration)
  invariant(soil.surface > 0, 'soil resistivity above 0 ohm·m', soil.surface)
  const counted = Math.min(Math.max(duration, shortest), longest)
  const current = dalzielConstant[weight] / Math.sqrt(counted)
  const derating = surfaceLayerDerating(soil)
  const underFoot = derating * (soil.layer?.resistivity ?? soil.surface)
  return {
    current,
    derating,
    step: (bodyResistance + 6 * underFoot) * current,
    touch: (bodyResistance + 1.5 * underFoot) * current,
    beyondRange: counted !== duration,
  }
}

/** Cs of IEEE 80 equation 27: how far the native soil under a thin layer pulls the foot's resistance down (or up). */
function surfaceLayerDerating({ surface, layer }: StandingSurface): number {
  if (layer === undefined) return 1
  invariant(layer.resistivity > 0, 'layer resistivity above 0 ohm·m', layer.resistivity)
  invariant(layer.thickness > 0, 'layer thickness above 0 m', layer.thickness)
  return 1 - (0.09 * (1 - surface / layer.resistivity)) / (2 * layer.thickness + 0.09)
}
