/** A hand at a switch handle against the feet (row 17). */
import { eitherWay, isHand, type ExposurePath } from './exposurePath'

export const handle: ExposurePath = {
  id: 'handle-feet',
  rows: [17],
  limit: 'line-b',
  joins: eitherWay((a) => isHand(a) && a.on === 'handle'),
}
