/** One open blade of a switch falls shut later: a worn latch, vibration (procedure D3). A lock on the handle does not hold it. */
import { blade, requireSwitchOf } from '../switches'
import type { Mechanism } from './mechanism'

export const bladeShut: Mechanism<'blade-shut'> = {
  kind: 'blade-shut',
  rows: [3],
  links: (scenario, livening) => [blade(scenario, requireSwitchOf(scenario, livening.switch), livening.phase)],
}
