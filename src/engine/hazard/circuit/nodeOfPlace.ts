/** The node of anything that belongs to the place, by the id that scenario and orders name it with. */
import { findSectionNeutral } from '../../site/findSectionNeutral'
import { isOnNextPole, withoutPole } from '../../site/nextPole'
import { conductorOf, isFarEnd } from '../../site/gaps'
import type { Scenario, ThingId } from '../../site/scenario'
import { invariant } from '../../units/invariant'
import {
  armNode,
  bucketNode,
  conductorAtPole,
  conductorNode,
  farEndNode,
  groundThingNode,
  metalNode,
  nextArmNode,
  stayLowerNode,
  stayUpperNode,
  terminalNode,
  truckNode,
} from './nodes'

/** @throws on an id that nothing there has: files and actions are checked before. */
export function nodeOfPlace(scenario: Scenario, thing: ThingId): string {
  const node = findNodeOfPlace(scenario, thing)
  invariant(node, 'a thing of the place that current can reach', thing)
  return node
}

export function findNodeOfPlace(scenario: Scenario, thing: ThingId): string | undefined {
  const neutral = findSectionNeutral(scenario)
  if (thing === 'stay' || thing === stayUpperNode) return stayUpperNode
  if ([armNode, stayLowerNode, terminalNode, truckNode, bucketNode].includes(thing)) return thing
  if (scenario.conductors.some((it) => it.id === thing)) return conductorAtPole(thing)
  if (thing === neutral?.id) return conductorAtPole(thing)
  if (isOnNextPole(thing)) {
    const id = withoutPole(thing)
    const isWire = findNodeOfPlace(scenario, id) === conductorAtPole(id)
    return id === armNode ? nextArmNode : isWire ? conductorNode(id, 'next') : undefined
  }
  const wire = conductorOf(thing)
  if (isFarEnd(thing) && findNodeOfPlace(scenario, wire) === conductorAtPole(wire)) return farEndNode(wire)
  if (thing === 'pole-earth' && neutral) return conductorAtPole(neutral.id)
  if (scenario.lv.wires.some((it) => it.id === thing)) return thing
  if (scenario.metalwork?.some((it) => it.id === thing)) return metalNode(thing)
  if (scenario.grounds?.some((it) => it.id === thing)) return groundThingNode(thing)
  return undefined
}
