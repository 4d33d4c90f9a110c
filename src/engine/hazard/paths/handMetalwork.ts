/** A hand on the arm or stay against the other hand (row 5). */
import { eitherWay, isHand, type ExposurePath } from './exposurePath'

export const handMetalwork: ExposurePath = {
  id: 'hand-metalwork',
  rows: [5],
  limit: 'line-b',
  joins: eitherWay((a, b) => isHand(a) && isHand(b) && a.on === 'metalwork'),
}
