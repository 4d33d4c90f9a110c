/**
 * Every question that a pack may ask of the site, and every figure and truth it may name: asked of the recorded clean
 * run at a moment at which it holds and at one at which it does not.
 */
import { beforeAll, describe, expect, it } from 'vitest'
import { runTimeline, type Entry, type Site, type Timeline } from '../../../src/engine'
import { books } from '../../../src/engine/rules/books'
import { whyNot, type PredicateCall } from '../../../src/engine/rules/language/predicate'
import { viewRun, type RunView } from '../../../src/engine/rules/language/runView'
import { placesOf } from '../../support/rules/edits'
import { recorded, shippedPack } from '../../support/rules/recorded'

const pack = shippedPack()
const runs = {
  clean: recorded('clean'),
  livened: recorded('clean-livened'),
  overlap: recorded('overlap-hand-on-lead'),
  bare: recorded('no-cover-holed-boots'),
}
const timelines: Record<string, Timeline> = {}

beforeAll(() => {
  for (const [name, { scenario, orders }] of Object.entries(runs)) timelines[name] = runTimeline(scenario, orders)
})

interface Moment {
  readonly run: keyof typeof runs
  /** Asked of the site before this act; `end` is the end of the run. */
  readonly act: string
  readonly person?: string
  readonly change?: (site: Site) => Partial<Site>
  readonly view?: (view: RunView) => RunView
  /** Asked while the act goes on. */
  readonly while?: boolean
  readonly permitAfter?: 'earthsAtIsolationPoints'
}

const at = (act: string, more: Partial<Moment> = {}): Moment => ({ run: 'clean', act, ...more })
const withItem = (id: string, change: object) => (site: Site) => ({
  items: { ...site.items, [id]: { ...site.items[id]!, ...change } },
})

/** The line with a neutral wire of its own, and the last clamp of the lead on this. */
const withNeutral = (on: string) => (site: Site) => {
  const { feeders } = site.scenario
  const neutralWire = { id: 'line-neutral' } as NonNullable<(typeof feeders)[number]['neutralWire']>
  return {
    scenario: { ...site.scenario, feeders: feeders.map((it) => (it.id === 'f1' ? { ...it, neutralWire } : it)) },
    clamps: site.clamps.map((it) => (it.on === 'conductor-c' ? { ...it, on } : it)),
  }
}

/** A tenth of the source impedance, the busbar next to the work, a slow relay. */
const stiffer = ({ feeders }: Site['scenario']): Site['scenario']['feeders'] =>
  feeders.map((it) => ({
    ...it,
    sourceImpedance: { re: 0.01, im: 0.12 },
    length: 10,
    overcurrent: { ...it.overcurrent, multiplier: 1 },
  }))

const withThunder = ({ scenario }: Site): Partial<Site> => ({
  scenario: { ...scenario, weatherChanges: [{ at: 1, thunder: true }] },
})

/** As if the first act of the run had been somebody's coming back to a place that all had left. */
const breakTaken = (view: RunView): RunView => {
  const [first, ...rest] = view.done
  const back = { ...first!, order: { ...first!.order, do: 'come-back' } }
  return { ...view, done: [{ ...back, before: { ...back.before, marks: { 'site-left': 1 } } }, ...rest] }
}

const atSwitch = { kind: 'switch', id: 'switch-27' } as const

function entryOf({ run, act }: Moment): Entry | undefined {
  return act === 'end' ? undefined : timelines[run]!.entries[placesOf(runs[run].orders, act)[0]!]
}

function ask(call: PredicateCall, moment: Moment): boolean {
  const timeline = timelines[moment.run]!
  const entry = entryOf(moment)
  const plain = entry?.before ?? timeline.end
  const site = { ...plain, ...moment.change?.(plain) }
  const plainView = viewRun(timeline, { ...pack, ...(moment.permitAfter && { permitAfter: moment.permitAfter }) })
  const view = moment.view?.(plainView) ?? plainView
  const busy = moment.while === true ? timeline.moments.find((it) => it.busy.includes(entry!.index)) : undefined
  const scope = { view, site: busy?.site ?? site, person: moment.person ?? entry?.order.who ?? 'pw' }
  return (
    whyNot(books.predicates, call, { ...scope, ...(entry && { entry }), ...(busy && { moment: busy }) }) === undefined
  )
}

type Row = readonly [call: PredicateCall, holds: Moment, fails: Moment]

