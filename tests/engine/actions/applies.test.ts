/**
 * What each action leaves in the site, one case for each. Durations, reach and what is seen are common practice, no
 * source; that a look or a test tells what is there and never a verdict is the rule that they are checked by.
 */
import { describe, expect, test } from 'vitest'
import { actions, type Site } from '../../../src/engine'
import { after, before, done, type Said } from '../../support/cleanStages'
import { fieldCases } from './fieldCases'
import { casualtyCases } from './casualtyCases'
import { gapCases } from './gapCases'
import { nextPoleCases } from './nextPoleCases'
import { shiftCases } from './shiftCases'
import { truckCases } from './truckCases'
import { gearCases } from './gearCases'
import { isolationCases } from './isolationCases'
import { lowVoltageCases } from './lowVoltageCases'
import { peopleCases } from './peopleCases'
import { talkCases } from './talkCases'

type Case = readonly [
  act: string,
  site: () => Site,
  who: string,
  said: Said,
  what: (site: Site) => unknown,
  is: unknown,
]

const start = (): Site => before('read-order')
const atTruck = (): Site => before('take-permit')
const ready = (): Site => before('set-signs')
const earthing = (): Site => before('clamp')
const onA = (): Site => after('clamp')
const bonded = (): Site => before('check-from-ground')
const atHandle = (): Site => before('open-switch')
const opened = (): Site => after('open-switch')
const livened = (): Site => before('keep-still', { run: 'clean-livened' })

const turns = { turns: 6 }
const last = (site: Site): string => site.evidence.at(-1)?.says ?? ''
const lastTwo = (site: Site): readonly string[] => site.evidence.slice(-2).map((it) => it.says)
const where = (id: string) => (site: Site) => site.items[id]?.where.kind
const mark = (key: string) => (site: Site) => site.marks[key] === site.time
const ends = (site: Site): readonly string[] => site.clamps.map((it) => `${it.lead}.${it.end}>${it.on}`)

