/** The recorded runs of Kestrel Flat. Seeds with a fixed draw: 1 the clamp jaws of a lead are dull with oxide and blade B falls shut at the first touch; 2 nothing; 3 a joint of a stick is loose. */
import { reachingFor, together } from '../deviations'
import { conductorEndFirst, oneConductorLeft, secondProofLeftOut, unbrushed } from '../mistakes'
import { breakTaken, byHand, saying } from '../shortcuts'
import type { RecordedRun } from '../recordedRun'

const pack = 'concrete-rod'

export const kestrelFlatRuns: readonly RecordedRun[] = [
  {
    name: 'clean',
    seed: 2,
    pack,
    about: 'The whole job on a first pole, nothing livened.',
  },
  {
    name: 'clean-livened',
    seed: 1,
    pack,
    about:
      'The dull jaws are seen and the lead is changed; blade B falls shut under the hand; response, fresh gear, finished.',
    conduct: () => reachingFor('E-37'),
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
    name: 'conductor-end-first',
    seed: 2,
    pack,
    about: 'The lead goes on the conductors before its earth end is on the rod.',
    conduct: conductorEndFirst,
  },
  {
    name: 'c-unearthed',
    seed: 1,
    pack,
    about: 'Conductor C is neither tested nor earthed; blade B falls shut under the hand.',
    conduct: () => oneConductorLeft('conductor-c'),
  },
  {
    name: 'break-looked-over',
    seed: 2,
    pack,
    about: 'Everybody leaves for a break; the barrier is gone when they are back, and set again.',
    conduct: () => breakTaken('Q-32'),
  },
  {
    name: 'break-barrier-gone',
    seed: 2,
    pack,
    about: 'The same, and nobody looks what has become of the place.',
    conduct: () => breakTaken(),
  },
  {
    name: 'by-hand',
    seed: 2,
    pack,
    about: 'Thin earths planned, nothing against a livening said, and B clamped with the hand.',
    conduct: () =>
      together(
        saying('choose-earths', { area: 16 }),
        saying('answer-livening', { control: 'nothing' }),
        byHand('conductor-b'),
      ),
  },
]
