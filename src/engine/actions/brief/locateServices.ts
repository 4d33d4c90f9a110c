/** Walks over with plans and locator to where the rod is to go, looks for buried services and comes back. */
import { groundPointOf, requirePerson } from '../../site/questions'
import type { Action } from '../action'
import { mark, perceive } from '../changes'
import { onSite } from '../conditions'
import { isDriven, secondsBetween } from '../fetching'
import { pointIn } from '../orderValues'
import { pacesOnWay } from '../paces'
import { all, refuse } from '../refuse'

export const locateServices: Action = {
  id: 'locate-services',
  covers: ['A39'],
  values: { at: { kind: 'point' } },
  moves: true,
  check: all(onSite, (site, order) => {
    if (requirePerson(site, order.who).strapped) return refuse(order, 'strapped')
    return isDriven(groundPointOf(site, order.who), pointIn(order, 'at')) ? refuse(order, 'out-of-reach') : undefined
  }),
  takes: (site, order) => 120 + 2 * secondsBetween(groundPointOf(site, order.who), pointIn(order, 'at')),
  contacts: (site, order) => pacesOnWay(site, order.who, groundPointOf(site, order.who), pointIn(order, 'at')),
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
