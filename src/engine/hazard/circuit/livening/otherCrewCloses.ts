/** Another crew under a permit of its own closes a switch of the section by hand, all blades (procedure D18). */
import { allBlades, requireSwitchOf } from '../switches'
import type { Mechanism } from './mechanism'

export const otherCrewCloses: Mechanism<'other-crew-closes'> = {
  kind: 'other-crew-closes',
  rows: [18],
  links: (scenario, livening) => allBlades(scenario, requireSwitchOf(scenario, livening.switch)),
}
