/** Holds somebody back who would go in or up, while nobody knows that it is dead. */
import { groundPointOf, isAloft, requirePerson } from '../../site/questions'
import { distance } from '../../site/place'
import type { Action } from '../action'
import { mark, tell } from '../changes'
import { choiceIn } from '../orderValues'
import { refuse } from '../refuse'

/** A shout carries so far, metres (common practice, no source). */
const shouting = 60

export const holdBack: Action = {
  id: 'hold-back',
  covers: ['A77'],
  speech: true,
  values: { whom: { kind: 'choice', many: false, of: (site) => Object.keys(site.persons) } },
  check: (site, order) => {
    const whom = choiceIn(order, 'whom')
    if (whom === order.who || isAloft(requirePerson(site, whom))) return refuse(order, 'not-on-ground')
    const apart = distance(groundPointOf(site, order.who), groundPointOf(site, whom))
    return apart <= shouting ? undefined : refuse(order, 'out-of-hearing', { person: whom })
  },
  takes: () => 10,
  apply: (site, order) => {
    const whom = choiceIn(order, 'whom')
    return tell(mark(site, `held-back:${whom}`), order, whom, { whom })
  },
}
