/**
 * Every recorded run of Marrow Bend. Seeds with a fixed draw in the scenario: 1 the holed boot, the stick out of test and
 * the livening at the first touch of a conductor; 2 nothing wrong and no livening; 3 nothing wrong with the gear, blade B of
 * switch 27 hangs.
 */
import {
  overlooking,
  reachingFor,
  together,
  unheeding,
  withoutCover,
  withoutLookingAtBlades,
  withoutSwitching,
} from '../deviations'
import { conductorEndFirst, handOffLead, handOnLead, leadLeftAloft, smallBarrier } from '../mistakes'
import type { RecordedRun } from '../recordedRun'

const pack = 'concrete-rod'

export const marrowBendRuns: readonly RecordedRun[] = [
  { name: 'clean', seed: 2, pack, about: 'The whole job, every step in its order, nothing livened.' },
  {
    name: 'clean-livened',
    seed: 1,
    pack,
    about:
      'The holed boot and the stick out of test are found; the line comes alive; response, fresh gear, job finished.',
    conduct: () => reachingFor('S-12'),
  },
  {
    name: 'no-cover-holed-boots',
    seed: 1,
    pack,
    about: 'The nail hole is passed and no cover goes on; the line comes alive under the left hand.',
    conduct: () => together(overlooking('BT-42'), withoutCover),
  },
  {
    name: 'conductor-end-first',
    seed: 2,
    pack,
    about: 'The lead goes on the conductors before its earth end is on the rod.',
    conduct: conductorEndFirst,
  },
  {
    name: 'lead-left-aloft',
    seed: 2,
    pack,
    about: 'The lead stays hanging at the pole top and the permit goes back.',
    conduct: leadLeftAloft,
  },
  {
    name: 'barrier-too-small',
    seed: 2,
    pack,
    about: 'The barrier runs three metres from rod, pole and anchor.',
    conduct: () => smallBarrier(3),
  },
  {
    name: 'switching-skipped',
    seed: 2,
    pack,
    about: 'No switch is opened; the detector indicates and is not heeded; bare thigh at the pole.',
    conduct: () => together(withoutSwitching, unheeding, withoutCover),
  },
  {
    name: 'blade-b-left-closed',
    seed: 3,
    pack,
    about: 'Nobody looks at the blades and B hangs; the detector indicates and is not heeded; bare thigh at the pole.',
    conduct: () => together(withoutLookingAtBlades, unheeding, withoutCover),
  },
  {
    name: 'overlap-hand-on-lead',
    seed: 2,
    pack,
    about: 'The ground worker holds the lead while the pole worker clamps; nothing else is wrong.',
    conduct: handOnLead,
  },
  {
    name: 'overlap-apart',
    seed: 2,
    pack,
    about: 'The same two acts, one after the other.',
    conduct: handOffLead,
  },
  {
    name: 'clean-multi-ground',
    seed: 2,
    pack: 'multi-ground',
    about: 'The whole job by other rules: one zone, bonded in rubber gloves, and no cover.',
  },
  {
    name: 'clean-two-earths',
    seed: 2,
    pack: 'two-earths',
    about: 'The whole job by other rules: a main earth at the switch before the permit, work earths at the pole.',
  },
]
