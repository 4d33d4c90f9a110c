/** Holds a lead in the hand on the ground, to help. */
import { earthLeadTypes } from '../../gear/earthLeads'
import type { Action } from '../action'
import { tell } from '../changes'
import { handsFree, nearPole, onSite } from '../conditions'
import { isLeadAtHand } from '../leads'
import { itemIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { touch } from '../touching'

export const holdLead: Action = {
  id: 'hold-lead',
  covers: ['A43'],
  withTypes: earthLeadTypes,
  check: all(onSite, nearPole(6), handsFree(1, 'item'), (site, order) =>
    isLeadAtHand(site, order) ? undefined : refuse(order, 'not-at-hand', { item: itemIn(order) }),
  ),
  takes: () => 60,
  contacts: (_site, order) => [touch(order.who, 'right-hand', { kind: 'lead', item: itemIn(order), end: 'earth' })],
  apply: (site, order) => tell(site, order, itemIn(order)),
}
