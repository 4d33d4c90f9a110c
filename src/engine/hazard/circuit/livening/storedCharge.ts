/**
 * A capacitor bank or a long cable that was not discharged (procedure D27). It gives one impulse: its energy and the
 * voltage that is left are figures (hazard/storedCharge.ts), but no current through a body at mains frequency stands for it.
 */
import type { Mechanism } from './mechanism'

export const storedCharge: Mechanism<'stored-charge'> = {
  kind: 'stored-charge',
  rows: [27],
  isComputed: false,
  links: () => [],
}
