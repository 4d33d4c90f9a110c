/** Lays the operator's mat under the handle, bonds it and stands on it. */
import { carriedOf, requirePerson } from '../../site/questions'
import type { Action } from '../action'
import { changePerson, moveItem, tell } from '../changes'
import { refuse } from '../refuse'

export const stepOnMat: Action = {
  id: 'step-on-mat',
  covers: ['A26'],
  check: (site, order) => {
    const person = requirePerson(site, order.who)
    if (person.onMat) return refuse(order, 'already-so')
    if (person.place.kind !== 'switch') return refuse(order, 'not-at-switch')
    return carriedOf(site, order.who, 'operator-mat') === undefined ? refuse(order, 'mat-missing') : undefined
  },
  takes: () => 30,
  apply: (site, order) => {
    const mat = carriedOf(site, order.who, 'operator-mat') ?? ''
    const laid = moveItem(site, mat, { kind: 'fitted' })
    return tell(changePerson(laid, order.who, { onMat: true }), order, mat)
  },
}
