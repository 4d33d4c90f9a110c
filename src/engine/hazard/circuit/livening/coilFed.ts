/**
 * One phase of a coil-earthed network on the section, by one blade of a switch that falls shut (procedure D20). The coil
 * takes the capacitive current; what is left is some amperes that no relay trips on.
 */
import { blade, requireSwitchOf } from '../switches'
import type { Mechanism } from './mechanism'

export const coilFed: Mechanism<'coil-fed'> = {
  kind: 'coil-fed',
  rows: [20],
  links: (scenario, livening) => [blade(scenario, requireSwitchOf(scenario, livening.switch), livening.phase)],
}
