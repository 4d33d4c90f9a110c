/** Tests a conductor with the detector on the stick, or a low-voltage wire with the two-pole tester. */
import { requireItem } from '../../site/questions'
import { liveVoltage } from '../../site/liveness'
import type { Site } from '../../site/site'
import type { Action, Order } from '../action'
import { perceive, type Perceived } from '../changes'
import { atHand, handsFree, inReachOfHand, onPole, withStick } from '../conditions'
import { itemIn, thingIn } from '../orderValues'
import { all } from '../refuse'
import { detected, measured } from '../testing'
import { conductorEnds, lvWires } from '../things'
import { bothHands, stickOnThing, surfaceOf } from '../touching'

const isDetector = (site: Site, order: Order): boolean => requireItem(site, itemIn(order)).type === 'hv-detector'

export const test: Action = {
  id: 'test',
  covers: ['A46', 'A52'],
  withTypes: ['hv-detector', 'lv-tester'],
  things: (site) => [...conductorEnds(site), ...lvWires(site)],
  byHand: true,
  check: all(onPole, atHand, (site, order) =>
    isDetector(site, order) ? withStick(site, order) : all(handsFree(2, 'item'), inReachOfHand)(site, order),
  ),
  takes: () => 20,
  contacts: (site, order) =>
    isDetector(site, order)
      ? stickOnThing(site, order)
      : bothHands(order.who, surfaceOf(site, thingIn(order)), [itemIn(order)]),
  apply: (site, order) => perceive(site, order.who, { of: thingIn(order), by: 'test', ...reading(site, order) }),
}

function reading(site: Site, order: Order): Pick<Perceived, 'says' | 'values'> {
  const [tester, thing] = [itemIn(order), thingIn(order)]
  return isDetector(site, order) ? detected(site, tester, thing) : measured(site, tester, liveVoltage(site, thing))
}
