/** What changes under a job, and what is said to the control room about it. */
import type { Scenario } from '../../../../src/engine'
import { add, all, drop, none, wait } from '../../../support/rules/edits'
import type { RuleCases } from '../../../support/rules/ruleCase'

const thunderFrom =
  (at: number) =>
  (scenario: Scenario): Scenario => ({ ...scenario, weatherChanges: [{ at, thunder: true }] })

/** A roof's inverter on the low-voltage wires. */
const withOwnSource = (scenario: Scenario): Scenario => ({
  ...scenario,
  livenings: [...scenario.livenings, { id: 'roof-feeds', kind: 'low-voltage-fed', source: 'roof' }],
})

/** The drive of switch 31 has a supply of its own. */
const withDrive = (scenario: Scenario): Scenario => ({
  ...scenario,
  switches: scenario.switches.map((it) => (it.id === 'switch-31' ? { ...it, motorSupply: true } : it)),
})

/** Permits have a number, tags are written. */
const withNumbers = (scenario: Scenario): Scenario => ({
  ...scenario,
  control: { ...scenario.control, permit: { number: 'P-7', until: 61_200 } },
})

/** Somebody who may take the charge, beside who has it. */
const withSecond = (scenario: Scenario): Scenario => ({
  ...scenario,
  crew: [
    ...scenario.crew,
    { id: 'pc', role: 'person-in-charge', weight: 50, bootSize: 43, startsAt: { x: -14, y: 9 } },
  ],
})
const handOver = add(
  { who: 'pic', do: 'hand-over-charge', on: 'charge', values: { next: 'pc', papers: ['register'] } },
  'pic check-crew',
)
const walked = all(handOver, add({ who: 'pc', do: 'walk-job', on: 'charge' }, 'pic hand-over-charge'))
const secondAfter = wait(400, 'pic hand-over-charge')
const reported = all(
  walked,
  add({ who: 'pc', do: 'report-charge', on: 'charge' }, 'pic check-crew'),
  wait(700, 'pc report-charge'),
)

const crew = ['pic', 'pw', 'gw', 'so']
const everybody = (verb: string, anchor: string) => all(...crew.map((who) => add({ who, do: verb }, anchor)))
const breakTaken = all(
  everybody('come-back', 'pw walk pole-foot'),
  everybody('leave-site', 'pic come-back'),
  wait(400, 'pic come-back'),
)
const lookedAgain = add({ who: 'pic', do: 'look-over-again' }, 'pw walk pole-foot')

const stopped = all(
  add({ who: 'pic', do: 'start-again' }, 'pw untie'),
  add({ who: 'pic', do: 'stop-job' }, 'pic start-again'),
)
const driveOff = add({ who: 'so', do: 'motor-supply-off', on: 'switch-31' }, 'so lock switch-31')
const drive = all(
  add({ who: 'so', do: 'motor-supply-on', on: 'switch-31' }, 'pic confirm-complete'),
  add({ who: 'so', do: 'walk', on: 'switch-31' }, 'so motor-supply-on'),
  driveOff,
)
const report = (message: string, anchor: string) =>
  add({ who: 'so', do: 'report-step', on: 'switch-27', values: { message } }, anchor)
const writeTag = (wording: string) =>
  add({ who: 'so', do: 'write-tag', on: 'T-81', values: { wording } }, 'so take K-71')

const groundWorkerUp = all(
  add({ who: 'gw', do: 'climb', values: { to: 'below-lv' } }, 'pic head-count'),
  add({ who: 'gw', do: 'walk', on: 'pole-foot' }, 'gw climb'),
)

export const changes: RuleCases = {
  'permit-said-back': {
    breaks: all(
      add({ who: 'pic', do: 'read-weather' }, 'pic take-permit'),
      add({ who: 'pic', do: 'hear-permit' }, 'pic read-weather #2'),
    ),
    near: add({ who: 'pic', do: 'hear-permit' }, 'pic take-permit'),
  },
  'step-said-back': {
    breaks: add({ who: 'so', do: 'hear-step', on: 'switch-27' }, 'so read-label switch-27'),
    near: add({ who: 'so', do: 'hear-step', on: 'switch-27' }, 'so receive-step switch-27'),
  },
  'step-reported-true': { breaks: report('27', 'so open-switch'), near: report('27', 'so look switch-27/A') },
  'step-reported-right': {
    breaks: report('31', 'so look switch-27/A'),
    near: report('27', 'so look switch-27/A'),
  },
  'by-climber': { breaks: groundWorkerUp, near: drop('gw watch') },
  'own-sources-held': { breaks: { edit: none, place: withOwnSource }, near: none },
  'supply-stays': {
    breaks: { edit: drive, place: withDrive },
    near: {
      edit: all(driveOff, add({ who: 'so', do: 'motor-supply-on', on: 'switch-31' }, 'so set-remote')),
      place: withDrive,
    },
  },
  'tag-worded': {
    breaks: { edit: writeTag('name-only'), place: withNumbers },
    near: { edit: writeTag('name-and-time'), place: withNumbers },
  },
  'thunder-heeded': {
    breaks: { edit: none, place: thunderFrom(5000) },
    // the pole worker stands on the ground again
    near: { edit: none, place: thunderFrom(8800) },
  },
  'start-after-weather': {
    breaks: stopped,
    near: all(stopped, add({ who: 'pic', do: 'read-weather' }, 'pic start-again')),
  },
  'looked-over-after-break': { breaks: breakTaken, near: all(breakTaken, lookedAgain, wait(300, 'pw walk pole-foot')) },
  'charge-walked': {
    breaks: { edit: handOver, place: withSecond },
    near: { edit: all(walked, secondAfter), place: withSecond },
  },
  'charge-reported': {
    breaks: { edit: all(walked, secondAfter), place: withSecond },
    near: { edit: reported, place: withSecond },
  },
  'main-earth-stays': {
    breaks: { of: 'two-earths', edit: drop('pic return-permit') },
    near: { of: 'two-earths', edit: none },
  },
  'closed-onto-earth': {
    breaks: { of: 'two-earths', edit: drop('so clear-isolation-earth') },
    near: { of: 'two-earths', edit: none },
  },
  'indication-judged': {
    breaks: add(
      { who: 'pw', do: 'judge-indication', on: 'conductor-a', values: { takenFor: 'live' } },
      'pw say-dead conductor-a',
    ),
    near: add(
      { who: 'pw', do: 'judge-indication', on: 'conductor-a', values: { takenFor: 'live' } },
      'pw test conductor-a',
    ),
  },
}
