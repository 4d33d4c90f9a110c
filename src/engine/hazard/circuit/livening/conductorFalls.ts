/**
 * A conductor of a line above, often of a higher voltage and another phase, breaks and falls onto one of the section
 * (procedure D6), at the crossing or at the worked pole.
 */
import { conductorNode, feederNode } from '../nodes'
import { jointResistance, resistor } from '../parts'
import type { Mechanism } from './mechanism'

export const conductorFalls: Mechanism<'conductor-falls'> = {
  kind: 'conductor-falls',
  rows: [6],
  links: (_, { feeder, phase, onto, at, impedance }) => [
    resistor(
      `falls-${phase}`,
      feederNode(feeder, 'end', phase),
      conductorNode(onto, at),
      Math.max(impedance, jointResistance),
    ),
  ],
}
