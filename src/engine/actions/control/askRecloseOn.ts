/** Asks the control room to put automatic reclosing back. */
import type { Action } from '../action'
import { changePaper, perceive } from '../changes'
import { thingIn } from '../orderValues'
import { always } from '../refuse'
import { feeders } from '../things'

export const askRecloseOn: Action = {
  id: 'ask-reclose-on',
  covers: ['A90'],
  speech: true,
  things: feeders,
  check: always,
  takes: () => 45,
  apply: (site, order) => {
    const feeder = thingIn(order)
    const back = changePaper(site, { recloseBlocked: { ...site.paper.recloseBlocked, [feeder]: false } })
    return perceive(back, order.who, { of: feeder, by: 'hear', says: 'control.reclose-on', values: { feeder } })
  },
}
