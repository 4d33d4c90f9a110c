/** Gates first, sums second. Two majors pass and a repeated one does not: common practice, no source. */
import { describe, expect, it } from 'vitest'
import type { Finding, Severity } from '../../../src/engine'
import { decideOutcome, weigh } from '../../../src/engine/debrief/outcome'

const finding = (severity: Severity, rule: string, recovered = false): Finding => ({
  rule,
  at: 0,
  severity,
  element: 'any',
  entry: 0,
  facts: {},
  recovered,
  error: 'unclear',
  leadsTo: [],
})
const clear = { above: 0, marginal: 0, unsolved: 0, isSwept: true }
const majors = (...rules: readonly string[]) => rules.map((rule) => finding('major', rule))

describe('the gates', () => {
  it.each([
    ['nothing found, nothing above', [], clear, 'pass'],
    ['many minors', [1, 2, 3, 4, 5].map((n) => finding('minor', `m${n}`)), clear, 'pass'],
    ['two majors of different rules', majors('a', 'b'), clear, 'pass'],
    ['three majors', majors('a', 'b', 'c'), clear, 'fail'],
    ['a repeated major', majors('a', 'a'), clear, 'fail'],
    ['one critical though nobody was exposed', [finding('critical', 'a')], clear, 'fail'],
    ['a critical put right in time', [finding('critical', 'a', true)], clear, 'pass'],
    ['three majors, one of them put right', [...majors('a', 'b'), finding('major', 'c', true)], clear, 'pass'],
    ['an exposure above in every corner though no rule was broken', [], { ...clear, above: 1 }, 'fail'],
    ['an exposure above in some corner', [], { ...clear, marginal: 1 }, 'provisional'],
    ['an instant that was not solved', [], { ...clear, unsolved: 1 }, 'provisional'],
    ['a run that was not swept', [], { ...clear, isSwept: false }, 'provisional'],
    ['a critical beside a marginal exposure', [finding('critical', 'a')], { ...clear, marginal: 1 }, 'fail'],
  ] as const)('%s', (_name, findings, exposed, outcome) => {
    expect(decideOutcome(findings, exposed, { marks: [{ state: 'met' }], minorsKept: 1 })).toBe(outcome)
  })

  it('count what stands', () => {
    expect(weigh([finding('critical', 'a'), finding('critical', 'b', true), ...majors('c', 'c')])).toEqual({
      criticals: 1,
      majors: 2,
      hasRepeatedMajor: true,
    })
  })
})
