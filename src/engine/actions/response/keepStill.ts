/** Stays where one is, lets go of nothing, touches nothing new. */
import type { Action } from '../action'
import { mark, tell } from '../changes'
import { always } from '../refuse'

export const keepStill: Action = {
  id: 'keep-still',
  covers: ['A77'],
  speech: true,
  check: always,
  takes: () => 10,
  apply: (site, order) => tell(mark(site, `still:${order.who}`), order, order.who),
}
