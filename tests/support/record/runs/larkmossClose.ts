/** The recorded runs of Larkmoss Close. Seeds with a fixed draw: 1 a nail hole in a boot, and blade A falls shut while the ground worker is inside; 2 nothing. */
import { handOffLead, noBarrier, smallBarrier, untugged } from '../mistakes'
import { moreThanAsked } from '../extras'
import type { RecordedRun } from '../recordedRun'

const pack = 'concrete-rod'

export const larkmossCloseRuns: readonly RecordedRun[] = [
  {
    name: 'clean',
    seed: 2,
    pack,
    about: 'Barrier round rod, pole and anchor; nobody at the fence.',
  },
  {
    name: 'clean-livened',
    seed: 1,
    pack,
    about: 'The holed boot is found; blade A falls shut; response, fresh gear, finished.',
  },
  {
    name: 'untugged',
    seed: 2,
    pack,
    about: 'Nobody tugs at a clamp.',
    conduct: untugged,
  },
  {
    name: 'hand-off-lead',
    seed: 2,
    pack,
    about: 'A hand on the lead, and off it before anything is clamped.',
    conduct: handOffLead,
  },
  {
    name: 'barrier-too-small',
    seed: 2,
    pack,
    about: 'The barrier runs three metres from rod, pole and anchor.',
    conduct: () => smallBarrier(3),
  },
  {
    name: 'no-barrier',
    seed: 2,
    pack,
    about: 'No barrier at all: the school comes out.',
    conduct: noBarrier,
  },
  {
    name: 'more-than-asked',
    seed: 2,
    pack,
    about: 'Asked how it stands, wire against wire tested, a loose clamp screwed on, a platform laid.',
    conduct: () => moreThanAsked('IP-1'),
  },
]
