/** Says back the own task and the stop signal, and signs on. */
import { requirePerson } from '../../site/questions'
import type { Action } from '../action'
import { changePerson, tell } from '../changes'
import { all, refuse } from '../refuse'
import { onGround } from '../conditions'

export const signOn: Action = {
  id: 'sign-on',
  covers: ['A12'],
  check: all(onGround, (site, order) =>
    requirePerson(site, order.who).signedOn ? refuse(order, 'already-signed-on') : undefined,
  ),
  takes: () => 15,
  apply: (site, order) => tell(changePerson(site, order.who, { signedOn: true }), order, order.who),
}
