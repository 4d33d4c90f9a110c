/** Lays leads and bonds clear of feet and low voltage, with the stick. */
import type { Action } from '../action'
import { mark, tell } from '../changes'
import { handsFree, onPole } from '../conditions'
import { findStick } from '../reach'
import { all, refuse } from '../refuse'
import { touch } from '../touching'

export const dressLeads: Action = {
  id: 'dress-leads',
  covers: ['A67'],
  check: all(onPole, handsFree(2, 'stick'), (site, order) => {
    if (findStick(site, order.who) === undefined) return refuse(order, 'stick-missing')
    return site.clamps.some((clamp) => clamp.end !== 'earth') ? undefined : refuse(order, 'thing-missing')
  }),
  takes: () => 30,
  contacts: (site, order) => {
    const hanging = site.clamps.findLast((clamp) => clamp.end !== 'earth')
    const stick = findStick(site, order.who)
    if (!hanging || stick === undefined) return []
    const on = { kind: 'lead', item: hanging.lead, end: hanging.end } as const
    return [touch(order.who, 'left-hand', on, [stick]), touch(order.who, 'right-hand', on, [stick])]
  },
  apply: (site, order) => tell(mark(site, 'leads-dressed'), order, 'pole-top'),
}
