/** A hand on a fence, a pipe or somebody else's earth against the feet (row 19): what the site raises, carried elsewhere. */
import { eitherWay, isHand, type ExposurePath } from './exposurePath'

export const fence: ExposurePath = {
  id: 'hand-fence-feet',
  rows: [19],
  limit: 'line-b',
  joins: eitherWay((a, b) => isHand(a) && a.on === 'ground-thing' && b.on === 'ground'),
}
