/** Unclips the pole strap. */
import { requirePerson } from '../../site/questions'
import type { Action } from '../action'
import { changePerson, tell } from '../changes'
import { refuse } from '../refuse'

export const unstrap: Action = {
  id: 'unstrap',
  covers: ['A45'],
  check: (site, order) => (requirePerson(site, order.who).strapped ? undefined : refuse(order, 'already-so')),
  takes: () => 10,
  apply: (site, order) => tell(changePerson(site, order.who, { strapped: false }), order, 'pole'),
}
