/** A hand on the line against what one stands on in the bucket (row 10): liner, boom and truck in one row to the soil. */
import { eitherWay, isHand, type ExposurePath } from './exposurePath'

export const bucket: ExposurePath = {
  id: 'hand-bucket',
  rows: [10],
  limit: 'line-b',
  joins: eitherWay((a, b) => isHand(a) && b.on === 'bucket'),
}
