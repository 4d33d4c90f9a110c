/**
 * What the world does not allow, one case for each action at least. Each is a plain fact of hands, reach, place or
 * state (common practice, no source); nothing here is a rule of procedure.
 */
import { describe, expect, test } from 'vitest'
import { actions, type Site } from '../../../src/engine'
import { after, before, refused, type Said } from '../../support/cleanStages'
import { fieldRefusals } from './fieldCases'
import { casualtyRefusals } from './casualtyCases'
import { gapRefusals } from './gapCases'
import { nextPoleRefusals } from './nextPoleCases'
import { shiftRefusals } from './shiftCases'
import { truckRefusals } from './truckCases'
import { gearRefusals } from './gearCases'
import { isolationRefusals } from './isolationCases'
import { peopleRefusals } from './peopleCases'
import { talkRefusals } from './talkCases'
import { backFed, besideTransformer } from '../hazard/backFeedSites'

type Case = readonly [act: string, fact: string, site: () => Site, who: string, said?: Said]

const start = (): Site => before('read-order')
const atTruck = (): Site => before('take-permit')
const rodPlace = (): Site => before('drive-rod')
const atPoleFoot = (): Site => {
  const site = rodPlace()
  return {
    ...site,
    persons: { ...site.persons, gw: { ...site.persons.gw!, place: { kind: 'pole', station: 'foot' } } },
  }
}
const belowLv = (): Site => after('climb')
const earthing = (): Site => before('clamp')
const bonded = (): Site => before('check-from-ground')
const ended = (): Site => after('close-job')
const atHandle = (): Site => before('open-switch')

const turns = { turns: 6 }
const rod = 'rod/R-1'

