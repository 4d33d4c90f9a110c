/** Pulls an earth rod and fills the hole; a clamp still on it comes out with it, and a lead that hangs on nothing else. */
import { clampsOf, clampsOn, requireItem } from '../../site/questions'
import type { ItemId } from '../../site/scenario'
import type { Site } from '../../site/site'
import type { Action } from '../action'
import { moveItem, tell } from '../changes'
import { atRod, handsFree } from '../conditions'
import { secondsToTarp } from '../fetching'
import { thingIn } from '../orderValues'
import { all } from '../refuse'
import { rodItem, rods } from '../things'
import { bothHands } from '../touching'

export const pullRod: Action = {
  id: 'pull-rod',
  covers: ['A84'],
  things: rods,
  check: all(atRod, handsFree(2)),
  takes: (site, order) => 180 + secondsToTarp(site, order.who),
  contacts: (_site, order) => bothHands(order.who, { kind: 'rod', item: rodItem(thingIn(order)) }),
  apply: (site, order) => {
    const item = rodItem(thingIn(order))
    const onRod = clampsOn(site, thingIn(order)).map((clamp) => clamp.lead)
    const pulled: Site = {
      ...moveItem(site, item, { kind: 'tarp' }),
      rods: site.rods.filter((rod) => rod.item !== item),
      clamps: site.clamps.filter((clamp) => clamp.on !== thingIn(order)),
    }
    const isLoose = (lead: ItemId): boolean =>
      clampsOf(pulled, lead).length === 0 && requireItem(pulled, lead).where.kind === 'fitted'
    const cleared = onRod.filter(isLoose).reduce<Site>((next, lead) => moveItem(next, lead, { kind: 'tarp' }), pulled)
    return tell(cleared, order, thingIn(order))
  },
}