const rows: Readonly<Record<string, Row>> = {
  'off-lead': [
    'off-lead',
    at('pw clamp conductor-a', { while: true, person: 'gw' }),
    at('gw hold-lead', { run: 'overlap', while: true }),
  ],
  'not-between-bare-pole-and-earths': [
    'not-between-bare-pole-and-earths',
    at('pw bond-metal', { while: true }),
    at('pw bond-metal', { run: 'bare', while: true }),
  ],
  'not-under-load': [
    { is: 'not-under-load', clear: 2 },
    at('pw haul D-04', { while: true, person: 'gw' }),
    at('gw drive-rod', { while: true, person: 'pw', act: 'pw inspect-pole' }),
  ],
  'not-busy-with': [
    { is: 'not-busy-with', acts: { do: 'drive-rod' } },
    at('gw drive-rod', { while: true, person: 'pic' }),
    at('gw drive-rod', { while: true }),
  ],
  'register-balanced': ['register-balanced', at('end'), at('pic return-permit')],
  'nothing-aloft': ['nothing-aloft', at('pic return-permit'), at('pw haul K-1')],
  'crew-clear': ['crew-clear', at('pic return-permit'), at('pw tug conductor-a')],
  'crew-mustered': ['crew-mustered', at('pic return-permit'), at('pic head-count')],
  'item-in-date': [
    'item-in-date',
    at('pw wear BT-42'),
    at('pw wear BT-42', { change: withItem('BT-42', { label: { due: '2031-05-13' } }) }),
  ],
  'item-unused-by-fault': [
    'item-unused-by-fault',
    at('pw clamp conductor-a'),
    at('pw clamp conductor-a', { change: withItem('E-07', { faulted: true }) }),
  ],
  'faulted-set-aside': [
    'faulted-set-aside',
    at('pic return-permit', { run: 'livened' }),
    at('pw prove D-04 #3', { run: 'livened' }),
  ],
  'gear-in-use-unfaulted': [
    'gear-in-use-unfaulted',
    at('pic declare-safe #2', { run: 'livened' }),
    at('pw prove D-04 #3', { run: 'livened' }),
  ],
  'gear-in-use-looked-at': [
    'gear-in-use-looked-at',
    at('pic declare-safe #2', { run: 'livened' }),
    at('pw prove D-04 #3', { run: 'livened' }),
  ],
  'insulator-replaced': ['insulator-replaced', at('pw retie'), at('pw swap-insulator')],
  'old-insulator-down': ['old-insulator-down', at('pic confirm-complete'), at('pw lower I-0')],
  'step-in-hand': [
    'step-in-hand',
    at('so open-switch'),
    at('so open-switch', {
      change: ({ paper }) => ({ paper: { ...paper, step: { switch: 'switch-27', to: 'closed', readBack: '27' } } }),
    }),
  ],
  'not-left-alone': [
    { is: 'not-left-alone', within: 30 },
    at('pw untie'),
    at('pw untie', {
      change: ({ persons }) => ({ persons: { ...persons, gw: { ...persons['gw']!, place: atSwitch } } }),
    }),
  ],
  'conductors-earthed': ['conductors-earthed', at('pic report-earths'), at('pw tug conductor-b')],
  'lead-on-neutral': [
    'lead-on-neutral',
    at('pic report-earths', { change: withNeutral('line-neutral') }),
    at('pic report-earths', { change: withNeutral('elsewhere') }),
  ],
  'neutral-on-line': ['neutral-on-line', at('end', { change: withNeutral('line-neutral') }), at('end')],
  'any-earth-on': ['any-earth-on', at('pw tug conductor-a'), at('pw clamp conductor-a')],
  'clamps-seated': [
    'clamps-seated',
    at('pic declare-safe'),
    at('pic declare-safe', { change: (site) => ({ clamps: site.clamps.map((it) => ({ ...it, turns: 5 })) }) }),
  ],
  'clamps-tugged': ['clamps-tugged', at('pic report-earths'), at('pw tug conductor-c')],
  'seat-brushed': [
    'seat-brushed',
    at('pw clamp conductor-a'),
    at('pw clamp conductor-a', { change: () => ({ brushed: [] }) }),
  ],
  'lv-guarded': ['lv-guarded', at('pw haul S-11'), at('pw fit-guard lv-n')],
  'pole-covered': [{ is: 'pole-covered', from: 7.5, to: 8.3 }, at('pic declare-safe'), at('pw fit-cover')],
  'any-cover': ['any-cover', at('pw look cover'), at('pw fit-cover')],
  'cover-checked': ['cover-checked', at('pw bond-metal'), at('pw look cover')],
  'metal-bonded': ['metal-bonded', at('pw dress-leads'), at('pw bond-line')],
  'any-bond-on': ['any-bond-on', at('pw bond-line'), at('pw bond-metal')],
  'any-guard-on': ['any-guard-on', at('pw fit-guard lv-n'), at('pw fit-guard lv-b')],
  'lv-neutral-free': [
    'lv-neutral-free',
    at('pic declare-safe'),
    at('pic declare-safe', {
      change: (site) => ({ clamps: site.clamps.map((it) => (it.end === 'metal' ? { ...it, on: 'lv-n' } : it)) }),
    }),
  ],
  'nothing-untied': ['nothing-untied', at('pic confirm-complete'), at('pw retie')],
  'barrier-up': ['barrier-up', at('gw drive-rod'), at('gw set-barrier')],
  'lead-on-rod': ['lead-on-rod', at('gw lay-lead'), at('gw clamp-earth-end')],
  isolated: ['isolated', at('so report-isolated'), at('so open-switch')],
  'locked-and-tagged': ['locked-and-tagged', at('so report-isolated'), at('so tag switch-31')],
  'in-local': ['in-local', at('so lock switch-31'), at('so set-local')],
  'isolation-earthed': [
    'isolation-earthed',
    at('so report-isolated', {
      change: (site) => ({
        switches: Object.fromEntries(
          Object.entries(site.switches).map(([id, it]) => [id, { ...it, earth: { item: 'E-21', resistance: 10 } }]),
        ),
      }),
    }),
    at('so report-isolated'),
  ],
  'reclose-blocked': ['reclose-blocked', at('pic hold-briefing'), at('pic ask-reclose-block f1')],
  'handles-as-found': ['handles-as-found', at('end'), at('so lock switch-27')],
  'control-as-found': ['control-as-found', at('end'), at('so lock switch-31')],
  'permit-held': ['permit-held', at('pic show-boundary'), at('pic take-permit')],
  'permit-returned': ['permit-returned', at('end'), at('pic return-permit')],
  'declared-safe': ['declared-safe', at('pw untie'), at('pic declare-safe')],
  'earths-reported': ['earths-reported', at('pic declare-safe'), at('pic report-earths')],
  'work-complete': ['work-complete', at('pw unbond-line'), at('pic confirm-complete')],
  'job-stopped': [
    'job-stopped',
    at('end', { change: (site) => ({ paper: { ...site.paper, stopped: true } }) }),
    at('end'),
  ],
  'job-closed': ['job-closed', at('end'), at('pic close-job')],
  'permit-waits-for-earths': [
    'permit-waits-for-earths',
    at('pic take-permit', { permitAfter: 'earthsAtIsolationPoints' }),
    at('pic take-permit'),
  ],
  'boots-on-and-passed': [
    { is: 'boots-on-and-passed', leastClass: 1 },
    at('gw drive-rod'),
    at('gw drive-rod', { change: withItem('BT-43', { verdict: null }) }),
  ],
  wears: [{ is: 'wears', type: 'lv-gloves' }, at('pw fit-guard lv-b'), at('pw wear G-21')],
  strapped: ['strapped', at('pw climb'), at('pw strap-on')],
  aloft: ['aloft', at('pw prove T-06'), at('pw strap-on')],
  'on-mat': ['on-mat', at('so open-switch'), at('so step-on-mat')],
  briefed: ['briefed', at('gw book-out E-07'), at('gw sign-on')],
  'at-briefing': ['at-briefing', at('gw sign-on'), at('pic hold-briefing')],
  'at-device': ['at-device', at('so look switch-27/A'), at('so walk switch-27')],
  'on-site': ['on-site', at('so report-isolated'), at('so walk truck')],
  'below-low-voltage': ['below-low-voltage', at('pw fit-guard lv-b'), at('pw fit-cover')],
  'names-another-role': [
    { is: 'names-another-role', value: 'rescuer', role: 'pole-worker' },
    at('gw stage-rescue'),
    at('gw stage-rescue', { act: 'gw stage-rescue' }),
  ],
  'inside-barrier': ['inside-barrier', at('gw drive-rod'), at('gw watch')],
  'clear-of-electrodes': [{ is: 'clear-of-electrodes', least: 12 }, at('pic read-order'), at('gw drive-rod')],
  'was-done': [{ is: 'was-done', acts: { do: 'climb' } }, at('end'), at('end')],
  'conductive-pole': ['conductive-pole', at('end'), at('end')],
  'low-voltage-on-pole': ['low-voltage-on-pole', at('end'), at('end')],
  'line-came-alive': ['line-came-alive', at('end', { run: 'livened' }), at('end')],
  'source-proved-off': [
    'source-proved-off',
    at('pw prove D-04 #3', { run: 'livened' }),
    at('pic ask-source-off', { run: 'livened' }),
  ],
  'planned-for-fault': [
    'planned-for-fault',
    at('pic choose-earths'),
    at('pic choose-earths', { change: ({ scenario }) => ({ scenario: { ...scenario, feeders: stiffer(scenario) } }) }),
  ],
  'lead-for-fault': [
    'lead-for-fault',
    at('pw clamp conductor-a'),
    at('pw clamp conductor-a', { change: withItem('E-07', { label: { area: 4 } }) }),
  ],
  'crossing-held': ['crossing-held', at('pic hold-briefing'), at('pic ask-reclose-block fx')],
  'reclose-as-found': ['reclose-as-found', at('pic close-job'), at('pic hold-briefing')],
  'jumpers-as-found': [
    'jumpers-as-found',
    at('end'),
    at('end', { change: () => ({ jumpersOut: [{ at: 'jumpers-9', tails: 'tied-back' }] }) }),
  ],
  'bucket-up': [
    'bucket-up',
    at('end', { change: () => ({ truckState: { outriggers: 'down', bucket: { at: { x: 0, y: 1 }, height: 6 } } }) }),
    at('end'),
  ],
  'truck-bonded': [
    'truck-bonded',
    at('pic declare-safe', {
      change: (site) => ({ clamps: site.clamps.map((it) => (it.end === 'metal' ? { ...it, end: 'truck' } : it)) }),
    }),
    at('pic declare-safe'),
  ],
  'truck-inside-barrier': [
    'truck-inside-barrier',
    at('pic declare-safe', { change: () => ({ truck: { x: 1, y: 1 } }) }),
    at('pic declare-safe'),
  ],
  'boom-passed': [
    'boom-passed',
    at('end'),
    at('end', { change: withItem('E-07', { type: 'bucket-boom', verdict: null }) }),
  ],
  'no-thunder': ['no-thunder', at('end'), at('end', { change: withThunder })],
  'looked-over-since-break': ['looked-over-since-break', at('end'), at('end', { view: breakTaken })],
  'charge-walked': [
    'charge-walked',
    at('pic check-crew', { change: () => ({ marks: { 'walked-job:undefined': 1 } }) }),
    at('pic check-crew'),
  ],
  'charge-reported': [
    'charge-reported',
    at('end'),
    at('end', { change: () => ({ marks: { 'charge-handed-over': 10, 'charge-reported': 5 } }) }),
  ],
  'own-sources-held': [
    'own-sources-held',
    at('end'),
    at('end', {
      change: ({ scenario }) => ({
        scenario: { ...scenario, livenings: [{ id: 'roof-feeds', kind: 'low-voltage-fed', source: 'roof' }] },
      }),
    }),
  ],
  'point-unearthed': [
    'point-unearthed',
    at('so close-switch'),
    at('so close-switch', {
      change: ({ switches }) => ({
        switches: { ...switches, 'switch-27': { ...switches['switch-27']!, earth: { item: 'E-21', resistance: 10 } } },
      }),
    }),
  ],
  'step-carried-out': ['step-carried-out', at('so look switch-27/A'), at('so open-switch')],
  'permit-wider': ['permit-wider', at('end', { change: () => ({ marks: { 'permit-wider': 1 } }) }), at('end')],
  'next-pole-assessed': [
    'next-pole-assessed',
    at('end', { change: () => ({ marks: { 'next-pole-assessed': 1 } }) }),
    at('end'),
  ],
  'at-next-pole': [
    'at-next-pole',
    at('gw drive-rod', {
      change: ({ scenario, persons }) => ({
        scenario: { ...scenario, nextPole: { number: 'P118', along: 60 } },
        persons: { ...persons, gw: { ...persons['gw']!, place: { kind: 'ground', at: { x: 31, y: 2 } } } },
      }),
    }),
    at('gw drive-rod'),
  ],
  'tested-dead': ['tested-dead', at('pw say-dead conductor-a'), at('pw fit-guard lv-b')],
  'tester-proved': [
    'tester-proved',
    at('pw test conductor-a'),
    at('pw test conductor-a', {
      change: (site) => ({
        evidence: site.evidence.map((it) =>
          it.of === 'D-04' && it.by === 'test' ? { ...it, says: 'test.silent' } : it,
        ),
      }),
    }),
  ],
}

