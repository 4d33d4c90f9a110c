/**
 * An earth fault elsewhere raises the multi-earthed neutral (procedure D19): a phase of a feeder on the neutral wire where
 * that feeder's line meets the section. The feeder's own relays take it off.
 */
import { invariant } from '../../../units/invariant'
import { neutralEnd } from '../neutralWire'
import { feederNode } from '../nodes'
import { jointResistance, resistor } from '../parts'
import { requireFeeder } from '../supply'
import type { Mechanism } from './mechanism'

export const neutralRaised: Mechanism<'neutral-raised'> = {
  kind: 'neutral-raised',
  rows: [19],
  links: (scenario, { feeder: id, phase, impedance }) => {
    const feeder = requireFeeder(scenario, id)
    invariant(feeder.neutralWire, 'a feeder with a neutral wire', id)
    const neutral = neutralEnd(scenario, feeder, feeder.neutralWire)
    const ohm = Math.max(impedance, jointResistance)
    return [resistor(`${id}/fault-${phase}`, feederNode(id, 'end', phase), neutral, ohm)]
  },
}
