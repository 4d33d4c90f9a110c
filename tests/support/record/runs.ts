/** Every recorded run of Marrow Bend: what is drawn for it, and what it does differently from the clean one. */
import type { Scenario } from '../../../src/engine'
import { livenedJob, wholeJob } from './job'
import type { Recorder } from './recorder'

/**
 * Seeds with a fixed draw in the scenario: 1 the holed boot, the stick out of test and the livening at the first touch
 * of a conductor; 2 nothing wrong and no livening; 3 nothing wrong with the gear, blade B of switch 27 hangs.
 */
export interface RecordedRun {
  readonly name: string
  readonly seed: 1 | 2 | 3
  /** Whose rules it is graded by; left out: those of the example that all others are recorded under. */
  readonly pack?: string
  /** In one sentence, for whoever reviews the recordings. */
  readonly about: string
  play(scenario: Scenario): Recorder
}

const heldBoots = { pic: 'BT-41', pw: 'BT-45', gw: 'BT-43' }

export const recordedRuns: readonly RecordedRun[] = [
  {
    name: 'clean',
    seed: 2,
    about: 'The whole job, every step in its order, nothing livened.',
    play: (scenario) => wholeJob(scenario),
  },
  {
    name: 'clean-livened',
    seed: 1,
    about:
      'The holed boot and the stick out of test are found; the line comes alive; response, fresh gear, job finished.',
    play: (scenario) => livenedJob(scenario, { boots: heldBoots, rejected: ['BT-42', 'S-12'] }),
  },
  {
    name: 'no-cover-holed-boots',
    seed: 1,
    about: 'The nail hole is passed and no cover goes on; the line comes alive under the left hand.',
    play: (scenario) => livenedJob(scenario, { isCovered: false }),
  },
  {
    name: 'conductor-end-first',
    seed: 2,
    about: 'The lead goes on the conductors before its earth end is on the rod.',
    play: (scenario) => wholeJob(scenario, { isConductorEndFirst: true }),
  },
  {
    name: 'lead-left-aloft',
    seed: 2,
    about: 'The lead stays hanging at the pole top and the permit goes back.',
    play: (scenario) => wholeJob(scenario, { leavesLeadAloft: true }),
  },
  {
    name: 'barrier-too-small',
    seed: 2,
    about: 'The barrier runs three metres from rod, pole and anchor.',
    play: (scenario) => wholeJob(scenario, { barrier: 3 }),
  },
  {
    name: 'switching-skipped',
    seed: 2,
    about: 'No switch is opened; the detector indicates and is not heeded; bare thigh at the pole.',
    play: (scenario) => wholeJob(scenario, { isSwitched: false, isCovered: false }),
  },
  {
    name: 'blade-b-left-closed',
    seed: 3,
    about: 'Nobody looks at the blades and B hangs; the detector indicates and is not heeded; bare thigh at the pole.',
    play: (scenario) => wholeJob(scenario, { looksAtBlades: false, isCovered: false }),
  },
  {
    name: 'overlap-hand-on-lead',
    seed: 2,
    about: 'The ground worker holds the lead while the pole worker clamps; nothing else is wrong.',
    play: (scenario) => wholeJob(scenario, { holdsLead: 'while' }),
  },
  {
    name: 'overlap-apart',
    seed: 2,
    about: 'The same two acts, one after the other.',
    play: (scenario) => wholeJob(scenario, { holdsLead: 'before' }),
  },
  {
    name: 'clean-multi-ground',
    seed: 2,
    pack: 'multi-ground',
    about: 'The whole job by other rules: one zone, bonded in rubber gloves, and no cover.',
    play: (scenario) => wholeJob(scenario, { isCovered: false, isRubberAloft: true }),
  },
  {
    name: 'clean-two-earths',
    seed: 2,
    pack: 'two-earths',
    about: 'The whole job by other rules: a main earth at the switch before the permit, work earths at the pole.',
    play: (scenario) => wholeJob(scenario, { mainEarth: 'E-21' }),
  },
]
