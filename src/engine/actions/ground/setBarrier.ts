/** Runs the barrier along an outline and closes it. */
import { distance, type GroundPoint } from '../../site/place'
import { gearOf, numberOf } from '../../site/questions'
import type { Action } from '../action'
import { mark, moveItem, tell } from '../changes'
import { atHand, handsFree, onSite } from '../conditions'
import { itemIn, outlineIn } from '../orderValues'
import { all, refuse } from '../refuse'

export const setBarrier: Action = {
  id: 'set-barrier',
  covers: ['A37'],
  withTypes: ['barrier-set'],
  values: { outline: { kind: 'outline' } },
  moves: true,
  check: all(onSite, atHand, handsFree(1, 'item'), (site, order) => {
    if (site.barrier) return refuse(order, 'already-so')
    const reel = numberOf(gearOf(site, itemIn(order)).is, 'length')
    return perimeter(outlineIn(order, 'outline')) <= reel
      ? undefined
      : refuse(order, 'barrier-too-short', { metres: reel })
  }),
  takes: () => 300,
  apply: (site, order) => {
    const fenced = { ...site, barrier: outlineIn(order, 'outline') }
    return tell(mark(moveItem(fenced, itemIn(order), { kind: 'fitted' }), 'barrier-set'), order, 'barrier')
  },
}

function perimeter(outline: readonly GroundPoint[]): number {
  return outline.reduce((sum, corner, at) => sum + distance(corner, outline[(at + 1) % outline.length] ?? corner), 0)
}
