/** The recorded runs of Rustmesa Junction. Seeds with a fixed draw: 1 a pin hole in a glove, and blade B falls shut at the first touch; 2 nothing; 3 a crack in the liner of the bucket. */
import { leadLeftAloft, oneConductorLeft, unbrushed, untugged } from '../mistakes'
import { neutralByHand, truckUnbonded } from '../shortcuts'
import { overlooking, together } from '../deviations'
import type { RecordedRun } from '../recordedRun'

const pack = 'multi-ground'

export const rustmesaJunctionRuns: readonly RecordedRun[] = [
  {
    name: 'clean',
    seed: 2,
    pack,
    about: 'The neutral takes the first clamp; one zone at the work position.',
  },
  {
    name: 'clean-livened',
    seed: 1,
    pack,
    about: 'The pin hole is found; blade B falls shut under the hand; response, fresh gear, finished.',
  },
  {
    name: 'unbrushed',
    seed: 2,
    pack,
    about: 'Nobody cleans the conductors where the clamps go on.',
    conduct: unbrushed,
  },
  {
    name: 'untugged',
    seed: 2,
    pack,
    about: 'Nobody tugs at a clamp.',
    conduct: untugged,
  },
  {
    name: 'c-unearthed',
    seed: 2,
    pack,
    about: 'Conductor C is neither tested nor earthed.',
    conduct: () => oneConductorLeft('conductor-c'),
  },
  {
    name: 'lead-left-aloft',
    seed: 2,
    pack,
    about: 'The lead stays at the pole top and the permit goes back.',
    conduct: leadLeftAloft,
  },
  {
    name: 'neutral-by-hand',
    seed: 2,
    pack,
    about: 'The clamp for C goes on the neutral with bare hands, and off again.',
    conduct: () => neutralByHand('conductor-c', 'neutral'),
  },
  {
    name: 'cracked-liner',
    seed: 3,
    pack,
    about: 'The cracked liner is passed, and the truck has no earth while the bucket is up.',
    conduct: () => together(overlooking('BB-1'), truckUnbonded()),
  },
  { name: 'by-two-earths', seed: 2, pack: 'two-earths', about: 'From the bucket by other rules.' },
  {
    name: 'graded-by-concrete-rod',
    seed: 2,
    pack: 'concrete-rod',
    worksBy: 'multi-ground',
    about: 'The clean run from the bucket, before an employer who wants the truck farther off.',
  },
]