const cases: readonly Case[] = [
  ['read-order', 'not-a-choice', start, 'pic', { values: { sources: ['the-moon'] } }],
  [
    'choose-earths',
    'not-a-choice',
    start,
    'pic',
    { values: { place: 'work-position', arrangement: 'chain', area: 0 } },
  ],
  ['check-crew', 'job-closed', ended, 'pic'],
  ['read-weather', 'job-closed', ended, 'pic'],
  ['mark-hazard', 'already-so', atTruck, 'pic', { on: 'hazard-stay' }],
  ['answer-livening', 'value-missing', start, 'pic', { values: { possible: 'yes', from: 'fx' } }],
  ['hold-briefing', 'not-on-ground', belowLv, 'pw'],
  ['sign-on', 'already-signed-on', atTruck, 'pic'],
  ['write-plan', 'not-a-choice', start, 'pic', { values: { cards: 'all of it' } }],
  ['park-truck', 'not-on-ground', belowLv, 'pw', { values: { at: { x: -10, y: 10 } } }],
  ['set-signs', 'not-at-hand', belowLv, 'gw', { with: 'X-1' }],
  ['match-pole', 'not-near-pole', start, 'pic', { on: 'pole' }],
  ['inspect-pole', 'not-near-pole', start, 'pw', { on: 'pole' }],
  ['stage-rescue', 'not-a-choice', atTruck, 'gw', { with: 'RK-1', values: { rescuer: 'nobody' } }],
  ['locate-services', 'not-on-ground', belowLv, 'pw', { values: { at: { x: 2, y: 2 } } }],
  ['book-out', 'already-so', atTruck, 'gw', { on: 'E-07' }],
  ['book-in', 'not-booked-out', atTruck, 'gw', { on: 'E-08' }],
  ['look', 'not-in-sight', atTruck, 'pic', { on: 'switch-27/A' }],
  ['read-label', 'not-in-sight', belowLv, 'pw', { on: 'E-08' }],
  ['test-item', 'not-at-hand', belowLv, 'pw', { on: 'BT-45' }],
  ['judge', 'unknown-thing', start, 'pw', { on: 'E-99', values: { verdict: 'pass' } }],
  ['take', 'held-by-another', atHandle, 'gw', { on: 'K-71' }],
  ['put-down', 'not-at-hand', start, 'gw', { on: 'E-07' }],
  ['wear', 'boot-size', () => before('set-signs'), 'gw', { on: 'BT-42' }],
  ['take-off', 'not-worn', start, 'pic', { on: 'BT-41' }],
  ['walk', 'not-on-ground', belowLv, 'pw', { on: 'truck' }],
  ['climb', 'not-near-pole', start, 'pw', { values: { to: 'below-lv' } }],
  [
    'strap-on',
    'harness-missing',
    () => ({
      ...after('walk', { on: 'pole-foot' }),
      persons: { ...belowLv().persons, pw: { ...after('walk', { on: 'pole-foot' }).persons['pw']!, wears: [] } },
    }),
    'pw',
  ],
  ['unstrap', 'already-so', start, 'pw'],
  ['step-on-mat', 'not-at-switch', start, 'so'],
  ['step-off-mat', 'already-so', start, 'so'],
  ['receive-step', 'not-a-choice', start, 'so', { on: 'switch-27', values: { to: 'open', readBack: '99' } }],
  ['open-switch', 'not-at-switch', start, 'so', { on: 'switch-27' }],
  ['close-switch', 'already-so', atHandle, 'so', { on: 'switch-27' }],
  ['lock', 'lock-fitted', () => after('lock', { on: 'switch-27' }), 'so', { with: 'K-72', on: 'switch-27' }],
  ['unlock', 'key-not-here', () => keyOfAnother(), 'so', { on: 'switch-27' }],
  ['lock', 'not-open', () => atTransformer(), 'so', { with: 'K-71', on: 't1' }],
  ['open-main', 'not-at-switch', () => withTransformer(), 'so', { on: 't1' }],
  ['close-main', 'already-so', () => atTransformer(), 'so', { on: 't1' }],
  ['take-carriers-out', 'stick-missing', () => atTransformer(), 'so', { on: 't1', values: { leave: 'bagged' } }],
  ['put-carriers-in', 'already-so', () => atTransformer('S-12'), 'so', { on: 't1' }],
  ['tag', 'not-at-switch', start, 'so', { with: 'T-81', on: 'switch-27' }],
  ['untag', 'already-so', atHandle, 'so', { on: 'switch-27' }],
  ['set-local', 'has-no-remote', atHandle, 'so', { on: 'switch-27' }],
  ['set-remote', 'already-so', () => before('set-local'), 'so', { on: 'switch-31' }],
  ['earth-isolation-point', 'not-at-hand', atHandle, 'so', { with: 'E-21', on: 'switch-27' }],
  ['clear-isolation-earth', 'already-so', atHandle, 'so', { on: 'switch-27' }],
  ['report-isolated', 'job-closed', ended, 'so'],
  ['ask-reclose-block', 'unknown-thing', start, 'pic', { on: 'lv' }],
  ['ask-reclose-on', 'unknown-thing', start, 'pic', { on: 'lv' }],
  ['ask-feeder-out', 'value-missing', start, 'pic'],
  ['take-permit', 'already-so', () => before('show-boundary'), 'pic', { values: { readBack: 'P117 27 31' } }],
  ['return-permit', 'no-permit', start, 'pic', { values: { readBack: 'earths-off gear-in' } }],
  ['show-boundary', 'not-near-pole', atHandle, 'so'],
  ['close-job', 'job-closed', ended, 'pic'],
  ['set-barrier', 'not-a-choice', rodPlace, 'gw', { with: 'Q-1', values: { outline: [{ x: 0, y: 0 }] } }],
  ['take-in-barrier', 'thing-missing', start, 'gw', { on: 'barrier' }],
  ['drive-rod', 'rod-too-short', rodPlace, 'gw', { with: 'R-1', values: { at: { x: 2.6, y: -2.35 }, depth: 2 } }],
  ['drive-rod', 'ground-taken', atPoleFoot, 'gw', { with: 'R-1', values: { at: { x: 0.1, y: -0.1 }, depth: 1.8 } }],
  ['pull-rod', 'thing-missing', rodPlace, 'gw', { on: rod }],
  ['clamp-earth-end', 'thing-missing', rodPlace, 'gw', { with: 'E-07', on: rod, values: turns }],
  ['unclamp-earth-end', 'not-clamped-there', () => before('clamp-earth-end'), 'gw', { with: 'E-07', on: rod }],
  ['lay-lead', 'not-near-pole', start, 'gw', { with: 'E-07', values: { route: 'clear-of-lv' } }],
  ['hold-lead', 'not-near-pole', start, 'gw', { with: 'E-07' }],
  ['call-clear', 'job-closed', ended, 'pic'],
  ['tie-on', 'handline-missing', atPoleFoot, 'gw', { on: 'K-1' }],
  ['tie-on', 'not-near-pole', () => before('watch'), 'gw', { on: 'K-1' }],
  ['watch', 'not-on-ground', belowLv, 'pw'],
  ['haul', 'not-tied-on', belowLv, 'pw', { on: 'S-11' }],
  ['lower', 'nobody-below', () => nobodyBelow(before('lower', { on: 'I-0' })), 'pw', { on: 'I-0' }],
  ['lower', 'lead-still-on', () => after('clamp'), 'pw', { on: 'E-07' }],
  ['prove', 'not-at-hand', belowLv, 'pw', { with: 'D-04', on: 'P-03' }],
  [
    'test',
    'stick-missing',
    () => stickGone(before('test', { on: 'conductor-a' })),
    'pw',
    { with: 'D-04', on: 'conductor-a' },
  ],
  ['say-dead', 'unknown-thing', start, 'pw', { on: 'lv-a' }],
  ['fit-guard', 'already-so', () => after('fit-guard', { on: 'lv-b' }), 'pw', { with: 'L-52', on: 'lv-b' }],
  ['remove-guard', 'not-fitted-there', belowLv, 'pw', { on: 'lv-b' }],
  ['brush', 'not-at-hand', belowLv, 'pw', { with: 'K-1', on: 'conductor-a' }],
  ['clamp', 'lead-not-aloft', earthing, 'pw', { with: 'E-08', on: 'conductor-a', values: turns }],
  ['clamp-by-hand', 'out-of-reach', earthing, 'pw', { with: 'E-07', on: 'conductor-a', values: turns }],
  ['unclamp', 'not-clamped-there', earthing, 'pw', { with: 'E-07', on: 'conductor-a' }],
  ['unclamp-by-hand', 'out-of-reach', () => after('clamp'), 'pw', { with: 'E-07', on: 'conductor-a' }],
  ['tighten', 'nothing-to-tighten', earthing, 'pw', { on: 'conductor-a', values: turns }],
  ['tug', 'not-clamped-there', earthing, 'pw', { on: 'conductor-a' }],
  ['fit-cover', 'out-of-reach', () => before('fit-cover'), 'pw', { with: 'C-15', values: { from: 3, to: 4 } }],
  ['remove-cover', 'thing-missing', earthing, 'pw', { on: 'cover' }],
  ['bond-metal', 'out-of-reach', earthing, 'pw', { with: 'B-02', on: 'arm', values: turns }],
  ['bond-line', 'already-so', bonded, 'pw', { with: 'B-02', on: 'conductor-a', values: turns }],
  ['unbond-line', 'not-bonded-there', bonded, 'pw', { with: 'B-02', on: 'conductor-a' }],
  ['unbond-metal', 'not-bonded-there', bonded, 'pw', { with: 'B-05', on: 'arm' }],
  ['dress-leads', 'not-on-pole', bonded, 'gw'],
  ['untie', 'out-of-reach', earthing, 'pw', { on: 'conductor-b' }],
  ['swap-insulator', 'insulator-tied', bonded, 'pw', { with: 'I-1', on: 'conductor-b' }],
  ['retie', 'already-so', bonded, 'pw', { on: 'conductor-b' }],
  ['report-earths', 'not-a-choice', bonded, 'pic', { values: { count: -1 } }],
  ['check-from-ground', 'not-on-ground', bonded, 'pw', { with: 'N-1' }],
  ['declare-safe', 'already-so', () => before('untie'), 'pic'],
  ['confirm-complete', 'already-so', () => before('unbond-line'), 'pic'],
  ['head-count', 'job-closed', ended, 'pic'],
  ['stop-job', 'job-closed', ended, 'pic'],
  ['keep-still', 'unknown-person', start, 'nobody'],
  ['call-control', 'not-a-choice', start, 'pic', { values: { message: 'hello' } }],
  ['ask-source-off', 'unknown-thing', start, 'pic', { on: 'conductor-a' }],
  ...gapRefusals,
  ...casualtyRefusals,
  ...truckRefusals,
  ...shiftRefusals,
  ...nextPoleRefusals,
  ...fieldRefusals,
  ...gearRefusals,
  ...isolationRefusals,
  ...peopleRefusals,
  ...talkRefusals,
]

