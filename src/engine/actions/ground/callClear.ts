/** Sees that no hand is on rod or lead and calls it. */
import type { Action } from '../action'
import { mark, tell } from '../changes'
import { always } from '../refuse'

export const callClear: Action = {
  id: 'call-clear',
  covers: ['A43'],
  speech: true,
  check: always,
  takes: () => 10,
  apply: (site, order) => tell(mark(site, 'called-clear'), order, 'crew'),
}
