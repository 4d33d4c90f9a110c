/** Sets traffic signs and cones. */
import type { Action } from '../action'
import { mark, moveItem, tell } from '../changes'
import { atHand, handsFree, onSite } from '../conditions'
import { itemIn } from '../orderValues'
import { all } from '../refuse'

export const setSigns: Action = {
  id: 'set-signs',
  covers: ['A06'],
  withTypes: ['sign-set'],
  moves: true,
  check: all(onSite, atHand, handsFree(1, 'item')),
  takes: () => 180,
  apply: (site, order) =>
    tell(mark(moveItem(site, itemIn(order), { kind: 'fitted' }), 'signs-set'), order, itemIn(order)),
}
