/** Hauls up what is tied on; it then hangs within reach. */
import { isEarthLead } from '../../gear/earthLeads'
import { requireItem } from '../../site/questions'
import type { Site } from '../../site/site'
import type { Action } from '../action'
import { changeItem, hangingBy, tell } from '../changes'
import { handsFree, onPole } from '../conditions'
import { thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { items } from '../things'

export const haul: Action = {
  id: 'haul',
  covers: ['A49'],
  things: items,
  check: all(onPole, handsFree(2), (site, order) =>
    requireItem(site, thingIn(order)).where.kind === 'handline'
      ? undefined
      : refuse(order, 'not-tied-on', { item: thingIn(order) }),
  ),
  takes: () => 40,
  apply: (site, order) => {
    const id = thingIn(order)
    const up: Site = changeItem(site, id, { where: hangingBy(site, order.who) })
    const isLead = isEarthLead(requireItem(site, id).type)
    return tell(isLead ? { ...up, hauled: [...site.hauled, id].sort() } : up, order, id)
  },
}
