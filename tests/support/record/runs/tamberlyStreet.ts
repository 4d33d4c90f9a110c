/** The recorded runs of Tamberly Street. Seeds with a fixed draw: 1 a nail hole in a boot that is in date, and blade B falls shut while the cover comes off; 2 nothing. */
import { overlooking, together, withoutCover } from '../deviations'
import { leadLeftAloft, secondProofLeftOut, unbrushed } from '../mistakes'
import { bareHandle, saying } from '../shortcuts'
import { carefulAtSwitch, stepsApart } from '../extras'
import type { RecordedRun } from '../recordedRun'

const pack = 'concrete-rod'

export const tamberlyStreetRuns: readonly RecordedRun[] = [
  {
    name: 'clean',
    seed: 2,
    pack,
    about: 'Everything in order, cover on; nothing livened.',
  },
  {
    name: 'clean-livened',
    seed: 1,
    pack,
    about: 'The nail hole is found though the date is good; blade B falls shut; response, fresh gear, finished.',
  },
  {
    name: 'unbrushed',
    seed: 2,
    pack,
    about: 'Nobody cleans the conductors where the clamps go on.',
    conduct: unbrushed,
  },
  {
    name: 'second-proof-left-out',
    seed: 2,
    pack,
    about: 'The detector is proved before the test and not after it.',
    conduct: secondProofLeftOut,
  },
  {
    name: 'holed-boots-no-cover',
    seed: 1,
    pack,
    about: 'The nail hole is passed and no cover goes on.',
    conduct: () => together(overlooking('BT-502'), withoutCover),
  },
  {
    name: 'lead-left-aloft',
    seed: 2,
    pack,
    about: 'The lead stays at the pole top and the permit goes back.',
    conduct: leadLeftAloft,
  },
  {
    name: 'bare-handle',
    seed: 2,
    pack,
    about: 'Switch 61 is worked with bare hands from the ground; the lead lies over the low voltage.',
    conduct: () => together(bareHandle(), saying('lay-lead', { route: 'over-lv' })),
  },
  {
    name: 'tested-at-switch',
    seed: 2,
    pack,
    about: 'The earth of the handle is followed down, and the open switch tested.',
    conduct: () => carefulAtSwitch('switch-61', 'D-465', 'S-473'),
  },
  { name: 'by-multi-ground', seed: 2, pack: 'multi-ground', about: 'The whole job by other rules.' },
  {
    name: 'by-two-earths',
    seed: 2,
    pack: 'two-earths',
    about: 'The whole job by other rules again; each step heard, read back and told in messages of their own.',
    conduct: () => stepsApart('switch-61'),
  },
]
