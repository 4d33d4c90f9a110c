/** The recorded runs of Gannetry Spit. Seeds with a fixed draw: 1 a cut in the upper of a boot, and blade C falls shut when the last clamp is on; 2 nothing; 3 lightning far away when the last clamp is on. */
import { withoutCover } from '../deviations'
import { handOffLead, smallBarrier, untugged } from '../mistakes'
import { leaningOnPole } from '../shortcuts'
import { measured } from '../extras'
import type { RecordedRun } from '../recordedRun'

const pack = 'concrete-rod'

export const gannetrySpitRuns: readonly RecordedRun[] = [
  {
    name: 'clean',
    seed: 2,
    pack,
    about: 'Own rod beside the terminal that nobody has measured; nothing livened.',
  },
  {
    name: 'clean-livened',
    seed: 1,
    pack,
    about: 'The cut boot is found; blade C falls shut when the last clamp is on; response, fresh gear, finished.',
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
    name: 'no-cover',
    seed: 2,
    pack,
    about: 'The cover stays on the truck: bare concrete at the thigh.',
    conduct: () => withoutCover,
  },
  {
    name: 'barrier-too-small',
    seed: 2,
    pack,
    about: 'The barrier runs two metres from rod, pole and anchor.',
    conduct: () => smallBarrier(2),
  },
  {
    name: 'far-stroke',
    seed: 3,
    pack,
    about: 'The rod is measured; lightning strikes the line far away when the last clamp is on; response, finished.',
    conduct: () => measured('ET-2'),
  },
  {
    name: 'hand-on-pole',
    seed: 2,
    pack,
    about: 'The ground worker leans a hand on the pole in street shoes while it is worked on.',
    conduct: leaningOnPole,
  },
]
