/**
 * A switch of the section is closed by mistake, by hand or from afar (procedure D1). Blades that are closed already
 * stay as they are.
 */
import { phasesOf } from '../../../site/phasesOf'
import { blade, requireSwitchOf } from '../switches'
import type { Mechanism } from './mechanism'

export const switchClosed: Mechanism<'switch-closed'> = {
  kind: 'switch-closed',
  rows: [1],
  links: (scenario, livening) => {
    const at = requireSwitchOf(scenario, livening.switch)
    return phasesOf(scenario.conductors).map((phase) => blade(scenario, at, phase))
  },
}
