/** On the ground, a hand on a rod, a lead or a conductor against the feet (row 13): the largest touch there is. */
import { eitherWay, isFoot, isHand, type ExposurePath } from './exposurePath'

export const handLead: ExposurePath = {
  id: 'hand-lead-feet',
  rows: [13],
  limit: 'line-b',
  joins: eitherWay((a, b) => isHand(a) && isFoot(b) && b.on === 'ground'),
}
