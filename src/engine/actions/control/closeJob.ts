/** Talks the job over, logs it and signs off. */
import type { Action } from '../action'
import { changePaper, tell } from '../changes'
import { refuse } from '../refuse'

export const closeJob: Action = {
  id: 'close-job',
  covers: ['A91'],
  speech: true,
  check: (site, order) => (site.paper.closed ? refuse(order, 'already-so') : undefined),
  takes: () => 120,
  apply: (site, order) => tell(changePaper(site, { closed: true }), order, 'order'),
}
