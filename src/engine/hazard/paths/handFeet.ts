/** A hand against the feet up the pole, on step bolts (rows 3, 6). */
import { eitherWay, isFoot, isHand, type ExposurePath } from './exposurePath'

export const handFeet: ExposurePath = {
  id: 'hand-feet',
  rows: [3, 6],
  limit: 'line-b',
  joins: eitherWay((a, b) => isHand(a) && isFoot(b) && b.on !== 'ground'),
}
