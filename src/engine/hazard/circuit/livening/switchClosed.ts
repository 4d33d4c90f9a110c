/**
 * A switch of the section is closed by mistake, by hand or from afar (procedure D1, D17). Locked and put to local it
 * cannot be; a switch that stands closed is no event, it is the supply as set.
 */
import { invariant } from '../../../units/invariant'
import { phases, type Scenario } from '../../../site/scenario'
import { blade } from '../switches'
import type { Mechanism } from './mechanism'

export const switchClosed: Mechanism<'switch-closed'> = {
  kind: 'switch-closed',
  feeder: (scenario, livening) => requireSwitchOf(scenario, livening.switch).feeder,
  whyNot: (site, livening) => {
    const at = requireSwitchOf(site.scenario, livening.switch)
    const state = site.switches[at.id]
    invariant(state, 'a state of each switch', at.id)
    if (phases.every((phase) => state.blades[phase] === 'closed')) return 'already-closed'
    const isRemoteBlocked = !at.remote || state.control === 'local'
    return state.lock !== null && isRemoteBlocked ? 'locked-open' : undefined
  },
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
