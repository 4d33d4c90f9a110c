/**
 * A switch of the section is closed by mistake, by hand or from afar (procedure D1). Blades that are closed already
 * stay as they are.
 */
import { invariant } from '../../../units/invariant'
import { phases, type Scenario } from '../../../site/scenario'
import { blade } from '../switches'
import type { Mechanism } from './mechanism'

export const switchClosed: Mechanism<'switch-closed'> = {
  kind: 'switch-closed',
  rows: [1],
  links: (scenario, livening) => {
    const at = requireSwitchOf(scenario, livening.switch)
    return phases.map((phase) => blade(scenario, at, phase))
  },
}

function requireSwitchOf(scenario: Scenario, id: string) {
  const at = scenario.switches.find((it) => it.id === id)
  invariant(at, 'a switch of the scenario', id)
  return at
}
