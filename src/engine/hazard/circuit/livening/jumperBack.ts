/** The tail of a jumper that was opened at the worked pole swings back onto its conductor (procedure D7). */
import { conductorAtPole, feederNode } from '../nodes'
import { jointResistance, resistor } from '../parts'
import { conductorOfPhase } from '../supply'
import type { Mechanism } from './mechanism'

export const jumperBack: Mechanism<'jumper-back'> = {
  kind: 'jumper-back',
  rows: [7],
  links: (scenario, { feeder, phase, impedance }) => [
    resistor(
      `jumper-${phase}`,
      feederNode(feeder, 'end', phase),
      conductorAtPole(conductorOfPhase(scenario.conductors, phase).id),
      Math.max(impedance, jointResistance),
    ),
  ],
}
