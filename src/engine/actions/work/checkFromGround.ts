/** Checks the whole set from the ground with binoculars, item by item. */
import type { Action } from '../action'
import { mark, perceive, type Perceived } from '../changes'
import { atHand, nearPole, onSite } from '../conditions'
import { itemIn } from '../orderValues'
import { all } from '../refuse'

export const checkFromGround: Action = {
  id: 'check-from-ground',
  covers: ['A68'],
  withTypes: ['binoculars'],
  check: all(onSite, nearPole(60), atHand),
  takes: () => 90,
  apply: (site, order) => {
    const seen = (of: string, says: string, values: Perceived['values'] = {}): Perceived => ({
      of,
      by: 'look',
      says,
      values,
    })
    const counts = {
      leads: site.clamps.filter((it) => it.end !== 'earth' && it.end !== 'metal' && it.end !== 'line').length,
      bonds: site.clamps.filter((it) => it.end === 'line').length,
      guards: site.guards.length,
    }
    const cover = site.cover
      ? seen('cover', 'see.cover', { from: site.cover.from, to: site.cover.to })
      : seen('pole', 'see.pole-bare')
    return perceive(mark(site, 'checked-from-ground'), order.who, seen(itemIn(order), 'see.from-ground', counts), cover)
  },
}
