/** A rescuer's hand on somebody who is in contact (row 20): the casualty's way, and the rescuer's own feet. */
import { eitherWay, type ExposurePath } from './exposurePath'

export const rescuer: ExposurePath = {
  id: 'rescuer',
  rows: [20],
  limit: 'line-b',
  joins: eitherWay((a) => a.on === 'person'),
}
