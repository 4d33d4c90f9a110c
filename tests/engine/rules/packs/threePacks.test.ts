/**
 * The same run under three employers' rules: other findings, and what reaches people the same to the last bit. A rule
 * reads no current, a current no rule; a mistake in either would show here.
 */
import { describe, expect, it } from 'vitest'
import { judgeRun, runTimeline } from '../../../../src/engine'
import { recorded, shippedPack } from '../../../support/rules/recorded'

const ids = ['concrete-rod', 'multi-ground', 'two-earths'] as const
const packs = ids.map((id) => shippedPack(id))

describe.each(['clean', 'barrier-too-small', 'no-cover-holed-boots'])('the recorded run %s', (name) => {
  const { scenario, orders } = recorded(name)
  const timeline = runTimeline(scenario, orders)
  const results = packs.map((pack) => judgeRun(timeline, pack, { sweep: false }))

  it('is found fault with otherwise by each', () => {
    const findings = results.map(({ findings }) => findings.map(({ rule, at }) => `${rule} ${at}`).join('\n'))
    expect(new Set(findings).size).toBe(3)
  })

  it('puts the same on everybody at the livening that struck, to the last bit', () => {
    const exposures = results.map(({ findings: _f, marks: _m, minorsKept: _k, gates: _g, outcome: _o, ...rest }) =>
      JSON.stringify(rest),
    )
    expect(new Set(exposures).size).toBe(1)
  })
})

it('the clean run of one employer breaks the others’ rules where practice differs', () => {
  const { scenario, orders } = recorded('clean')
  const rules = packs.map((pack) =>
    judgeRun(runTimeline(scenario, orders), pack, { sweep: false }).findings.map(({ rule }) => rule),
  )
  expect(rules[0]).toEqual([])
  expect(rules[1]).toContain('rubber-on-jumper')
  expect(rules[2]).toContain('main-earth-first')
})

it('swept: the worst of each person and path is the same to the last bit under all three', () => {
  const { scenario, orders } = recorded('barrier-too-small')
  const timeline = runTimeline(scenario, orders)
  const swept = packs.map((pack) => JSON.stringify(judgeRun(timeline, pack, { sweep: true }).sweep))
  expect(swept[0]!.length).toBeGreaterThan(1000)
  expect(swept[1]).toBe(swept[0])
  expect(swept[2]).toBe(swept[0])
}, 240_000)

it('a rule is asked from its own day on', () => {
  const { scenario, orders } = recorded('clean')
  const timeline = runTimeline(scenario, orders)
  const from = (effectiveFrom: string) => ({
    ...packs[2]!,
    rules: packs[2]!.rules.map((rule) => (rule.id === 'main-earth-first' ? { ...rule, effectiveFrom } : rule)),
  })
  const rulesFound = (day: string) => judgeRun(timeline, from(day), { sweep: false }).findings.map(({ rule }) => rule)
  expect(scenario.date).toBe('2031-05-14')
  expect(rulesFound('2031-05-14')).toContain('main-earth-first')
  expect(rulesFound('2031-05-15')).not.toContain('main-earth-first')
})
