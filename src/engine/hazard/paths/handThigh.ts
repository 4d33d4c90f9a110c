/** A hand against the thigh or chest on the pole (row 4): the killer on concrete. */
import { eitherWay, isHand, isTrunk, type ExposurePath } from './exposurePath'

export const handThigh: ExposurePath = {
  id: 'hand-thigh',
  rows: [4],
  limit: 'line-b',
  joins: eitherWay((a, b) => isHand(a) && isTrunk(b)),
}
