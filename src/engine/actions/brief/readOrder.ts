/** Reads the work order against the diagram and names every source that could feed the section. */
import type { Action } from '../action'
import { tell, write } from '../changes'
import { listIn } from '../orderValues'
import { always } from '../refuse'
import { feeders, switches } from '../things'

export const readOrder: Action = {
  id: 'read-order',
  covers: ['A01'],
  speech: true,
  values: {
    sources: {
      kind: 'choice',
      many: true,
      of: (site) => [...feeders(site), ...switches(site), 'lv', 'customer-generator', 'street-light'].sort(),
    },
  },
  check: always,
  takes: () => 120,
  apply: (site, order) => tell(write(site, 'sources', [...listIn(order, 'sources')].sort()), order, 'order'),
}
