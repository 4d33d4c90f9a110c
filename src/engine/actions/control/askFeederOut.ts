/** Asks for another circuit to be taken out of service; the control room may refuse, by voice. */
import type { Action } from '../action'
import { perceive } from '../changes'
import { thingIn } from '../orderValues'
import { always } from '../refuse'
import { feeders } from '../things'

export const askFeederOut: Action = {
  id: 'ask-feeder-out',
  covers: ['A34'],
  speech: true,
  things: feeders,
  check: always,
  takes: () => 60,
  apply: (site, order) => {
    const feeder = thingIn(order)
    const isGranted = site.scenario.control.takesCrossingOut
    const isNews = isGranted && !site.feedersOut.includes(feeder)
    const asked = isNews ? { ...site, feedersOut: [...site.feedersOut, feeder].sort() } : site
    const says = isGranted ? 'control.feeder-out' : 'control.feeder-stays'
    return perceive(asked, order.who, { of: feeder, by: 'hear', says, values: { feeder } })
  },
}