/** The operator beside a transformer 120 m away, with a lock or a stick in the hands. */
const withTransformer = (): Site => backFed()(atHandle())
const atTransformer = (item = 'K-71'): Site => besideTransformer(withTransformer(), item)

/** Somebody else's lock: the key is not here. */
function keyOfAnother(): Site {
  const site = after('lock', { on: 'switch-27' })
  return { ...site, switches: { ...site.switches, 'switch-27': { ...site.switches['switch-27']!, lockedBy: 'pic' } } }
}

function nobodyBelow(site: Site): Site {
  const gw = site.persons['gw']!
  return { ...site, persons: { ...site.persons, gw: { ...gw, place: { kind: 'ground', at: { x: -6.5, y: 4 } } } } }
}

function stickGone(site: Site): Site {
  return { ...site, items: { ...site.items, 'S-11': { ...site.items['S-11']!, where: { kind: 'tarp' } } } }
}

describe('what the world refuses', () => {
  for (const [act, fact, site, who, said] of cases) {
    test(`${act}: ${fact}`, () => expect(refused(site(), who, act, said)).toBe(`${act}/${fact}`))
  }

  test('every action has a case', () => {
    const tried = new Set(cases.map(([act]) => act))
    expect([...actions.keys()].filter((id) => !tried.has(id))).toEqual([])
  })

  test('a lead of 7 m does not get from the rod to a conductor: 9.0 m in a straight line', () => {
    // Rod 3.5 m from the pole, conductor A at 8.5 m and 0.75 m across: sqrt(2.6² + (2.35 − 0.75)² + 8.5²) = 9.03 m.
    const site = earthing()
    const short: Site = {
      ...site,
      hauled: ['E-08'],
      clamps: site.clamps.map((clamp) => ({ ...clamp, lead: 'E-08' })),
      items: { ...site.items, 'E-08': { ...site.items['E-08']!, where: { kind: 'aloft' } } },
    }
    expect(refused(short, 'pw', 'clamp', { with: 'E-08', on: 'conductor-a', values: turns })).toBe(
      'clamp/lead-too-short',
    )
    expect(refused(site, 'pw', 'clamp', { with: 'E-07', on: 'conductor-a', values: turns })).toBeUndefined()
  })

  test('hands are counted: nobody clamps with a stick and two boots', () => {
    const site = earthing()
    const pw = site.persons['pw']!
    const loaded = { ...site, persons: { ...site.persons, pw: { ...pw, holds: ['C-15', 'B-02'] } } }
    expect(refused(loaded, 'pw', 'clamp', { with: 'E-07', on: 'conductor-a', values: turns })).toBe('clamp/hands-full')
  })

  test.each([
    ['fly', 'unknown-action', {}],
    ['walk', 'by-name-or-place', {}],
    ['walk', 'not-a-value', { on: 'truck', values: { speed: 3 } }],
    ['walk', 'not-a-choice', { values: { to: { x: Number.NaN, y: 0 } } }],
    ['walk', 'not-a-choice', { values: { to: 7 } }],
    ['clamp', 'unknown-item', { with: 'R-1', on: 'conductor-a', values: turns }],
    ['clamp', 'unknown-item', { with: '__proto__', on: 'conductor-a', values: turns }],
    ['constructor', 'unknown-action', {}],
  ] as const)('an order without sense is refused, never thrown: %s/%s', (act, fact, said) => {
    expect(refused(start(), 'gw', act, said as Said)).toBe(`${act}/${fact}`)
  })
})
