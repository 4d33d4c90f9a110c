/** A bystander's pace on or outside the barrier (row 18): found by bystander.ts, not by contacts of the crew. */
import type { ExposurePath } from './exposurePath'

export const bystanderPace: ExposurePath = {
  id: 'bystander-pace',
  rows: [18],
  limit: 'tolerable-step',
  joins: () => false,
}