/** Questions whose other answer this site cannot give: asked turned round, of the same moment. */
const otherAnswer: Readonly<Record<string, PredicateCall>> = {
  'names-another-role': { is: 'names-another-role', value: 'rescuer', role: 'ground-worker' },
  'was-done': { is: 'was-done', acts: { do: 'clamp-by-hand' } },
  'conductive-pole': { not: 'conductive-pole' },
  'low-voltage-on-pole': { not: 'low-voltage-on-pole' },
}

it('has a row for every question', () => {
  expect(Object.keys(rows).sort()).toEqual([...books.predicates.keys()].sort())
})

describe.each(Object.entries(rows))('%s', (id, [call, holds, fails]) => {
  it('holds, and does not', () => {
    expect(ask(call, holds)).toBe(true)
    expect(ask(otherAnswer[id] ?? call, fails)).toBe(false)
  })
})

describe('figures', () => {
  const figures: Readonly<Record<string, readonly [act: string, value: number]>> = {
    'rod-depth': ['gw drive-rod', 1.8],
    // √(2.6² + 2.35²) = 3.5046
    'rod-to-pole': ['gw drive-rod', 3.5],
    'rod-to-located': ['gw drive-rod', 0],
    'cover-below-thigh': ['pw fit-cover', 0.5],
    'cover-above-thigh': ['pw fit-cover', 0.6],
    'item-class': ['pw wear BT-42', 1],
    'item-area': ['gw clamp-earth-end', 25],
    'item-length': ['gw clamp-earth-end', 12],
    // 11 kV in a band of 6 to 15 kV: 15 000 − 11 000
    'band-margin': ['pw test conductor-a', 4000],
    // √(14² + 10²) = 17.2047
    'place-to-electrodes': ['gw park-truck', 17.2],
  }

  it.each(Object.entries(figures))('%s', (id, [act, value]) => {
    const view = viewRun(timelines['clean']!, pack)
    expect(books.measures.get(id)?.measure(view, entryOf(at(act))!)).toBeCloseTo(value, 9)
  })

  it('of the barrier reach at least the six metres that it was set out with', () => {
    const view = viewRun(timelines['clean']!, pack)
    for (const id of ['barrier-clearance', 'barrier-around-anchor']) {
      const metres = books.measures.get(id)?.measure(view, entryOf(at('gw clamp-earth-end'))!)
      expect(metres, id).toBeGreaterThanOrEqual(6)
      expect(metres, id).toBeLessThan(6.2)
    }
  })

  it('leave none out', () => {
    expect([...books.measures.keys()].sort()).toEqual(
      [...Object.keys(figures), 'barrier-clearance', 'barrier-around-anchor'].sort(),
    )
  })
})

