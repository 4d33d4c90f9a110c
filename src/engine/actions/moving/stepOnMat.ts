/** Lays the operator's mat under the handle, bonds it and stands on it. */
import { carriedOf, itemsOf, requirePerson } from '../../site/questions'
import type { PersonId } from '../../site/scenario'
import type { Site } from '../../site/site'
import type { Action } from '../action'
import { changePerson, moveItem, tell } from '../changes'
import { isAtHand } from '../conditions'
import { refuse } from '../refuse'

/** Carried, or lying there since somebody walked off it. */
function findMat(site: Site, who: PersonId): string | undefined {
  return carriedOf(site, who, 'operator-mat') ?? itemsOf(site, 'operator-mat').find((id) => isAtHand(site, who, id))
}

export const stepOnMat: Action = {
  id: 'step-on-mat',
  covers: ['A26'],
  check: (site, order) => {
    const person = requirePerson(site, order.who)
    if (person.onMat) return refuse(order, 'already-so')
    if (person.place.kind !== 'switch') return refuse(order, 'not-at-switch')
    return findMat(site, order.who) === undefined ? refuse(order, 'mat-missing') : undefined
  },
  takes: () => 30,
  apply: (site, order) => {
    const mat = findMat(site, order.who) ?? ''
    const laid = moveItem(site, mat, { kind: 'fitted' })
    return tell(changePerson(laid, order.who, { onMat: true }), order, mat)
  },
}
