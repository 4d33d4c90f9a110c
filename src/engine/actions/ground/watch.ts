/** Takes up the post of observer: barrier, heads, drop zone, nothing else. */
import type { Action } from '../action'
import { mark, tell } from '../changes'
import { onGround } from '../conditions'

export const watch: Action = {
  id: 'watch',
  covers: ['A72'],
  check: onGround,
  takes: () => 5,
  apply: (site, order) => tell(mark(site, 'watching'), order, 'pole'),
}
