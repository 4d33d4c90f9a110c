/**
 * The tail of a jumper that was opened at the worked pole swings back onto its conductor (procedure D7); or one of another
 * pole of the section, when the crossing circuit's conductor lies on the piece that hangs apart there.
 */
import { conductorAtPole, conductorNode, farEndOf, feederNode } from '../nodes'
import { jointResistance, resistor } from '../parts'
import { conductorOfPhase } from '../supply'
import { clashLink } from './clash'
import type { Mechanism } from './mechanism'

export const jumperBack: Mechanism<'jumper-back'> = {
  kind: 'jumper-back',
  rows: [7],
  links: (scenario, { feeder, phase, impedance, at }) => {
    const { id } = conductorOfPhase(scenario.conductors, phase)
    const touch = Math.max(impedance, jointResistance)
    if (at === undefined) {
      return [resistor(`jumper-${phase}`, feederNode(feeder, 'end', phase), conductorAtPole(id), touch)]
    }
    const near = conductorNode(id, at)
    return [clashLink(scenario, feeder, phase, impedance), resistor(`jumper-${phase}`, farEndOf(near), near, touch)]
  },
}
