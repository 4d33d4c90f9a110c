/** Two conductors of the crossing circuit fall onto two of the section (procedure D5). */
import { clashLink } from './clash'
import type { Mechanism } from './mechanism'

export const clashTwo: Mechanism<'clash-two'> = {
  kind: 'clash-two',
  rows: [5],
  links: (scenario, livening) =>
    livening.phases.map((phase) => clashLink(scenario, livening.feeder, phase, livening.impedance)),
}
