/** Shows the crew what is dead and what is live. */
import type { Action } from '../action'
import { mark, tell } from '../changes'
import { onSite } from '../conditions'

export const showBoundary: Action = {
  id: 'show-boundary',
  covers: ['A36'],
  check: onSite,
  takes: () => 60,
  apply: (site, order) => tell(mark(site, 'boundary-shown'), order, 'pole'),
}
