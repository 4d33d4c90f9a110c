/** Steps off the mat, loosens it and takes it up. */
import { freeHands, itemsOf, requireItem, requirePerson } from '../../site/questions'
import type { Action } from '../action'
import { changePerson, putInHands, tell } from '../changes'
import { refuse } from '../refuse'

export const stepOffMat: Action = {
  id: 'step-off-mat',
  covers: ['A26'],
  check: (site, order) => {
    if (!requirePerson(site, order.who).onMat) return refuse(order, 'already-so')
    return freeHands(site, order.who) >= 1 ? undefined : refuse(order, 'hands-full', { items: '' })
  },
  takes: () => 20,
  apply: (site, order) => {
    const mat = itemsOf(site, 'operator-mat').find((id) => requireItem(site, id).where.kind === 'fitted')
    const off = changePerson(site, order.who, { onMat: false })
    return tell(mat === undefined ? off : putInHands(off, mat, order.who), order, mat ?? 'ground')
  },
}