const cases: readonly Case[] = [
  ['read-order', start, 'pic', { values: { sources: ['lv', 'f1'] } }, (s) => s.written['sources'], ['f1', 'lv']],
  [
    'choose-earths',
    start,
    'pic',
    { values: { place: 'work-position', arrangement: 'star', area: 16 } },
    (s) => s.written['earths-plan'],
    ['work-position', 'star', '16'],
  ],
  ['check-crew', start, 'pic', {}, mark('crew-checked'), true],
  ['read-weather', start, 'pic', {}, last, 'weather.read'],
  ['mark-hazard', start, 'pic', { on: 'hazard-letter-box' }, (s) => s.written['hazards'], ['hazard-letter-box']],
  [
    'answer-livening',
    start,
    'pic',
    { values: { possible: 'no', from: 'nowhere', control: 'nothing' } },
    (s) => s.written['livening'],
    ['no', 'nowhere', 'nothing'],
  ],
  ['hold-briefing', start, 'pic', {}, (s) => Object.values(s.persons).filter((it) => it.briefed).length, 4],
  ['sign-on', start, 'gw', {}, (s) => s.persons['gw']?.signedOn, true],
  [
    'write-plan',
    start,
    'pic',
    { values: { cards: ['clamp:E-07:conductor-a'] } },
    (s) => s.written['plan'],
    ['clamp:E-07:conductor-a'],
  ],
  ['park-truck', start, 'gw', { values: { at: { x: -9, y: 14 } } }, (s) => s.truck, { x: -9, y: 14 }],
  ['set-signs', ready, 'gw', { with: 'X-1' }, where('X-1'), 'fitted'],
  ['match-pole', () => before('match-pole'), 'pic', { on: 'pole' }, (s) => s.evidence.at(-1)?.values['number'], 'P117'],
  [
    'inspect-pole',
    () => before('inspect-pole'),
    'pw',
    { on: 'pole' },
    (s) => s.evidence.at(-1)?.values['insulator'],
    'cracked',
  ],
  ['stage-rescue', ready, 'gw', { with: 'RK-1', values: { rescuer: 'pic' } }, (s) => s.written['rescuer'], 'pic'],
  ['locate-services', ready, 'gw', { values: { at: { x: 2, y: 2 } } }, last, 'ground.no-services'],
  ['book-out', start, 'gw', { on: 'E-08' }, (s) => [s.items['E-08']?.bookedOut, where('E-08')(s)], [true, 'tarp']],
  ['book-in', atTruck, 'gw', { on: 'E-07' }, (s) => [s.items['E-07']?.bookedIn, where('E-07')(s)], [true, 'truck']],
  ['look', opened, 'so', { on: 'switch-27/B' }, last, 'see.blade-open'],
  ['read-label', start, 'pw', { on: 'E-08' }, (s) => s.evidence.at(-1)?.values['length'], 7],
  ['test-item', start, 'pw', { on: 'BT-45' }, last, 'gear.boots.test.sound'],
  [
    'judge',
    start,
    'pw',
    { on: 'BT-45', values: { verdict: 'quarantine' } },
    (s) => [s.items['BT-45']?.verdict, where('BT-45')(s)],
    ['quarantine', 'quarantine'],
  ],
  ['take', start, 'gw', { on: 'H-1' }, (s) => s.persons['gw']?.holds, ['H-1']],
  [
    'put-down',
    () => done(start(), 'gw', 'take', { on: 'H-1' }),
    'gw',
    { on: 'H-1' },
    (s) => [s.persons['gw']?.holds, where('H-1')(s)],
    [[], 'tarp'],
  ],
  ['wear', start, 'pw', { on: 'BT-45' }, (s) => s.persons['pw']?.wears, ['BT-45']],
  [
    'take-off',
    () => done(start(), 'pw', 'wear', { on: 'BT-45' }),
    'pw',
    { on: 'BT-45' },
    (s) => s.persons['pw']?.wears,
    [],
  ],
  [
    'walk',
    start,
    'pic',
    { values: { to: { x: 3, y: 4 } } },
    (s) => s.persons['pic']?.place,
    { kind: 'ground', at: { x: 3, y: 4 } },
  ],
  [
    'climb',
    () => before('climb'),
    'pw',
    { values: { to: 'below-lv' } },
    (s) => s.persons['pw']?.place,
    { kind: 'pole', station: 'below-lv' },
  ],
  ['strap-on', () => before('strap-on'), 'pw', {}, (s) => s.persons['pw']?.strapped, true],
  ['unstrap', () => after('strap-on'), 'pw', {}, (s) => s.persons['pw']?.strapped, false],
  [
    'step-on-mat',
    () => before('step-on-mat'),
    'so',
    {},
    (s) => [s.persons['so']?.onMat, where('M-1')(s)],
    [true, 'fitted'],
  ],
  [
    'step-off-mat',
    () => before('step-off-mat'),
    'so',
    {},
    (s) => [s.persons['so']?.onMat, where('M-1')(s)],
    [false, 'person'],
  ],
  [
    'receive-step',
    start,
    'so',
    { on: 'switch-27', values: { to: 'open', readBack: '31' } },
    lastTwo,
    ['control.step-open', 'control.not-correct'],
  ],
  [
    'open-switch',
    atHandle,
    'so',
    { on: 'switch-27' },
    (s) => s.switches['switch-27']?.blades,
    { A: 'open', B: 'open', C: 'open' },
  ],
  ['close-switch', opened, 'so', { on: 'switch-27' }, (s) => s.switches['switch-27']?.handle, 'closed'],
  [
    'lock',
    opened,
    'so',
    { with: 'K-71', on: 'switch-27' },
    (s) => [s.switches['switch-27']?.lock, s.switches['switch-27']?.lockedBy],
    ['K-71', 'so'],
  ],
  [
    'unlock',
    () => after('lock', { on: 'switch-27' }),
    'so',
    { on: 'switch-27' },
    (s) => s.switches['switch-27']?.lock,
    null,
  ],
  ['tag', opened, 'so', { with: 'T-81', on: 'switch-27' }, (s) => s.switches['switch-27']?.tag, 'T-81'],
  [
    'untag',
    () => after('tag', { on: 'switch-27' }),
    'so',
    { on: 'switch-27' },
    (s) => s.switches['switch-27']?.tag,
    null,
  ],
  ['set-local', () => before('set-local'), 'so', { on: 'switch-31' }, (s) => s.switches['switch-31']?.control, 'local'],
  [
    'set-remote',
    () => after('set-local'),
    'so',
    { on: 'switch-31' },
    (s) => s.switches['switch-31']?.control,
    'remote',
  ],
  [
    'earth-isolation-point',
    () => carrying(opened(), 'E-21'),
    'so',
    { with: 'E-21', on: 'switch-27' },
    (s) => s.switches['switch-27']?.earth,
    { item: 'E-21', resistance: 10 },
  ],
  [
    'clear-isolation-earth',
    () => done(carrying(opened(), 'E-21'), 'so', 'earth-isolation-point', { with: 'E-21', on: 'switch-27' }),
    'so',
    { on: 'switch-27' },
    (s) => s.switches['switch-27']?.earth,
    null,
  ],
  ['report-isolated', start, 'so', {}, last, 'control.isolation-noted'],
  ['ask-reclose-block', start, 'pic', { on: 'fx' }, (s) => s.paper.recloseBlocked['fx'], true],
  ['ask-reclose-on', atTruck, 'pic', { on: 'fx' }, (s) => s.paper.recloseBlocked['fx'], false],
  ['ask-feeder-out', start, 'pic', { on: 'fx' }, (s) => [s.feedersOut, last(s)], [[], 'control.feeder-stays']],
  ['take-permit', atTruck, 'pic', { values: { readBack: 'P117 27 31' } }, (s) => s.paper.permit, 'held'],
  [
    'return-permit',
    () => before('return-permit'),
    'pic',
    { values: { readBack: 'crew-clear earths-off gear-in' } },
    (s) => s.paper.permit,
    'returned',
  ],
  ['show-boundary', atTruck, 'pic', {}, mark('boundary-shown'), true],
  ['close-job', start, 'pic', {}, (s) => s.paper.closed, true],
  [
    'set-barrier',
    () => before('set-barrier'),
    'gw',
    {
      with: 'Q-1',
      values: {
        outline: [
          { x: 0, y: 0 },
          { x: 9, y: 0 },
          { x: 0, y: 9 },
        ],
      },
    },
    (s) => s.barrier?.length,
    3,
  ],
  [
    'take-in-barrier',
    () => before('take-in-barrier'),
    'gw',
    { on: 'barrier' },
    (s) => [s.barrier, where('Q-1')(s)],
    [null, 'tarp'],
  ],
  [
    'drive-rod',
    () => before('drive-rod'),
    'gw',
    { with: 'R-1', values: { at: { x: 2.6, y: -2.35 }, depth: 0.5 } },
    (s) => s.rods,
    [{ item: 'R-1', at: { x: 2.6, y: -2.35 }, depth: 0.5 }],
  ],
  ['pull-rod', () => before('pull-rod'), 'gw', { on: 'rod/R-1' }, (s) => s.rods, []],
  [
    'clamp-earth-end',
    () => before('clamp-earth-end'),
    'gw',
    { with: 'E-07', on: 'rod/R-1', values: turns },
    ends,
    ['E-07.earth>rod/R-1'],
  ],
  [
    'unclamp-earth-end',
    () => before('unclamp-earth-end'),
    'gw',
    { with: 'E-07', on: 'rod/R-1' },
    (s) => [ends(s), where('E-07')(s)],
    [[], 'tarp'],
  ],
  [
    'lay-lead',
    () => before('lay-lead'),
    'gw',
    { with: 'E-07', values: { route: 'over-lv' } },
    (s) => s.written['route:E-07'],
    'over-lv',
  ],
  ['hold-lead', () => before('hold-lead', { run: 'overlap-apart' }), 'gw', { with: 'E-07' }, last, 'did.hold-lead'],
  ['call-clear', earthing, 'pic', {}, mark('called-clear'), true],
  ['tie-on', () => before('tie-on'), 'gw', { on: 'S-11' }, where('S-11'), 'handline'],
  ['watch', start, 'gw', {}, mark('watching'), true],
  [
    'haul',
    () => before('haul', { on: 'E-07' }),
    'pw',
    { on: 'E-07' },
    (s) => [s.hauled, where('E-07')(s)],
    [['E-07'], 'aloft'],
  ],
  [
    'lower',
    () => before('lower', { on: 'E-07' }),
    'pw',
    { on: 'E-07' },
    (s) => [s.hauled, where('E-07')(s)],
    [[], 'fitted'],
  ],
  ['prove', () => before('prove', { on: 'P-03' }), 'pw', { with: 'D-04', on: 'P-03' }, last, 'test.indicates'],
  ['test', () => before('test', { on: 'conductor-a' }), 'pw', { with: 'D-04', on: 'conductor-a' }, last, 'test.silent'],
  ['say-dead', start, 'pw', { on: 'conductor-a' }, mark('dead:conductor-a'), true],
  [
    'fit-guard',
    () => before('fit-guard'),
    'pw',
    { with: 'L-52', on: 'lv-a' },
    (s) => s.guards,
    [{ item: 'L-52', on: 'lv-a' }],
  ],
  ['remove-guard', () => before('remove-guard'), 'pw', { on: 'lv-n' }, (s) => s.guards.map((it) => it.on), ['lv-b']],
  ['brush', () => before('brush'), 'pw', { with: 'K-1', on: 'conductor-c' }, (s) => s.brushed, ['conductor-c']],
  [
    'clamp',
    earthing,
    'pw',
    { with: 'E-07', on: 'conductor-b', values: turns },
    (s) => s.clamps.at(-1),
    { lead: 'E-07', end: '1', on: 'conductor-b', turns: 6, brushed: true, tugged: false },
  ],
  [
    'clamp-by-hand',
    () => climbed(earthing()),
    'pw',
    { with: 'E-07', on: 'arm', values: turns },
    (s) => ends(s).at(-1),
    'E-07.1>arm',
  ],
  ['unclamp', onA, 'pw', { with: 'E-07', on: 'conductor-a' }, ends, ['E-07.earth>rod/R-1']],
  ['unclamp-by-hand', () => climbed(onA()), 'pw', { with: 'E-07', on: 'conductor-a' }, ends, ['E-07.earth>rod/R-1']],
  ['tighten', onA, 'pw', { on: 'conductor-a', values: { turns: 2 } }, (s) => s.clamps.at(-1)?.turns, 8],
  ['tug', onA, 'pw', { on: 'conductor-a' }, (s) => [last(s), s.clamps.at(-1)?.tugged], ['feel.clamp-still', true]],
  [
    'fit-cover',
    () => before('fit-cover'),
    'pw',
    { with: 'C-15', values: { from: 7, to: 8.4 } },
    (s) => s.cover,
    { item: 'C-15', from: 7, to: 8.4, checked: false },
  ],
  [
    'remove-cover',
    () => before('remove-cover'),
    'pw',
    { on: 'cover' },
    (s) => [s.cover, where('C-15')(s)],
    [null, 'aloft'],
  ],
  [
    'bond-metal',
    () => before('bond-metal'),
    'pw',
    { with: 'B-02', on: 'arm', values: turns },
    (s) => ends(s).at(-1),
    'B-02.metal>arm',
  ],
  [
    'bond-line',
    () => before('bond-line'),
    'pw',
    { with: 'B-02', on: 'conductor-c', values: turns },
    (s) => ends(s).at(-1),
    'B-02.line>conductor-c',
  ],
  [
    'unbond-line',
    () => before('unbond-line'),
    'pw',
    { with: 'B-02', on: 'conductor-b' },
    (s) => ends(s).includes('B-02.line>conductor-b'),
    false,
  ],
  ['unbond-metal', () => before('unbond-metal'), 'pw', { with: 'B-02', on: 'arm' }, where('B-02'), 'aloft'],
  ['dress-leads', () => before('dress-leads'), 'pw', {}, mark('leads-dressed'), true],
  ['untie', () => before('untie'), 'pw', { on: 'conductor-b' }, mark('untied:conductor-b'), true],
  [
    'swap-insulator',
    () => before('swap-insulator'),
    'pw',
    { with: 'I-1', on: 'conductor-b' },
    (s) => s.insulator,
    'replaced',
  ],
  ['retie', () => before('retie'), 'pw', { on: 'conductor-b' }, (s) => s.marks['untied:conductor-b'], undefined],
  [
    'report-earths',
    bonded,
    'pic',
    { values: { count: 2 } },
    (s) => [s.paper.earthsReported, s.written['earths']],
    [true, '2'],
  ],
  ['check-from-ground', bonded, 'pic', { with: 'N-1' }, lastTwo, ['see.from-ground', 'see.cover']],
  ['declare-safe', start, 'pic', {}, (s) => s.paper.safeToWork, true],
  ['confirm-complete', start, 'pic', {}, (s) => s.paper.workDone, true],
  [
    'head-count',
    bonded,
    'pic',
    {},
    (s) =>
      Object.values(s.persons)
        .filter((it) => it.mustered)
        .map((it) => it.id),
    // The ground worker stands at the rope, inside the barrier.
    ['pic', 'so'],
  ],
  ['stop-job', start, 'pic', {}, (s) => s.paper.stopped, true],
  ['keep-still', livened, 'gw', {}, mark('still:gw'), true],
  [
    'call-control',
    livened,
    'pic',
    { values: { message: 'need-ambulance' } },
    (s) => s.evidence.at(-1)?.values['message'],
    'need-ambulance',
  ],
  [
    'ask-source-off',
    livened,
    'pic',
    { on: 'fx' },
    (s) => [s.livening?.provedOff, last(s)],
    [true, 'control.proved-off'],
  ],
  ...gapCases,
  ...casualtyCases,
  ...truckCases,
  ...shiftCases,
  ...nextPoleCases,
  ...fieldCases,
  ...gearCases,
  ...isolationCases,
  ...peopleCases,
  ...talkCases,
  ...lowVoltageCases,
]

