/** The recorded runs of Coldmere Col. Seeds with a fixed draw: 1 a stick with a wet core, and blade B closes through the coil at the first touch; 2 nothing; 3 a handline with a wire in it. */
import { handOffLead, handOnLead, oneConductorLeft, unbrushed } from '../mistakes'
import { overlooking, together } from '../deviations'
import { sentUpLate } from '../shortcuts'
import type { RecordedRun } from '../recordedRun'

const pack = 'concrete-rod'

export const coldmereColRuns: readonly RecordedRun[] = [
  {
    name: 'clean',
    seed: 2,
    pack,
    about: 'Earths at the work position; a fault would stay on for minutes.',
  },
  {
    name: 'clean-livened',
    seed: 1,
    pack,
    about: 'The wet stick is found; B comes alive through the coil; response, fresh gear, finished.',
  },
  {
    name: 'unbrushed',
    seed: 2,
    pack,
    about: 'Nobody cleans the conductors where the clamps go on.',
    conduct: unbrushed,
  },
  {
    name: 'hand-off-lead',
    seed: 2,
    pack,
    about: 'A hand on the lead, and off it before anything is clamped.',
    conduct: handOffLead,
  },
  {
    name: 'c-unearthed',
    seed: 2,
    pack,
    about: 'Conductor C is neither tested nor earthed.',
    conduct: () => oneConductorLeft('conductor-c'),
  },
  {
    name: 'hand-on-lead',
    seed: 2,
    pack,
    about: 'The ground worker holds the lead while the pole worker clamps.',
    conduct: handOnLead,
  },
  {
    name: 'wire-in-rope',
    seed: 3,
    pack,
    about: 'The handline with a wire in its core is passed; the tools go up by it while the arm is bonded.',
    conduct: () => together(overlooking('Z-211'), sentUpLate('TB-1')),
  },
]
