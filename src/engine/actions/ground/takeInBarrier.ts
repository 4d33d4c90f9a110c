/** Takes the barrier in. */
import { itemsOf, requireItem } from '../../site/questions'
import type { Site } from '../../site/site'
import type { Action } from '../action'
import { mark, moveItem, tell } from '../changes'
import { handsFree, onSite } from '../conditions'
import { all, refuse } from '../refuse'

export const takeInBarrier: Action = {
  id: 'take-in-barrier',
  covers: ['A85'],
  things: () => ['barrier'],
  moves: true,
  check: all(onSite, handsFree(1), (site, order) => (site.barrier ? undefined : refuse(order, 'thing-missing'))),
  takes: () => 180,
  apply: (site, order) => {
    const reels = itemsOf(site, 'barrier-set').filter((id) => requireItem(site, id).where.kind === 'fitted')
    const gone: Site = reels.reduce<Site>((next, id) => moveItem(next, id, { kind: 'tarp' }), {
      ...site,
      barrier: null,
    })
    return tell(mark(gone, 'barrier-in'), order, 'barrier')
  },
}
