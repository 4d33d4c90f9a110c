/** Thigh or chest on the pole against the feet on its bolts (row 3), and anything else that no other path names. */
import type { ExposurePath } from './exposurePath'

export const thighFeet: ExposurePath = {
  id: 'thigh-feet',
  rows: [3],
  limit: 'line-b',
  joins: () => true,
}
