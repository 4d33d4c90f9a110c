/** On the ground, a hand on the truck against the feet (row 14): stepping on or off it. */
import { eitherWay, isHand, type ExposurePath } from './exposurePath'

export const vehicle: ExposurePath = {
  id: 'hand-truck-feet',
  rows: [14],
  limit: 'line-b',
  joins: eitherWay((a, b) => isHand(a) && a.on === 'truck' && b.on === 'ground'),
}
