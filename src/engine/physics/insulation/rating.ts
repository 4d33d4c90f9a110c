/**
 * What a class of insulating gear is proved at and may be used to, AC rms.
 * Gloves: ASTM D120 / IEC 60903 (maker's table, found); half-yearly test, 29 CFR 1910.137 (from memory, high).
 * Boots: class 00 and 0 EN 50321 (00 found, 0 from memory), 1–4 as gloves, EN 50321-1:2018 (from memory, medium); the
 * half-yearly test is common practice, no source. Pole covers and line guards: as gloves, class 1 common practice,
 * no source; tested on doubt, so no interval. Class 00 covers are not made to a known standard: same numbers, our choice.
 */
export const insulationClasses = ['00', '0', '1', '2', '3', '4'] as const
export type InsulationClass = (typeof insulationClasses)[number]

export const insulatingItems = ['glove', 'boot', 'cover'] as const
export type InsulatingItem = (typeof insulatingItems)[number]

export interface InsulationRating {
  /** Proof test, V rms. */
  readonly proofTest: number
  /** Highest voltage of use, V rms. */
  readonly maxUse: number
  /** Months between electrical tests; absent when the item is tested on doubt. */
  readonly retestMonths?: number
}

const voltages: Readonly<Record<InsulationClass, { readonly proofTest: number; readonly maxUse: number }>> = {
  '00': { proofTest: 2_500, maxUse: 500 },
  '0': { proofTest: 5_000, maxUse: 1_000 },
  '1': { proofTest: 10_000, maxUse: 7_500 },
  '2': { proofTest: 20_000, maxUse: 17_000 },
  '3': { proofTest: 30_000, maxUse: 26_500 },
  '4': { proofTest: 40_000, maxUse: 36_000 },
}

const retestMonths: Readonly<Record<InsulatingItem, number | undefined>> = { glove: 6, boot: 6, cover: undefined }

/** Rating of one item of one class. */
export function insulationRating(item: InsulatingItem, cls: InsulationClass): InsulationRating {
  const months = retestMonths[item]
  return months === undefined ? voltages[cls] : { ...voltages[cls], retestMonths: months }
}
