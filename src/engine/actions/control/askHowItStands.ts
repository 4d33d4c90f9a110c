/** Asks the control room how a circuit stands: in service or out, and whether it recloses by itself. */
import type { Action } from '../action'
import { perceive } from '../changes'
import { thingIn } from '../orderValues'
import { always } from '../refuse'
import { feeders } from '../things'

export const askHowItStands: Action = {
  id: 'ask-how-it-stands',
  covers: ['A01', 'A23'],
  speech: true,
  things: feeders,
  check: always,
  takes: () => 30,
  apply: (site, order) => {
    const feeder = thingIn(order)
    const recloses = (site.scenario.feeders.find((it) => it.id === feeder)?.recloseDeadTimes ?? []).length > 0
    const isOut = site.feedersOut.includes(feeder)
    const state = isOut ? 'out-of-service' : 'in-service'
    const reclose = recloses && !isOut && site.paper.recloseBlocked[feeder] !== true ? 'recloses' : 'does-not-reclose'
    return perceive(site, order.who, {
      of: feeder,
      by: 'hear',
      says: 'control.stands',
      values: { feeder, state, reclose },
    })
  },
}
