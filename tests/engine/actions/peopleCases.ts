/** From person to person, breaks, testers at the switch and between wires: rows of refusals.test.ts and applies.test.ts. */
import type { Site } from '../../../src/engine'
import { after, before, done, type Said } from '../../support/cleanStages'
import { withItem } from '../../support/placedItem'
import { bladesClosed, changed, person } from '../hazard/sites'
import type { Applied, Refused } from './rows'

const start = (): Site => before('read-order')
const belowLv = (): Site => after('climb')
const last = (site: Site): string => site.evidence.at(-1)?.says ?? ''
const whom = (id: string): Said => ({ values: { whom: id } })
const opened = (): Site => after('open-switch')

const holding = (): Site => done(start(), 'gw', 'take', { on: 'H-1' })
const giving = (to: string): Said => ({ on: 'H-1', values: { whom: to } })
const both = (at: { x: number; y: number }): Site => {
  const place = { kind: 'ground', at } as const
  return changed(holding(), person('gw', { place: { kind: 'ground', at: { x: 5, y: 5 } } }), person('pic', { place }))
}
const left = (): Site => {
  const atSwitch = done(before('open-switch'), 'so', 'put-down', { on: 'K-71' })
  return atSwitch
}
const stopped = (): Site => done(start(), 'pic', 'stop-job')

/** Everybody away, one after the other. */
export const everybodyAway = (site: Site): Site =>
  Object.keys(site.persons).reduce((next, id) => {
    const down = changed(next, person(id, { strapped: false, place: { kind: 'ground', at: { x: -9, y: 9 } } }))
    return done(down, id, 'leave-site')
  }, site)

/** With stick and detector at switch 27, its blades open or one hung. */
const testing = (...closed: readonly ('A' | 'B' | 'C')[]): Site => {
  const site = withItem(
    changed(opened(), person('so', { holds: [] }), bladesClosed('switch-27', ...closed)),
    'S-20',
    'operating-stick',
    { kind: 'person', person: 'so' },
    { label: { reach: 2 } },
  )
  return withItem(site, 'D-20', 'hv-detector', { kind: 'person', person: 'so' })
}
const blade = { with: 'D-20', on: 'switch-27/B' }

const onWires = (): Site =>
  withItem(changed(belowLv(), person('pw', { holds: [] })), 'V-20', 'lv-tester', { kind: 'person', person: 'pw' })
const pair = (on: string, against: string): Said => ({ with: 'V-20', on, values: { against } })
const volts = (site: Site): unknown => Math.round(Number(site.evidence.at(-1)?.values['volts']))

export const peopleRefusals: readonly Refused[] = [
  ['give', 'not-at-hand', start, 'gw', giving('pic')],
  ['give', 'not-beside', () => both({ x: 9, y: 9 }), 'gw', giving('pic')],
  [
    'give',
    'hands-full',
    () => changed(both({ x: 6, y: 5 }), person('pic', { holds: ['C-15', 'B-02', 'E-07'] })),
    'gw',
    giving('pic'),
  ],
  ['fetch', 'not-left-there', start, 'gw', { on: 'H-1' }],
  ['fetch', 'not-on-ground', () => ({ ...belowLv(), items: left().items }), 'pw', { on: 'K-71' }],
  ['send-away', 'already-so', start, 'pic', whom('gw')],
  ['leave-site', 'not-on-ground', belowLv, 'pw'],
  ['come-back', 'already-so', start, 'gw'],
  ['take', 'away', () => done(start(), 'gw', 'leave-site'), 'gw', { on: 'H-1' }],
  ['look-over-again', 'not-on-ground', belowLv, 'pw'],
  ['start-again', 'not-stopped', start, 'pic'],
  ['hold-back', 'not-on-ground', belowLv, 'pic', whom('pw')],
  ['hold-back', 'out-of-hearing', opened, 'pic', whom('so')],
  ['judge-indication', 'not-a-choice', belowLv, 'pw', { on: 'conductor-b', values: { takenFor: 'nothing' } }],
  [
    'test-at-switch',
    'not-at-switch',
    () => changed(testing(), person('so', { place: { kind: 'ground', at: { x: 9, y: 9 } } })),
    'so',
    blade,
  ],
  ['test-at-switch', 'stick-missing', () => changed(testing(), person('so', { holds: ['D-20'] })), 'so', blade],
  ['test-pair', 'same-wire', onWires, 'pw', pair('lv-a', 'lv-a')],
  ['test-pair', 'not-on-pole', onWires, 'gw', pair('lv-a', 'lv-n')],
]

export const peopleCases: readonly Applied[] = [
  [
    'give',
    () => both({ x: 6, y: 5 }),
    'gw',
    giving('pic'),
    (s) => [s.persons['gw']?.holds, s.persons['pic']?.holds, s.items['H-1']?.where],
    [[], ['H-1'], { kind: 'person', person: 'pic' }],
  ],
  [
    'fetch',
    left,
    'gw',
    { on: 'K-71' },
    (s) => [s.items['K-71']?.where, last(s)],
    [{ kind: 'person', person: 'gw' }, 'did.fetch'],
  ],
  [
    'send-away',
    () => done(start(), 'gw', 'sign-on'),
    'pic',
    whom('gw'),
    (s) => [s.persons['gw']?.signedOn, s.persons['gw']?.briefed],
    [false, false],
  ],
  [
    'leave-site',
    start,
    'gw',
    {},
    (s) => [s.away, s.persons['gw']?.place],
    [['gw'], { kind: 'ground', at: start().truck }],
  ],
  ['come-back', () => done(start(), 'gw', 'leave-site'), 'gw', {}, (s) => s.away, []],
  [
    'look-over-again',
    () => before('untie'),
    'pic',
    {},
    (s) => s.evidence.slice(-2).map((it) => it.says),
    ['see.barrier', 'see.again'],
  ],
  ['start-again', stopped, 'pic', {}, (s) => s.paper.stopped, false],
  ['hold-back', start, 'pic', whom('gw'), (s) => [s.marks['held-back:gw'], last(s)], [start().time, 'did.hold-back']],
  [
    'judge-indication',
    belowLv,
    'pw',
    { on: 'conductor-b', values: { takenFor: 'induced' } },
    (s) => [s.marks['indication:conductor-b:induced'] === s.time, last(s)],
    [true, 'did.judge-indication'],
  ],
  ['test-at-switch', () => testing(), 'so', blade, last, 'test.silent'],
  ['test-at-switch', () => testing('B'), 'so', blade, last, 'test.indicates'],
  ['test-at-switch', () => testing('A'), 'so', blade, last, 'test.silent'],
  // 230 V to neutral is 230 × √3 = 398 V between two phases.
  ['test-pair', onWires, 'pw', pair('lv-a', 'lv-b'), volts, 398],
  ['test-pair', onWires, 'pw', pair('lv-a', 'lv-n'), volts, 230],
  ['test-pair', onWires, 'pw', pair('lv-n', 'earth'), volts, 0],
]
