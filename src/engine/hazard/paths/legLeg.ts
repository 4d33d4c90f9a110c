/** From one leg of a double pole to the other (row 11), with whichever limbs: the arm ties them, their soil does not. */
import type { Touch } from '../bodies/touch'
import type { ExposurePath } from './exposurePath'

export const legLeg: ExposurePath = {
  id: 'leg-leg',
  rows: [11],
  limit: 'line-b',
  joins: (a, b) => isOnLeg(a) && isOnLeg(b) && a.thing !== b.thing,
}

function isOnLeg(touch: Touch): boolean {
  return touch.on === 'pole' || touch.on === 'step-bolt'
}
