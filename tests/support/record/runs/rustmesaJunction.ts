/** The recorded runs of Rustmesa Junction. Seeds with a fixed draw: 1 a pin hole in a glove, and blade B falls shut at the first touch; 2 nothing. */
import { leadLeftAloft, oneConductorLeft, unbrushed, untugged } from '../mistakes'
import { bondFromLineTo, byHand } from '../shortcuts'
import { together } from '../deviations'
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
    name: 'bond-to-neutral',
    seed: 2,
    pack,
    about: 'A clamped with the hand; the bond goes from the line to the neutral, a hand on each.',
    conduct: () => together(byHand('conductor-a'), bondFromLineTo('neutral')),
  },
]
