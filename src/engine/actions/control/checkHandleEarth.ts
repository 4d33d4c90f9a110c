/** Follows the earth lead of a switch's handle by eye and hand down to the ground, before the handle is worked. */
import { findSwitch } from '../../site/questions'
import type { Site } from '../../site/site'
import type { Action } from '../action'
import { perceive } from '../changes'
import { atSwitch } from '../conditions'
import { thingIn } from '../orderValues'

const withHandleEarth = (site: Site): readonly string[] =>
  site.scenario.switches
    .filter((it) => it.handleEarth !== undefined)
    .map((it) => it.id)
    .sort()

export const checkHandleEarth: Action = {
  id: 'check-handle-earth',
  covers: ['A26'],
  things: withHandleEarth,
  check: atSwitch,
  takes: () => 20,
  apply: (site, order) => {
    const device = thingIn(order)
    const says = findSwitch(site, device)?.handleEarthBroken ? 'see.handle-earth-broken' : 'see.handle-earth-whole'
    return perceive(site, order.who, { of: device, by: 'look', says })
  },
}
