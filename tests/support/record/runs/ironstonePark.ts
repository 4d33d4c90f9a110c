/** The recorded runs of Ironstone Park. Seeds with a fixed draw: 1 a stick with a carbon track, and blade B falls shut at the first touch; 2 nothing. */
import { leavingOut } from '../deviations'
import { leadLeftAloft, secondProofLeftOut, untugged } from '../mistakes'
import type { RecordedRun } from '../recordedRun'

const pack = 'concrete-rod'
const fitted = ['clamp', 'tug', 'unclamp', 'brush']

export const ironstoneParkRuns: readonly RecordedRun[] = [
  { name: 'clean', seed: 2, pack, about: 'Both poles, each with earths of its own; nothing livened.' },
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
    name: 'earths-a-pole-away',
    seed: 2,
    pack,
    about: 'Work goes on at the next pole with the earths of the first one only.',
    conduct: () => leavingOut((intent) => fitted.includes(intent.do) && (intent.on ?? '').endsWith('@next')),
  },
  {
    name: 'lead-left-aloft',
    seed: 2,
    pack,
    about: 'The lead stays at the pole top and the permit goes back.',
    conduct: leadLeftAloft,
  },
]
