/** Asks the control room to block automatic reclosing of a feeder. */
import type { Action } from '../action'
import { changePaper, perceive } from '../changes'
import { thingIn } from '../orderValues'
import { always } from '../refuse'
import { feeders } from '../things'

export const askRecloseBlock: Action = {
  id: 'ask-reclose-block',
  covers: ['A23'],
  speech: true,
  things: feeders,
  check: always,
  takes: () => 45,
  apply: (site, order) => {
    const feeder = thingIn(order)
    const isGranted = site.scenario.control.blocksReclose
    const asked = isGranted
      ? changePaper(site, { recloseBlocked: { ...site.paper.recloseBlocked, [feeder]: true } })
      : site
    const says = isGranted ? 'control.reclose-blocked' : 'control.reclose-not-blocked'
    return perceive(asked, order.who, { of: feeder, by: 'hear', says, values: { feeder } })
  },
}
