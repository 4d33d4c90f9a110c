/** Undoes the earth-end clamp of a lead. */
import { earthLeadTypes } from '../../gear/earthLeads'
import type { ItemId } from '../../site/scenario'
import type { Site } from '../../site/site'
import type { Action } from '../action'
import { moveItem, tell } from '../changes'
import { atEarth, handsFree } from '../conditions'
import { withoutEnd } from '../leads'
import { secondsToTarp } from '../fetching'
import { itemIn, thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { earths } from '../things'
import { bothHands, kneeling } from '../touching'

/** It hangs on nothing else: it is carried to the tarp. */
function isLoose(site: Site, lead: ItemId): boolean {
  return !site.hauled.includes(lead) && site.items[lead]?.where.kind === 'fitted'
}

export const unclampEarthEnd: Action = {
  id: 'unclamp-earth-end',
  covers: ['A82'],
  withTypes: earthLeadTypes,
  things: earths,
  check: all(atEarth, handsFree(2), (site, order) => {
    const isOn = site.clamps.some((it) => it.lead === itemIn(order) && it.end === 'earth' && it.on === thingIn(order))
    return isOn ? undefined : refuse(order, 'not-clamped-there')
  }),
  takes: (site, order) => 60 + (isLoose(site, itemIn(order)) ? secondsToTarp(site, order.who) : 0),
  // Both hands are on the clamp: one steadies it, one turns the screw; nobody needs to touch the rod.
  contacts: (site, order) => [
    ...bothHands(order.who, { kind: 'lead', item: itemIn(order), end: 'earth' }),
    ...kneeling(site, order.who),
  ],
  joint: (site, order) => withoutEnd(site, itemIn(order), 'earth'),
  apply: (site, order) => {
    const lead = itemIn(order)
    const off = withoutEnd(site, lead, 'earth')
    return tell(isLoose(site, lead) ? moveItem(off, lead, { kind: 'tarp' }) : off, order, thingIn(order), { lead })
  },
}
