/**
 * Hand to hand across an opened conductor, one on either end of the gap (row 8): the two sides of the line, however far apart
 * their earths stand.
 */
import type { Touch } from '../bodies/touch'
import { isHand, type ExposurePath } from './exposurePath'

export const acrossGap: ExposurePath = {
  id: 'across-gap',
  rows: [8],
  limit: 'line-b',
  joins: (a, b) => isHand(a) && isHand(b) && areTwoEnds(a, b),
}

function areTwoEnds(a: Touch, b: Touch): boolean {
  return a.on === 'conductor' && b.on === 'conductor' && a.thing === b.thing && a.end !== b.end
}
