/** Work that goes on at the next pole: rows of refusals.test.ts and applies.test.ts. */
import type { Site } from '../../../src/engine'
import type { Scenario } from '../../../src/engine/site/scenario'
import { before, done } from '../../support/cleanStages'
import { withItem } from '../../support/placedItem'
import { changed, inScenario, person, standsAt, type Change } from '../hazard/sites'
import type { Applied, Refused } from './rows'

const on = 'next-pole'

/** 60 m on, made like the worked pole; the low voltage ends before it. */
const extended = (widensPermit = true): Change =>
  inScenario((scenario) => ({
    lv: { ...scenario.lv, wires: [] } as Scenario['lv'],
    control: { ...scenario.control, widensPermit },
    nextPole: { number: 'P118', along: 60, work: { conductor: 'conductor-b', old: 'I-8', item: 'I-9' } },
  }))

const onNext: Change = person('pw', { place: { kind: 'pole', station: 'above-lv', pole: 'next' } })

/** The first pole is done with nothing taken off; the pole worker is up the next one with the stick. */
export function atNextPole(...changes: readonly Change[]): Site {
  const site = changed(before('untie'), extended(), onNext, ...changes)
  const old = withItem(site, 'I-8', 'pin-insulator', { kind: 'fitted' })
  const part = withItem(old, 'I-9', 'pin-insulator', { kind: 'aloft', at: 'next' })
  return withItem(part, 'S-9', 'operating-stick', { kind: 'aloft', at: 'next' })
}

const beside = (): Site => atNextPole(person('gw', { holds: [] }), standsAt('gw', 59, 1))
const free: Change = (site) => ({
  ...site,
  clamps: site.clamps.filter((it) => !(it.lead === 'E-07' && it.end === '3')),
})
const asked = (): Site => done(beside(), 'pic', 'ask-wider-permit', { on })
const declined = (): Site => done(beside(), 'pic', 'decline-next-pole', { on })
const untied = (): Site => done(beside(), 'pw', 'untie', { on: 'conductor-b@next' })

const last = (site: Site): string => site.evidence.at(-1)?.says ?? ''
const turns = { turns: 6 }

export const nextPoleRefusals: readonly Refused[] = [
  ['assess-next-pole', 'unknown-thing', () => before('untie'), 'gw', { on }],
  ['assess-next-pole', 'not-near-pole', () => changed(beside(), standsAt('gw', 20, 1)), 'gw', { on }],
  ['ask-wider-permit', 'already-so', asked, 'pic', { on }],
  ['ask-wider-permit', 'no-permit', () => changed(before('read-order'), extended()), 'pic', { on }],
  ['decline-next-pole', 'already-so', declined, 'pic', { on }],
  // The earth end is on the rod 3.5 m from the first pole.
  [
    'clamp',
    'lead-too-short',
    () => changed(beside(), free),
    'pw',
    { with: 'E-07', on: 'conductor-c@next', values: turns },
  ],
  ['untie', 'out-of-reach', beside, 'pw', { on: 'conductor-b' }],
  [
    'swap-insulator',
    'no-insulator',
    () => done(beside(), 'pw', 'untie', { on: 'conductor-a@next' }),
    'pw',
    { with: 'I-9', on: 'conductor-a@next' },
  ],
  ['brush', 'not-at-hand', beside, 'pw', { with: 'K-1', on: 'conductor-a@next' }],
]

export const nextPoleCases: readonly Applied[] = [
  ['assess-next-pole', beside, 'gw', { on }, last, 'pole.next-assessed'],
  ['ask-wider-permit', beside, 'pic', { on }, last, 'control.permit-wider'],
  ['ask-wider-permit', () => changed(beside(), extended(false)), 'pic', { on }, last, 'control.permit-stays'],
  ['decline-next-pole', beside, 'pic', { on }, last, 'did.decline-next-pole'],
  ['walk', beside, 'pic', { on }, (s) => s.persons['pic']?.place, { kind: 'pole', station: 'foot', pole: 'next' }],
  [
    'climb',
    () => changed(beside(), person('gw', { place: { kind: 'pole', station: 'foot', pole: 'next' } })),
    'gw',
    { values: { to: 'below-lv' } },
    (s) => s.persons['gw']?.place,
    { kind: 'pole', station: 'below-lv', pole: 'next' },
  ],
  ['untie', beside, 'pw', { on: 'conductor-b@next' }, (s) => s.marks['untied:conductor-b@next'] !== undefined, true],
  [
    'swap-insulator',
    untied,
    'pw',
    { with: 'I-9', on: 'conductor-b@next' },
    (s) => [s.insulator, s.items['I-8']?.where, s.items['I-9']?.where.kind],
    ['cracked', { kind: 'aloft', at: 'next' }, 'fitted'],
  ],
]
