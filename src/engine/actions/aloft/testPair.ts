/** Holds the two-pole tester between two wires of the low voltage, or between one and the earth of the pole. */
import { liveVoltage } from '../../site/liveness'
import type { ThingId } from '../../site/scenario'
import type { Site } from '../../site/site'
import type { Action } from '../action'
import { perceive } from '../changes'
import { atHand, handsFree, inReachOfHand, onPole } from '../conditions'
import { choiceIn, itemIn, thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { isInReachOfHand } from '../reach'
import { measured } from '../testing'
import { lvWires } from '../things'
import { surfaceOf, touch } from '../touching'

const poleEarth = 'earth'

export const testPair: Action = {
  id: 'test-pair',
  covers: ['A46'],
  withTypes: ['lv-tester'],
  things: lvWires,
  values: { against: { kind: 'choice', many: false, of: (site) => [poleEarth, ...lvWires(site)] } },
  check: all(onPole, atHand, handsFree(2, 'item'), inReachOfHand, (site, order) => {
    const other = choiceIn(order, 'against')
    if (other === thingIn(order)) return refuse(order, 'same-wire')
    return other === poleEarth || isInReachOfHand(site, order.who, other) ? undefined : refuse(order, 'out-of-reach')
  }),
  takes: () => 15,
  contacts: (site, order) => {
    const other = choiceIn(order, 'against')
    const through = [itemIn(order)]
    const first = touch(order.who, 'left-hand', surfaceOf(site, thingIn(order)), through)
    return other === poleEarth ? [first] : [first, touch(order.who, 'right-hand', surfaceOf(site, other), through)]
  },
  apply: (site, order) => {
    const [wire, against] = [thingIn(order), choiceIn(order, 'against')]
    const { says, values } = measured(site, itemIn(order), voltsBetween(site, wire, against))
    const line = {
      of: wire,
      by: 'test',
      says: says.replace('test.', 'test-pair.'),
      values: { ...values, against },
    } as const
    return perceive(site, order.who, line)
  },
}

/** Of one phase nothing, of two phases √3 times one, against the neutral or the earth what the wire has. */
function voltsBetween(site: Site, a: ThingId, b: ThingId): number {
  const [va, vb] = [a, b].map((wire) => (wire === poleEarth ? 0 : liveVoltage(site, wire)))
  if (!va || !vb) return Math.max(va ?? 0, vb ?? 0)
  const phaseOf = (id: ThingId) => site.scenario.lv.wires.find((it) => it.id === id)?.phase
  return phaseOf(a) === phaseOf(b) ? 0 : va * Math.sqrt(3)
}
