/**
 * An insulator of a switch breaks or flashes over as it is worked onto earths (procedure D1): a phase of its feeder on the
 * handle, whose own earth and mat are all that the operator has.
 */
import { feederNode, handleNode } from '../nodes'
import { jointResistance, resistor } from '../parts'
import { requireSwitchOf } from '../switches'
import type { Mechanism } from './mechanism'

export const handleLive: Mechanism<'handle-live'> = {
  kind: 'handle-live',
  rows: [1],
  links: (scenario, { switch: id, phase, impedance }) => [
    resistor(
      `${id}/insulator-${phase}`,
      feederNode(requireSwitchOf(scenario, id).feeder, 'end', phase),
      handleNode(id),
      Math.max(impedance, jointResistance),
    ),
  ],
}
