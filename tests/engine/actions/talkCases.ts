/** Talk with the control room and what is done at a switch beside its handle: rows of refusals.test.ts and applies.test.ts. */
import type { Site } from '../../../src/engine'
import type { ControlRoom, ScenarioSwitch } from '../../../src/engine/site/scenario'
import { before, done } from '../../support/cleanStages'
import { changed, inScenario } from '../hazard/sites'
import type { Applied, Refused } from './rows'

const start = (): Site => before('read-order')
const atHandle = (): Site => before('open-switch')
const last = (site: Site): string => site.evidence.at(-1)?.says ?? ''
const step = { on: 'switch-27' }

/** The control room of the site answers in this way too. */
export const answering = (site: Site, control: Partial<ControlRoom>): Site =>
  changed(
    site,
    inScenario((scenario) => ({ control: { ...scenario.control, ...control } })),
  )

/** One switch of the site is made so. */
export const withSwitch = (site: Site, id: string, change: Partial<ScenarioSwitch>): Site =>
  changed(
    site,
    inScenario(({ switches }) => ({ switches: switches.map((it) => (it.id === id ? { ...it, ...change } : it)) })),
  )

const permit = { number: '4711', until: 54_000 }
const guarding = (guardsCrossing: boolean): Site => answering(start(), { guardsCrossing })
const out = (): Site => done(answering(start(), { takesCrossingOut: true }), 'pic', 'ask-feeder-out', { on: 'fx' })
const withDrive = (): Site => withSwitch(atHandle(), 'switch-27', { remote: true, motorSupply: true })
const driveOff = (): Site => done(withDrive(), 'so', 'motor-supply-off', step)
const tagged = (): Site => answering(before('lock', step), { permit })

export const talkRefusals: readonly Refused[] = [
  ['hear-step', 'already-so', () => done(start(), 'so', 'hear-step', step), 'so', step],
  ['report-step', 'not-a-choice', start, 'so', { ...step, values: { message: 'the red one' } }],
  ['hear-permit', 'already-so', () => before('set-barrier'), 'pic'],
  ['ask-how-it-stands', 'unknown-thing', start, 'pic', { on: 'conductor-a' }],
  ['ask-feeder-in', 'already-so', () => answering(start(), { takesCrossingOut: true }), 'pic', { on: 'fx' }],
  ['ask-feeder-in', 'unknown-thing', () => answering(start(), { takesCrossingOut: false }), 'pic', { on: 'fx' }],
  ['ask-crossing-guard', 'unknown-thing', () => guarding(true), 'pic', { on: 'f1' }],
  [
    'ask-crossing-guard',
    'already-so',
    () => done(guarding(true), 'pic', 'ask-crossing-guard', { on: 'fx' }),
    'pic',
    { on: 'fx' },
  ],
  ['motor-supply-off', 'not-at-switch', () => withSwitch(start(), 'switch-27', { motorSupply: true }), 'so', step],
  ['motor-supply-off', 'already-so', driveOff, 'so', step],
  ['motor-supply-off', 'unknown-thing', atHandle, 'so', step],
  ['motor-supply-on', 'already-so', withDrive, 'so', step],
  ['check-handle-earth', 'not-at-switch', () => withSwitch(start(), 'switch-27', { handleEarth: 10 }), 'so', step],
  ['write-tag', 'no-permit', tagged, 'so', { on: 'T-81', values: { wording: 'permit-name-and-time' } }],
  ['write-tag', 'unknown-thing', atHandle, 'so', { on: 'T-81', values: { wording: 'name-only' } }],
]

export const talkCases: readonly Applied[] = [
  ['hear-step', start, 'so', step, (s) => s.paper.heard, { switch: 'switch-27', to: 'open', as: '27' }],
  [
    'report-step',
    start,
    'so',
    { ...step, values: { message: '27' } },
    (s) => [last(s), s.marks['step-reported:switch-27'] === s.time],
    ['control.step-noted', true],
  ],
  ['report-step', start, 'so', { ...step, values: { message: 'understood' } }, last, 'control.which-one'],
  ['report-step', start, 'so', { ...step, values: { message: '72' } }, last, 'control.not-that-one'],
  ['hear-permit', () => before('take-permit'), 'pic', {}, last, 'control.permit-read'],
  ['hear-permit', start, 'pic', {}, last, 'control.no-isolation-report'],
  [
    'ask-how-it-stands',
    start,
    'pic',
    { on: 'fx' },
    (s) => s.evidence.at(-1)?.values,
    { feeder: 'fx', state: 'in-service', reclose: 'recloses' },
  ],
  [
    'ask-how-it-stands',
    out,
    'pic',
    { on: 'fx' },
    (s) => s.evidence.at(-1)?.values,
    { feeder: 'fx', state: 'out-of-service', reclose: 'does-not-reclose' },
  ],
  ['ask-feeder-in', out, 'pic', { on: 'fx' }, (s) => [s.feedersOut, last(s)], [[], 'control.feeder-in']],
  [
    'ask-crossing-guard',
    () => guarding(true),
    'pic',
    { on: 'fx' },
    (s) => [s.guardedFrom, last(s)],
    [['fx'], 'control.crossing-guarded'],
  ],
  [
    'ask-crossing-guard',
    () => guarding(false),
    'pic',
    { on: 'fx' },
    (s) => [s.guardedFrom, last(s)],
    [undefined, 'control.nobody-to-guard'],
  ],
  ['motor-supply-off', withDrive, 'so', step, (s) => s.switches['switch-27']?.motorSupply, 'off'],
  ['motor-supply-on', driveOff, 'so', step, (s) => s.switches['switch-27']?.motorSupply, 'on'],
  [
    'check-handle-earth',
    () => withSwitch(atHandle(), 'switch-27', { handleEarth: 10 }),
    'so',
    step,
    last,
    'see.handle-earth-whole',
  ],
  [
    'check-handle-earth',
    () => withSwitch(atHandle(), 'switch-27', { handleEarth: 10, handleEarthBroken: true }),
    'so',
    step,
    last,
    'see.handle-earth-broken',
  ],
  [
    'write-tag',
    tagged,
    'so',
    { on: 'T-81', values: { wording: 'name-and-time' } },
    (s) => [s.written['tag:T-81'], last(s)],
    [['name-and-time'], 'did.write-tag'],
  ],
  [
    'write-tag',
    () => ({ ...tagged(), paper: { ...tagged().paper, permit: 'held' } }),
    'so',
    { on: 'T-81', values: { wording: 'permit-name-and-time' } },
    (s) => s.written['tag:T-81'],
    ['permit-name-and-time', '#4711 P117 27 31 @54000'],
  ],
]
