/** A phase of a feeder on somebody else's earth, over an arc or a bad contact. */
import type { Element } from '../../../physics/network'
import type { Phase, ThingId } from '../../../site/scenario'
import { feederNode, groundThingNode } from '../nodes'
import { jointResistance, resistor } from '../parts'

interface OnGroundThing {
  readonly feeder: ThingId
  readonly phase: Phase
  readonly thing: ThingId
  /** Ohm. */
  readonly impedance: number
}

export function toGroundThing({ feeder, phase, thing, impedance }: OnGroundThing): Element {
  return resistor(
    `down-${phase}`,
    feederNode(feeder, 'end', phase),
    groundThingNode(thing),
    Math.max(impedance, jointResistance),
  )
}
