/** The recorded runs of Sedgeland Drove. Seeds with a fixed draw: 1 a nail hole in a boot, and blade B closes through the coil at the first touch; 2 nothing. */
import { handOnLead, leadLeftAloft, secondProofLeftOut, untugged } from '../mistakes'
import { byHand, saying } from '../shortcuts'
import { together } from '../deviations'
import { otherWays } from '../extras'
import type { RecordedRun } from '../recordedRun'

const pack = 'two-earths'

export const sedgelandDroveRuns: readonly RecordedRun[] = [
  {
    name: 'clean',
    seed: 2,
    pack,
    about: 'Main earths before the permit, work earths at the pole, every number read back.',
  },
  {
    name: 'clean-livened',
    seed: 1,
    pack,
    about: 'The holed boot is found; B comes alive through the coil; response, fresh gear, finished.',
  },
  {
    name: 'untugged',
    seed: 2,
    pack,
    about: 'Nobody tugs at a clamp.',
    conduct: untugged,
  },
  {
    name: 'second-proof-left-out',
    seed: 2,
    pack,
    about: 'The detector is proved before the test and not after it.',
    conduct: secondProofLeftOut,
  },
  {
    name: 'hand-on-lead',
    seed: 2,
    pack,
    about: 'The ground worker holds the lead while the pole worker clamps.',
    conduct: handOnLead,
  },
  {
    name: 'lead-left-aloft',
    seed: 2,
    pack,
    about: 'The lead stays at the pole top and the permit goes back.',
    conduct: leadLeftAloft,
  },
  {
    name: 'by-hand',
    seed: 2,
    pack,
    about: 'The lead lies over the low voltage, and B is clamped with the hand.',
    conduct: () => together(saying('lay-lead', { route: 'over-lv' }), byHand('conductor-b')),
  },
  {
    name: 'other-ways',
    seed: 2,
    pack,
    about: 'A tag with a name alone, a reading taken for induced.',
    conduct: () => otherWays('switch-27', 'T-341'),
  },
  {
    name: 'other-ways-concrete-rod',
    seed: 2,
    pack: 'concrete-rod',
    about: 'The same by other rules, and an earth at the switch that these do not ask for.',
    conduct: () => otherWays('switch-27', 'T-341', 'E-281'),
  },
  {
    name: 'other-ways-multi-ground',
    seed: 2,
    pack: 'multi-ground',
    about: 'The same by other rules again.',
    conduct: () => otherWays('switch-27', 'T-341', 'E-281'),
  },
]
