/** The control room or a scheme of its own closes a switch from afar, all blades (procedure D17). */
import { allBlades, requireSwitchOf } from '../switches'
import type { Mechanism } from './mechanism'

export const remoteClose: Mechanism<'remote-close'> = {
  kind: 'remote-close',
  rows: [17],
  links: (scenario, livening) => allBlades(scenario, requireSwitchOf(scenario, livening.switch)),
}
