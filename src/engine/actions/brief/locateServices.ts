/** Looks for buried services with plans and locator where the rod is to go. */
import type { Action } from '../action'
import { mark, perceive } from '../changes'
import { onSite } from '../conditions'
import { pointIn } from '../orderValues'

export const locateServices: Action = {
  id: 'locate-services',
  covers: ['A39'],
  values: { at: { kind: 'point' } },
  moves: true,
  check: onSite,
  takes: () => 120,
  apply: (site, order) => {
    const { x, y } = pointIn(order, 'at')
    const values = { x, y }
    return perceive(mark(site, 'services-located'), order.who, {
      of: 'ground',
      by: 'test',
      says: 'ground.no-services',
      values,
    })
  },
}
