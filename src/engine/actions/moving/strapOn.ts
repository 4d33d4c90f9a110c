/** Passes the pole strap round the pole and clips it; in the bucket it goes to the ring of the boom. */
import { carriedOf, requirePerson } from '../../site/questions'
import type { Action } from '../action'
import { changePerson, tell } from '../changes'
import { handsFree, nearPole } from '../conditions'
import { onPoleHere } from './climb'
import { all, refuse } from '../refuse'

export const strapOn: Action = {
  id: 'strap-on',
  covers: ['A22', 'A45'],
  check: all(nearPole(2), handsFree(2), (site, order) => {
    const person = requirePerson(site, order.who)
    if (person.strapped) return refuse(order, 'already-so')
    const harness = carriedOf(site, order.who, 'harness')
    return harness !== undefined && person.wears.includes(harness) ? undefined : refuse(order, 'harness-missing')
  }),
  takes: () => 15,
  apply: (site, order) => {
    const { place } = requirePerson(site, order.who)
    const at = place.kind === 'pole' || place.kind === 'bucket' ? place : onPoleHere(site, order.who, 'foot')
    return tell(changePerson(site, order.who, { strapped: true, place: at }), order, 'pole')
  },
}