it('knows the truths of this site', () => {
  const view = viewRun(timelines['clean']!, pack)
  const right = (id: string, act: string) => books.truths.get(id)?.right(view, entryOf(at(act))!)
  expect(right('sources', 'pic read-order')).toEqual(['f1', 'f2', 'fx', 'lv'])
  expect(right('livening-from', 'pic answer-livening')).toEqual(['fx'])
  expect(right('livening-possible', 'pic answer-livening')).toEqual(['yes'])
  expect(right('switch-label', 'so receive-step switch-31')).toEqual(['31'])
  expect(right('permit-limits', 'pic take-permit')).toEqual(['P117 27 31'])
  expect(right('earthed-conductors', 'pic report-earths')).toEqual([3])
  expect(right('earthed-conductors', 'pw clamp conductor-c')).toEqual([2])
  expect(right('clear-statement', 'pic return-permit')).toEqual(['crew-clear earths-off gear-in'])
  expect(right('crew-size', 'pic check-crew')).toEqual([4])
  expect(books.truths.size).toBe(8)
})

it('counts the members of every set', () => {
  const sizes = Object.fromEntries(
    [...books.sets].map(([id, { members }]) => [id, members(runs.clean.scenario).length]),
  )
  expect(sizes).toEqual({
    conductors: 3,
    'lv-wires': 4,
    'central-lv-wires': 2,
    crew: 4,
    switches: 2,
    'closed-switches': 1,
    'remote-switches': 1,
    blades: 6,
    'switched-blades': 3,
    feeders: 3,
    'section-feeders': 2,
    'crossing-feeders': 1,
    hazards: 6,
  })
  expect(books.sets.get('central-lv-wires')?.members(runs.clean.scenario)).toEqual(['lv-b', 'lv-n'])
})
