/** A recorded run that gives something else than it says is told apart, each difference by itself. */
import { expect, it } from 'vitest'
import { checkExpectation } from '../../src/cli/checkExpectation'
import type { Exposure, Finding, Result } from '../../src/engine'
import type { Expectation } from '../../src/files/run/run'

const exposure: Exposure = {
  person: 'pw',
  path: 'hand-thigh',
  shockPath: 'left-hand-feet',
  prospectiveVoltage: 5000,
  bodyVoltage: 4000,
  bodyCurrent: 2,
  heartEquivalent: 2,
  duration: 2.5,
  cleared: true,
  shots: { count: 1, longest: 2.5, total: 2.5 },
  zone: 'AC-4.3',
  limit: 0.005,
  judged: 2,
  layer: null,
  beyondRange: false,
}

const finding = (rule: string, at: number): Finding => ({
  rule,
  at,
  severity: 'major',
  element: 'earthing',
  entry: 0,
  facts: {},
  recovered: false,
  error: 'unclear',
  leadsTo: [],
})

const result: Result = {
  outcome: 'fail',
  findings: [finding('cover-on', 10), finding('boots-on', 20)],
  visible: null,
  sweep: [
    {
      person: 'pw',
      path: 'hand-thigh',
      verdict: 'above',
      at: 15,
      livening: 'clash-b',
      exposure,
      ratios: { declared: 400 },
    },
  ],
  unsolved: [],
  without: [],
  gates: { criticals: 0, above: 1, marginal: 0 },
  marks: [],
  minorsKept: 1,
  swept: { states: 1, livenings: 1, corners: 1 },
  notJudged: [],
}

const right: Expectation = {
  outcome: 'fail',
  findings: [
    ['cover-on', 10],
    ['boots-on', 20],
  ],
  exposures: [{ person: 'pw', path: 'hand-thigh', at: 15, zone: 'AC-4.3', current: 2.09 }],
}
const faultsOf = (change: Partial<Expectation>): readonly string[] =>
  checkExpectation({ ...right, ...change }, result, true)

it('finds nothing when outcome, findings and exposures are as expected, currents within 5 %', () => {
  expect(faultsOf({})).toEqual([])
})

it('tells another outcome', () => {
  expect(faultsOf({ outcome: 'pass' })).toEqual(['outcome fail, expected pass'])
})

it('asks for all findings, no others, in order', () => {
  expect(faultsOf({ findings: [['cover-on', 10]] })).toEqual(['finding not expected: boots-on at 20 s'])
  expect(faultsOf({ findings: [...right.findings, ['lock-on', 5]] })).toEqual(['finding missing: lock-on at 5 s'])
  expect(faultsOf({ findings: [...right.findings].reverse() })).toEqual([
    'findings in another order or number: cover-on at 10 s, boots-on at 20 s',
  ])
})

it('asks for each exposure: person, path, second, zone, current', () => {
  const [only] = right.exposures
  expect(faultsOf({ exposures: [{ ...only!, current: 2.2 }] })).toEqual([
    'exposure of pw, hand-thigh, at 15 s: 2 A AC-4.3, expected 2.2 A AC-4.3',
  ])
  expect(faultsOf({ exposures: [{ ...only!, zone: 'AC-3' }] })).toHaveLength(1)
  expect(faultsOf({ exposures: [{ ...only!, at: 16 }] })).toEqual(['exposure missing: pw, hand-thigh, at 16 s'])
})

it('without the sweep asks only for findings', () => {
  expect(checkExpectation({ ...right, outcome: 'pass' }, { ...result, sweep: [] }, false)).toEqual([])
})
