/**
 * Every recorded run of Marrow Bend. Seeds with a fixed draw in the scenario: 1 the holed boot, the stick out of test and
 * the livening at the first touch of a conductor; 2 nothing wrong and no livening; 3 nothing wrong with the gear, blade B of
 * switch 27 hangs.
 */
import { outlineAround } from '../../../../src/engine/demonstration/layout'
import {
  instead,
  isLastTug,
  isStandingBack,
  isWith,
  leavingOut,
  once,
  overlooking,
  reachingFor,
  together,
  unheeding,
  withoutCover,
  withoutLookingAtBlades,
  withoutSwitching,
} from '../deviations'
import type { RecordedRun } from '../recordedRun'

const pack = 'concrete-rod'
const besideLead = { x: 1.5, y: -1 }

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
    conduct: () => leavingOut((intent, job) => intent.do === 'lower' && isWith(job, intent, 'earth-lead')),
  },
  {
    name: 'barrier-too-small',
    seed: 2,
    pack,
    about: 'The barrier runs three metres from rod, pole and anchor.',
    conduct: () =>
      instead(
        (intent) => intent.do === 'set-barrier',
        (intent, job) => [{ ...intent, values: { outline: outlineAround(job.layout.electrodes, 3) } }],
      ),
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
    conduct: () =>
      instead(once(isStandingBack), (intent, job) => [
        { ...intent, values: { to: besideLead } },
        { who: job.crew.gw, do: 'hold-lead', with: job.kit.get('lead')! },
        intent,
      ]),
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

function conductorEndFirst() {
  const isEarthEnd = (act: string): boolean => act === 'clamp-earth-end' || act === 'lay-lead'
  return together(
    leavingOut((intent) => isEarthEnd(intent.do)),
    instead(once(isLastTug), (intent, job) => {
      const { gw } = job.crew
      const [lead, rod] = [job.kit.get('lead')!, job.kit.get('rod')!]
      return [
        intent,
        { who: gw, do: 'walk', values: { to: job.layout.rod } },
        { who: gw, do: 'clamp-earth-end', with: lead, on: `rod/${rod}`, values: { turns: 6 } },
        { who: gw, do: 'lay-lead', with: lead, values: { route: 'clear-of-lv' } },
        { who: gw, do: 'walk', values: { to: job.layout.lookout } },
      ]
    }),
  )
}

function handOnLead() {
  return together(
    instead(once(isStandingBack), (intent) => [{ ...intent, values: { to: besideLead } }]),
    instead(
      once((intent) => intent.do === 'clamp'),
      (intent, job) => [{ who: job.crew.gw, do: 'hold-lead', with: job.kit.get('lead')! }, intent],
    ),
    instead(once(isLastTug), (intent, job) => [
      intent,
      { who: job.crew.gw, do: 'walk', values: { to: job.layout.lookout } },
    ]),
  )
}
