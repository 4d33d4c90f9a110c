/** Says that a stopped job goes on: who ordered the stop, or whoever is in charge, has looked at why. */
import type { Action } from '../action'
import { changePaper, mark, tell } from '../changes'
import { refuse } from '../refuse'

export const startAgain: Action = {
  id: 'start-again',
  covers: ['A73', 'A74'],
  speech: true,
  check: (site, order) => (site.paper.stopped ? undefined : refuse(order, 'not-stopped')),
  takes: () => 10,
  apply: (site, order) => tell(mark(changePaper(site, { stopped: false }), 'started-again'), order, 'order'),
}
