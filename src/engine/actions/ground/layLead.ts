/** Lays a lead out and up the side of the pole by a route. */
import { earthLeadTypes } from '../../gear/earthLeads'
import type { Action } from '../action'
import { tell, write } from '../changes'
import { handsFree, nearPole, onSite } from '../conditions'
import { isLeadAtHand } from '../leads'
import { choiceIn, itemIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { touch } from '../touching'

export const layLead: Action = {
  id: 'lay-lead',
  covers: ['A42'],
  withTypes: earthLeadTypes,
  values: { route: { kind: 'choice', many: false, of: () => ['clear-of-lv', 'coiled', 'over-lv'] } },
  moves: true,
  check: all(onSite, nearPole(8), handsFree(1, 'item'), (site, order) =>
    isLeadAtHand(site, order) ? undefined : refuse(order, 'not-at-hand', { item: itemIn(order) }),
  ),
  takes: () => 90,
  contacts: (_site, order) => [touch(order.who, 'right-hand', { kind: 'lead', item: itemIn(order), end: 'earth' })],
  apply: (site, order) => {
    const [lead, route] = [itemIn(order), choiceIn(order, 'route')]
    return tell(write(site, `route:${lead}`, route), order, lead, { route })
  },
}
