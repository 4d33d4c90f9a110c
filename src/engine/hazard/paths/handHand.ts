/** Hand to hand: two conductors, conductor and lead, lead and rod (row 1). */
import { isHand, type ExposurePath } from './exposurePath'

export const handHand: ExposurePath = {
  id: 'hand-hand',
  rows: [1],
  limit: 'line-b',
  joins: (a, b) => isHand(a) && isHand(b),
}