/** Puts it into the switching operator's hands at the switch. */
function carrying(site: Site, id: string): Site {
  const so = site.persons['so']!
  return {
    ...site,
    persons: { ...site.persons, so: { ...so, holds: [id] } },
    items: { ...site.items, [id]: { ...site.items[id]!, where: { kind: 'person', person: 'so' } } },
  }
}

const climbed = (site: Site): Site => done(site, 'pw', 'climb', { values: { to: 'above-lv' } })

describe('what an act leaves', () => {
  test.each(cases)('%s', (act, site, who, said, what, is) => {
    const was = site()
    const copy = JSON.stringify(was)
    expect(what(done(was, who, act, said))).toEqual(is)
    expect(JSON.stringify(was)).toBe(copy)
  })

  test('every action has a case', () => {
    const tried = new Set(cases.map(([act]) => act))
    expect([...actions.keys()].filter((id) => !tried.has(id))).toEqual([])
  })
})

describe('evidence comes from what is really so', () => {
  const proveAndTest = (site: Site, tester: string, unit: string, on: string): readonly string[] => [
    last(done(site, 'pw', 'prove', { with: tester, on: unit })),
    last(done(site, 'pw', 'test', { with: tester, on })),
  ]
  const beforeTest = (): Site => before('test', { on: 'conductor-b' })
  const withDefect = (site: Site, id: string, ...defects: readonly string[]): Site => ({
    ...site,
    items: { ...site.items, [id]: { ...site.items[id]!, defects } },
  })
  const hung = (site: Site): Site => ({
    ...site,
    switches: {
      ...site.switches,
      'switch-27': { ...site.switches['switch-27']!, blades: { A: 'open', B: 'closed', C: 'open' } },
    },
  })

  test('a blade left closed: the detector indicates on that phase and on no other', () => {
    // 11 kV / √3 = 6.35 kV against 0.45 × 6 kV = 2.7 kV (the threshold rule of IEC 61243-1, from memory).
    expect(proveAndTest(hung(beforeTest()), 'D-04', 'P-03', 'conductor-b')).toEqual([
      'test.indicates',
      'test.indicates',
    ])
    expect(proveAndTest(hung(beforeTest()), 'D-04', 'P-03', 'conductor-a')).toEqual(['test.indicates', 'test.silent'])
  })

  test('a flat battery is silent on the proving unit and on a live conductor', () => {
    const flat = withDefect(hung(beforeTest()), 'D-04', 'dead-battery')
    expect(proveAndTest(flat, 'D-04', 'P-03', 'conductor-b')).toEqual(['test.silent', 'test.silent'])
  })

  test('a detector of the 24 to 36 kV band proves well and stays silent on a live 11 kV conductor', () => {
    // 0.45 × 24 kV = 10.8 kV, above 6.35 kV to earth.
    const site = hung(beforeTest())
    const other: Site = {
      ...site,
      items: { ...site.items, 'D-09': { ...site.items['D-09']!, where: { kind: 'aloft' } } },
    }
    expect(proveAndTest(other, 'D-09', 'P-03', 'conductor-b')).toEqual(['test.indicates', 'test.silent'])
  })

  test('a weak threshold: 0.9 × 6 kV = 5.4 kV still lies under 6.35 kV', () => {
    expect(
      proveAndTest(withDefect(hung(beforeTest()), 'D-04', 'weak-threshold'), 'D-04', 'P-03', 'conductor-b')[1],
    ).toBe('test.indicates')
  })

  test('low voltage: 230 V on a phase, none on the neutral', () => {
    const site = before('test', { on: 'lv-a' })
    expect(done(site, 'pw', 'test', { with: 'T-06', on: 'lv-a' }).evidence.at(-1)?.values['volts']).toBe(230)
    expect(done(site, 'pw', 'test', { with: 'T-06', on: 'lv-n' }).evidence.at(-1)?.values['volts']).toBe(0)
  })

  test('a clamp turned too little turns on the wire; tightened, it does not', () => {
    const loose = done(earthing(), 'pw', 'clamp', { with: 'E-07', on: 'conductor-a', values: { turns: 3 } })
    const tried = done(loose, 'pw', 'tug', { on: 'conductor-a' })
    expect(last(tried)).toBe('feel.clamp-turns')
    const firm = done(tried, 'pw', 'tighten', { on: 'conductor-a', values: { turns: 3 } })
    expect(firm.clamps.at(-1)?.tugged).toBe(false)
    expect(last(done(firm, 'pw', 'tug', { on: 'conductor-a' }))).toBe('feel.clamp-still')
  })

  test('a worn jaw turns however far it is screwed; a bald brush leaves the seat dull', () => {
    const worn = withDefect(earthing(), 'E-07', 'worn-jaw-1')
    const other = withDefect(earthing(), 'E-07', 'worn-jaw-3')
    const firm = done(other, 'pw', 'clamp', { with: 'E-07', on: 'conductor-a', values: { turns: 9 } })
    expect(last(done(firm, 'pw', 'tug', { on: 'conductor-a' }))).toBe('feel.clamp-still')
    const on = done(worn, 'pw', 'clamp', { with: 'E-07', on: 'conductor-a', values: { turns: 9 } })
    expect(last(done(on, 'pw', 'tug', { on: 'conductor-a' }))).toBe('feel.clamp-turns')
    const bald = done(withDefect(before('brush'), 'K-1', 'bald'), 'pw', 'brush', { with: 'K-1', on: 'conductor-a' })
    expect([last(bald), bald.brushed]).toEqual(['see.seat-dull', []])
  })

  test('a hole and a scratch differ by what is seen and by nothing else', () => {
    const holed = done(withDefect(start(), 'BT-42', 'nail-hole-left'), 'pw', 'look', { on: 'BT-42' })
    const scratched = done(withDefect(start(), 'BT-42', 'scratch'), 'pw', 'look', { on: 'BT-42' })
    expect([last(holed), last(scratched)]).toEqual(['gear.boots.look.nail-hole-left', 'gear.boots.look.scratch'])
    expect(holed.evidence.at(-1)).toEqual({ ...scratched.evidence.at(-1), says: 'gear.boots.look.nail-hole-left' })
  })

  test('hung blades: the handle opens, the eye sees one blade closed', () => {
    const site = { ...atHandle() }
    const scenario = {
      ...site.scenario,
      switches: site.scenario.switches.map((it) =>
        it.id === 'switch-27' ? { ...it, hungBlades: ['B' as const] } : it,
      ),
    }
    const open = done({ ...site, scenario }, 'so', 'open-switch', { on: 'switch-27' })
    const seen = ['A', 'B', 'C'].map((phase) => last(done(open, 'so', 'look', { on: `switch-27/${phase}` })))
    expect(open.switches['switch-27']?.handle).toBe('open')
    expect(seen).toEqual(['see.blade-open', 'see.blade-closed', 'see.blade-open'])
  })

  test('no permit before somebody has reported it isolated, nor on a wrong repeat', () => {
    const early = done(start(), 'pic', 'take-permit', { values: { readBack: 'P117 27 31' } })
    expect([early.paper.permit, last(early)]).toEqual(['none', 'control.no-isolation-report'])
    const wrong = done(atTruck(), 'pic', 'take-permit', { values: { readBack: 'P171 27 31' } })
    expect([wrong.paper.permit, last(wrong)]).toEqual(['none', 'control.permit-not-correct'])
  })
})
