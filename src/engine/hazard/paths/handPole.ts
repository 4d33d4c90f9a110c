/** On the ground, a hand on the pole, its bolts or the stay against the feet (row 12). */
import { eitherWay, isFoot, isHand, type ExposurePath } from './exposurePath'

export const handPole: ExposurePath = {
  id: 'hand-pole-feet',
  rows: [12],
  limit: 'line-b',
  joins: eitherWay(
    (a, b) =>
      isHand(a) && (a.on === 'pole' || a.on === 'step-bolt' || a.on === 'metalwork') && isFoot(b) && b.on === 'ground',
  ),
}
