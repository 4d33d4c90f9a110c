/**
 * A lead that is being hoisted, hangs loose or lies over the wires with a cut jacket touches a live low-voltage wire
 * (procedure D25). It touches at the lead's first conductor clamp; a jacket cut somewhere below it is a few metres of
 * copper away, less than 10 mΩ (own choice). The low voltage's fuses are left out, so it lasts.
 */
import type { Element } from '../../../physics/network'
import type { Scenario } from '../../../site/scenario'
import type { FittedLead } from '../fitted'
import { cables, freshLeads } from '../leads'
import { leadNode } from '../nodes'
import { resistor } from '../parts'
import type { Mechanism } from './mechanism'

export const leadOnLowVoltage: Mechanism<'lead-on-low-voltage'> = {
  kind: 'lead-on-low-voltage',
  rows: [25],
  links: (scenario, { wire, impedance }, fitted) => {
    const touching = fitted.atLowVoltage.find((it) => it.wire === wire)?.leads ?? []
    return touching.flatMap((lead): readonly Element[] => [
      ...ownCable(scenario, lead),
      resistor(`touch/${lead.item}/${wire}`, leadNode(lead.item, touchingEnd), wire, impedance),
    ])
  },
  ownSource: (_, { wire }) => ({ id: `${wire}/touched`, elements: [], stopsAfter: 'never' }),
}

/** The first conductor clamp. */
const touchingEnd = '1'

/** The cable of a lead that no clamp holds is in no other part of the circuit. */
function ownCable({ frequency }: Scenario, lead: FittedLead): readonly Element[] {
  return lead.clamps.length > 0 ? [] : cables(frequency, lead, freshLeads)
}
