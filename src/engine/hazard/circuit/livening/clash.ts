/** A live conductor of the crossing circuit falls onto the same-named conductor of the section (procedure D5). */
import type { Element } from '../../../physics/network'
import type { Phase, Scenario, ThingId } from '../../../site/scenario'
import { conductorNode } from '../nodes'
import { feederAtCrossing } from '../parallel'
import { jointResistance, resistor } from '../parts'
import { conductorOfPhase } from '../supply'
import type { Mechanism } from './mechanism'

export const clash: Mechanism<'clash'> = {
  kind: 'clash',
  rows: [5],
  links: (scenario, livening) => [clashLink(scenario, livening.feeder, livening.phase, livening.impedance)],
}

/** @param impedance of the contact and its arc, ohm */
export function clashLink(scenario: Scenario, feeder: ThingId, phase: Phase, impedance: number): Element {
  const conductor = conductorOfPhase(scenario.conductors, phase)
  return resistor(
    `clash-${phase}`,
    feederAtCrossing(scenario, feeder, phase),
    conductorNode(conductor.id, 'crossing'),
    Math.max(impedance, jointResistance),
  )
}
