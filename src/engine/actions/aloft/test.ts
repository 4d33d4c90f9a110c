/** Tests a conductor with the detector on the stick, or a low-voltage wire with the two-pole tester. */
import { pickedUpVoltage } from '../../hazard/pickedUp'
import { conductorOf, isOpened } from '../../site/gaps'
import { gearOf, numberOf, requireItem } from '../../site/questions'
import { liveVoltage } from '../../site/liveness'
import type { ThingId } from '../../site/scenario'
import type { Site } from '../../site/site'
import type { Action, Order } from '../action'
import { perceive, type Perceived } from '../changes'
import { atHand, handsFree, inReachOfHand, onPole, withStick } from '../conditions'
import { itemIn, thingIn } from '../orderValues'
import { all } from '../refuse'
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
  const tester = itemIn(order)
  const { is } = gearOf(site, tester)
  const values = { with: tester }
  if (is.indicates !== true) return { says: 'test.silent', values }
  if (isDetector(site, order)) {
    const from = numberOf(is, 'threshold') * numberOf(is, 'bandLow')
    return { says: isFelt(site, thingIn(order), from) ? 'test.indicates' : 'test.silent', values }
  }
  const volts = liveVoltage(site, thingIn(order))
  if (volts > numberOf(is, 'maxVoltage')) return { says: 'test.over-range', values }
  return { says: 'test.reads', values: { ...values, volts } }
}

/** Fed by a blade (of an opened conductor each end by itself, as the circuit gives it), or lifted by a circuit beside it; where that cannot be solved, it is not shown to be dead. */
function isFelt(site: Site, thing: ThingId, from: number): boolean {
  if (!isOpened(site, conductorOf(thing)) && liveVoltage(site, conductorOf(thing)) >= from) return true
  const pickedUp = pickedUpVoltage(site, thing)
  return typeof pickedUp !== 'number' || pickedUp >= from
}
