/** Undoes the earth-end clamp of a lead. */
import type { Action } from '../action'
import { moveItem, tell } from '../changes'
import { atRod, handsFree } from '../conditions'
import { withoutEnd } from '../leads'
import { itemIn, thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { rods } from '../things'
import { bothHands } from '../touching'

export const unclampEarthEnd: Action = {
  id: 'unclamp-earth-end',
  covers: ['A82'],
  withTypes: ['earth-lead'],
  things: rods,
  check: all(atRod, handsFree(2), (site, order) => {
    const isOn = site.clamps.some((it) => it.lead === itemIn(order) && it.end === 'earth' && it.on === thingIn(order))
    return isOn ? undefined : refuse(order, 'not-clamped-there')
  }),
  takes: () => 60,
  // Both hands are on the clamp: one steadies it, one turns the screw; nobody needs to touch the rod.
  contacts: (_site, order) => bothHands(order.who, { kind: 'lead', item: itemIn(order), end: 'earth' }),
  joint: (site, order) => withoutEnd(site, itemIn(order), 'earth'),
  apply: (site, order) => {
    const lead = itemIn(order)
    const off = withoutEnd(site, lead, 'earth')
    const isLoose = !site.hauled.includes(lead) && site.items[lead]?.where.kind === 'fitted'
    return tell(isLoose ? moveItem(off, lead, { kind: 'tarp' }) : off, order, thingIn(order), { lead })
  },
}
