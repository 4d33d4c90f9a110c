/** Tells the control room that a circuit it took out for the work may go in again. */
import type { Action } from '../action'
import { perceive } from '../changes'
import { thingIn } from '../orderValues'
import { refuse } from '../refuse'
import { feeders } from '../things'

export const askFeederIn: Action = {
  id: 'ask-feeder-in',
  covers: ['A90'],
  speech: true,
  // Only where control takes anything out for the work.
  things: (site) => (site.scenario.control.takesCrossingOut ? feeders(site) : []),
  check: (site, order) => (site.feedersOut.includes(thingIn(order)) ? undefined : refuse(order, 'already-so')),
  takes: () => 45,
  apply: (site, order) => {
    const feeder = thingIn(order)
    const back = { ...site, feedersOut: site.feedersOut.filter((it) => it !== feeder) }
    return perceive(back, order.who, { of: feeder, by: 'hear', says: 'control.feeder-in', values: { feeder } })
  },
}
