/** Counts the crew; who stands on the ground outside the barrier is mustered and told that the line is now live. */
import { isInside } from '../../site/place'
import { groundPointOf, isAloft, requirePerson } from '../../site/questions'
import { isHere } from '../../site/presence'
import type { PersonId } from '../../site/scenario'
import type { Site } from '../../site/site'
import type { Action } from '../action'
import { changePerson, mark, perceive } from '../changes'
import { always } from '../refuse'

export const headCount: Action = {
  id: 'head-count',
  covers: ['A87'],
  speech: true,
  check: always,
  takes: () => 20,
  apply: (site, order) => {
    const here = Object.keys(site.persons).filter((id) => isHere(site, id))
    const clear = here.filter((id) => isClear(site, id))
    const counted = here.reduce((next, id) => changePerson(next, id, { mustered: clear.includes(id) }), site)
    const values = { count: clear.length, crew: here.length }
    return perceive(mark(counted, 'heads-counted'), order.who, { of: 'crew', by: 'look', says: 'see.heads', values })
  },
}

function isClear(site: Site, id: PersonId): boolean {
  if (isAloft(requirePerson(site, id))) return false
  return site.barrier === null || !isInside(site.barrier, groundPointOf(site, id))
}
