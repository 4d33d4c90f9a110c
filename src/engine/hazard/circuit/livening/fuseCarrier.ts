/**
 * A fuse carrier of a switch is put back in by somebody (procedure D4): one phase comes through its fuse and stays until
 * that has blown. The fuse is a device of the story: protection/devicesOf.ts.
 */
import { blade, requireSwitchOf } from '../switches'
import type { Mechanism } from './mechanism'

export const fuseCarrier: Mechanism<'fuse-carrier'> = {
  kind: 'fuse-carrier',
  rows: [4],
  links: (scenario, livening) => [blade(scenario, requireSwitchOf(scenario, livening.switch), livening.phase)],
}
