/** A bystander's hand on the lower stay within reach of the barrier (row 19): found by bystander.ts. */
import type { ExposurePath } from './exposurePath'

export const bystanderTouch: ExposurePath = {
  id: 'bystander-touch',
  rows: [19],
  limit: 'tolerable-touch',
  joins: () => false,
}
