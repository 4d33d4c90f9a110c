/** The handline in the hands of whoever hauls against the feet (row 16): a wet rope from the arm down. */
import { eitherWay, isHand, type ExposurePath } from './exposurePath'

export const handline: ExposurePath = {
  id: 'handline-feet',
  rows: [16],
  limit: 'line-b',
  joins: eitherWay((a) => isHand(a) && a.on === 'handline'),
}
