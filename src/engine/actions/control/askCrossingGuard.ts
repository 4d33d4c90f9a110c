/**
 * Asks the control room for people who put a guard between the section and a circuit that crosses it: then no conductor of
 * the one gets to the other. They come, or there is nobody to send.
 */
import type { Action } from '../action'
import { perceive } from '../changes'
import { thingIn } from '../orderValues'
import { refuse } from '../refuse'
import { crossingFeeders } from '../things'

export const askCrossingGuard: Action = {
  id: 'ask-crossing-guard',
  covers: ['A34'],
  speech: true,
  things: (site) => (site.scenario.control.guardsCrossing === undefined ? [] : crossingFeeders(site)),
  check: (site, order) => (site.guardedFrom?.includes(thingIn(order)) ? refuse(order, 'already-so') : undefined),
  takes: (site) => (site.scenario.control.guardsCrossing ? 1500 : 60),
  apply: (site, order) => {
    const feeder = thingIn(order)
    const isGranted = site.scenario.control.guardsCrossing === true
    const guarded = isGranted ? { ...site, guardedFrom: [...(site.guardedFrom ?? []), feeder].sort() } : site
    const says = isGranted ? 'control.crossing-guarded' : 'control.nobody-to-guard'
    return perceive(guarded, order.who, { of: feeder, by: 'hear', says, values: { feeder } })
  },
}
