/** Checks who is authorised for what and who can rescue whom. */
import type { Action } from '../action'
import { mark, tell } from '../changes'
import { always } from '../refuse'

export const checkCrew: Action = {
  id: 'check-crew',
  covers: ['A03'],
  speech: true,
  check: always,
  takes: () => 30,
  apply: (site, order) => tell(mark(site, 'crew-checked'), order, 'crew', { count: site.scenario.crew.length }),
}
