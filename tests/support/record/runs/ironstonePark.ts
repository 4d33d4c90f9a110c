/** The recorded runs of Ironstone Park. Seeds with a fixed draw: 1 a stick with a carbon track, and blade B falls shut at the first touch; 2 nothing. */
import { handOnLead, leadLeftAloft, secondProofLeftOut, untugged } from '../mistakes'
import { nextPoleDeclined } from '../extras'
import type { RecordedRun } from '../recordedRun'

const pack = 'concrete-rod'

export const ironstoneParkRuns: readonly RecordedRun[] = [
  {
    name: 'clean',
    seed: 2,
    pack,
    about: 'Both poles, each proved, earthed and declared safe by itself; nothing livened.',
  },
  {
    name: 'clean-livened',
    seed: 1,
    pack,
    about: 'The tracked stick is found; blade B falls shut under the hand; response, fresh gear, finished.',
  },
  { name: 'untugged', seed: 2, pack, about: 'Nobody tugs at a clamp.', conduct: untugged },
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
  { name: 'clean-multi-ground', seed: 2, pack: 'multi-ground', about: 'Both poles by other rules.' },
  { name: 'clean-two-earths', seed: 2, pack: 'two-earths', about: 'Both poles by other rules again.' },
  {
    name: 'next-pole-declined',
    seed: 2,
    pack,
    about: 'The first pole; the next is left for another day.',
    conduct: nextPoleDeclined,
  },
]
