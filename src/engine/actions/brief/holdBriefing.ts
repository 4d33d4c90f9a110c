/** The talk before the work: everybody near enough to hear it is briefed. */
import { distance } from '../../site/place'
import { isHere } from '../../site/presence'
import { groundPointOf, isAloft } from '../../site/questions'
import type { Action } from '../action'
import { changePerson, mark, tell } from '../changes'
import { onGround } from '../conditions'

/** A voice carries so far beside a road, metres (common practice, no source). */
const hearing = 20

export const holdBriefing: Action = {
  id: 'hold-briefing',
  covers: ['A11'],
  check: onGround,
  takes: () => 300,
  apply: (site, order) => {
    const at = groundPointOf(site, order.who)
    const present = Object.values(site.persons).filter(
      (it) => isHere(site, it.id) && !isAloft(it) && distance(groundPointOf(site, it.id), at) <= hearing,
    )
    const briefed = present.reduce((next, { id }) => changePerson(next, id, { briefed: true }), site)
    return tell(mark(briefed, 'briefing-held'), order, 'crew', { count: present.length })
  },
}
