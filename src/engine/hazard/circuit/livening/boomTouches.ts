/** The boom or the body of the truck touches a live conductor beside the work (procedure D22): the whole truck is alive. */
import { feederNode, truckNode } from '../nodes'
import { jointResistance, resistor } from '../parts'
import type { Mechanism } from './mechanism'

export const boomTouches: Mechanism<'boom-touches'> = {
  kind: 'boom-touches',
  rows: [22],
  links: (_, { feeder, phase, impedance }) => [
    resistor(`boom-${phase}`, feederNode(feeder, 'end', phase), truckNode, Math.max(impedance, jointResistance)),
  ],
}
