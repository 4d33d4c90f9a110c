/** Foot to foot, standing or walking (row 15). */
import { isFoot, type ExposurePath } from './exposurePath'

export const pace: ExposurePath = {
  id: 'pace',
  rows: [15],
  limit: 'line-b',
  joins: (a, b) => isFoot(a) && isFoot(b),
}
