/**
 * A switch of the section is closed by mistake, by hand or from afar (procedure D1). Blades that are closed already
 * stay as they are.
 */
import { allBlades, requireSwitchOf } from '../switches'
import type { Mechanism } from './mechanism'

export const switchClosed: Mechanism<'switch-closed'> = {
  kind: 'switch-closed',
  rows: [1],
  links: (scenario, livening) => allBlades(scenario, requireSwitchOf(scenario, livening.switch)),
}
