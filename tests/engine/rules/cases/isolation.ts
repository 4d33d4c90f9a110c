/** Control room, switches, permit. */
import type { Scenario } from '../../../../src/engine'
import { add, after, again, all, before, change, drop, none, swapped } from '../../../support/rules/edits'
import type { RuleCases } from '../../../support/rules/ruleCase'

const values = (it: Record<string, number | string>) => ({ values: it })

/** Jumpers between the worked pole and the crossing, and people to take them out. */
const withJumpers = (scenario: Scenario): Scenario => ({
  ...scenario,
  sectionJumpers: [{ id: 'jumpers-9', number: 'P118', along: scenario.section.crossingAlong / 2 }],
  control: { ...scenario.control, takesJumpersOut: true },
})
const jumpersOut = add(
  { who: 'pic', do: 'ask-jumpers-out', on: 'jumpers-9', values: { message: 'jumpers-out-tied-back' } },
  'pic ask-reclose-block f1',
)
const jumpersIn = (anchor: string) => add({ who: 'pic', do: 'ask-jumpers-in', on: 'jumpers-9' }, anchor)

export const isolation: RuleCases = {
  'reclose-blocked': {
    breaks: drop('pic ask-reclose-block f2'),
    near: after('pic ask-reclose-block f2', 'pic hold-briefing'),
  },
  // A circuit that is out, guarded off or cut off by jumpers needs no reclose off.
  'crossing-held': {
    breaks: drop('pic ask-reclose-block fx'),
    near: { edit: all(jumpersOut, drop('pic ask-reclose-block fx', 'pic ask-feeder-out')), place: withJumpers },
  },
  'step-received': {
    breaks: change('so receive-step switch-27 #1', values({ to: 'closed' })),
    near: swapped('so receive-step switch-27', 'so read-label switch-27'),
  },
  'reclose-in-list-order': {
    breaks: swapped('pic ask-reclose-block f1', 'pic ask-reclose-block f2'),
    near: after('pic ask-reclose-block fx', 'pic match-pole'),
  },
  'step-read-back': {
    breaks: change('so receive-step switch-27', values({ readBack: '31' })),
    near: change('so receive-step switch-27', values({ to: 'closed' })),
  },
  'label-read': {
    breaks: drop('so read-label switch-27 #1'),
    near: after('so read-label switch-27', 'so step-on-mat'),
  },
  'switching-gloves': {
    breaks: drop('so take G-31', 'so wear G-31', 'so take-off G-31'),
    near: after('so wear G-31', 'so step-on-mat'),
  },
  'on-the-mat': {
    breaks: drop('so take M-1', 'so step-on-mat #1', 'so step-off-mat #1'),
    near: before('so step-on-mat', 'so wear G-31'),
  },
  'dressed-in-order': {
    breaks: swapped('so wear G-31', 'so step-on-mat'),
    near: drop('so take G-31', 'so wear G-31', 'so take-off G-31'),
  },
  'handle-open': { breaks: drop('so open-switch'), near: drop('so lock switch-27') },
  'blades-looked': {
    breaks: drop('so look switch-27/B #1'),
    near: swapped('so look switch-27/A', 'so look switch-27/B'),
  },
  'blades-across': {
    breaks: swapped('so look switch-27/A', 'so look switch-27/B'),
    near: swapped('so look switch-27/A', 'so look switch-27/C'),
  },
  'blade-closed': { breaks: { edit: none, hung: ['B'] }, near: drop('so look switch-27/B #1') },
  locked: { breaks: drop('so tag switch-31 T-82'), near: swapped('so lock switch-31 K-72', 'so tag switch-31 T-82') },
  'device-in-order': { breaks: swapped('so lock switch-27', 'so tag switch-27'), near: drop('so tag switch-27') },
  'mat-to-the-end': {
    breaks: swapped('so tag switch-27', 'so step-off-mat'),
    near: swapped('so look switch-27/A', 'so look switch-27/C'),
  },
  'mat-left': {
    breaks: swapped('so step-off-mat', 'so walk switch-31'),
    near: drop('so take M-1', 'so step-on-mat #1', 'so step-off-mat #1'),
  },
  'step-at-device': {
    breaks: swapped('so walk switch-27', 'so receive-step switch-27'),
    near: again('so receive-step switch-27'),
  },
  'step-for-each': {
    breaks: drop('so receive-step switch-31'),
    near: swapped('so receive-step switch-31', 'so read-label switch-31'),
  },
  'reported-on-site': { breaks: before('so report-isolated', 'so walk truck'), near: again('so report-isolated') },
  'local-control': { breaks: drop('so set-local'), near: swapped('so set-local', 'so lock switch-31') },
  'isolation-reported': { breaks: drop('so report-isolated'), near: again('so report-isolated') },
  'isolation-earthed': { breaks: { edit: none, pack: { permitAfter: 'earthsAtIsolationPoints' } }, near: none },
  'permit-held': { breaks: drop('pic take-permit'), near: after('pic take-permit', 'gw set-barrier') },
  'permit-read-back': {
    breaks: change('pic take-permit', values({ readBack: 'P171 27 31' })),
    near: again('pic show-boundary'),
  },
  'boundary-before-boots': {
    breaks: after('pic show-boundary', 'pic wear BT-41'),
    near: swapped('pic wear BT-41', 'pw wear BT-42'),
  },
  'boundary-shown': { breaks: drop('pic show-boundary'), near: before('pic show-boundary', 'pw inspect-pole') },
  'closed-looked': {
    breaks: drop('so look switch-27/B #2'),
    near: drop('so close-switch', 'so look switch-27/A #2', 'so look switch-27/B #2', 'so look switch-27/C #2'),
  },
  'unlocked-in-order': {
    breaks: swapped('so untag switch-27', 'so unlock switch-27'),
    near: drop('so untag switch-27'),
  },
  'closed-in-order': {
    breaks: swapped('so unlock switch-27', 'so step-on-mat #2'),
    near: drop('so step-on-mat #2', 'so step-off-mat #2'),
  },
  'closed-again': { breaks: drop('so close-switch'), near: drop('so look switch-27/A #2') },
  'reclose-after-closing': {
    breaks: before('pic ask-reclose-on f1', 'so walk switch-27 #2'),
    near: drop('so close-switch'),
  },
  'reclose-on-list-order': {
    breaks: swapped('pic ask-reclose-on f1', 'pic ask-reclose-on f2'),
    near: drop('pic ask-reclose-on f1'),
  },
  'reclose-stays': {
    breaks: before('pic ask-reclose-on fx', 'pic confirm-complete'),
    near: after('pic ask-reclose-on fx', 'pic return-permit'),
  },
  'step-to-restore': {
    breaks: drop('so receive-step switch-31 #2'),
    near: after('so read-label switch-31 #2', 'so untag switch-31'),
  },
  'label-to-restore': {
    breaks: drop('so read-label switch-31 #2'),
    near: swapped('so receive-step switch-31 #2', 'so read-label switch-31 #2'),
  },
  restored: { breaks: drop('so set-remote'), near: all(drop('so set-local', 'so set-remote')) },
  'jumpers-back': {
    breaks: { edit: jumpersOut, place: withJumpers },
    near: { edit: all(jumpersOut, jumpersIn('pic close-job')), place: withJumpers },
  },
  'crossing-stays': {
    breaks: { edit: all(jumpersOut, jumpersIn('pic head-count')), place: withJumpers },
    near: { edit: all(jumpersOut, jumpersIn('pic ask-reclose-on f1')), place: withJumpers },
  },
  'reclose-back': {
    breaks: drop('pic ask-reclose-on f2'),
    near: swapped('pic ask-reclose-on f1', 'pic ask-reclose-on f2'),
  },
  'permit-before-unlock': {
    breaks: all(
      before('so walk switch-31 #2', 'pic confirm-complete'),
      before('so untag switch-31', 'pic return-permit'),
    ),
    near: before('so walk switch-31 #2', 'pic confirm-complete'),
  },
}
