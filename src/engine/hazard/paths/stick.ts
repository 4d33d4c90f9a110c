/** A hand that works through an operating stick (row 9): the stick's leakage against the other contacts. */
import { eitherWay, isHand, type ExposurePath } from './exposurePath'

export const stick: ExposurePath = {
  id: 'stick',
  rows: [9],
  limit: 'line-b',
  joins: eitherWay((a) => isHand(a) && a.isThroughStick),
}
