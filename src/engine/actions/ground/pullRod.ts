/** Pulls an earth rod and fills the hole; a clamp still on it comes out with it. */
import type { Action } from '../action'
import { moveItem, tell } from '../changes'
import { atRod, handsFree } from '../conditions'
import { thingIn } from '../orderValues'
import { all } from '../refuse'
import { rodItem, rods } from '../things'
import { bothHands } from '../touching'

export const pullRod: Action = {
  id: 'pull-rod',
  covers: ['A84'],
  things: rods,
  check: all(atRod, handsFree(2)),
  takes: () => 180,
  contacts: (_site, order) => bothHands(order.who, { kind: 'rod', item: rodItem(thingIn(order)) }),
  apply: (site, order) => {
    const item = rodItem(thingIn(order))
    const pulled = {
      ...moveItem(site, item, { kind: 'tarp' }),
      rods: site.rods.filter((rod) => rod.item !== item),
      clamps: site.clamps.filter((clamp) => clamp.on !== thingIn(order)),
    }
    return tell(pulled, order, thingIn(order))
  },
}
