/** Sends somebody off the job: what they were told and signed for holds no longer; who comes again is briefed again. */
import { requirePerson } from '../../site/questions'
import type { Action } from '../action'
import { changePerson, mark, tell } from '../changes'
import { choiceIn } from '../orderValues'
import { refuse } from '../refuse'

export const sendAway: Action = {
  id: 'send-away',
  covers: ['A12'],
  speech: true,
  values: { whom: { kind: 'choice', many: false, of: (site) => Object.keys(site.persons) } },
  check: (site, order) => {
    const whom = choiceIn(order, 'whom')
    const { signedOn, briefed } = requirePerson(site, whom)
    return whom === order.who || (!signedOn && !briefed) ? refuse(order, 'already-so') : undefined
  },
  takes: () => 15,
  apply: (site, order) => {
    const whom = choiceIn(order, 'whom')
    const off = changePerson(site, whom, { signedOn: false, briefed: false, mustered: false })
    return tell(mark(off, `sent-away:${whom}`), order, whom, { whom })
  },
}
