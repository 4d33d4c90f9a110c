/**
 * Livestock outside the barrier, fore feet to hind feet (row 21): found by livestock.ts as a voltage over its wider pace. No
 * current through an animal is claimed; it is judged by what the scenario allows alone.
 */
import type { ExposurePath } from './exposurePath'

export const livestockPace: ExposurePath = {
  id: 'livestock-pace',
  rows: [21],
  limit: 'stated',
  joins: () => false,
}
