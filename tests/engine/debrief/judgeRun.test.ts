/** A run under a pack: pack and current apart, marks by element, an unsolved instant never taken for nothing. */
import { beforeAll, describe, expect, it } from 'vitest'
import {
  createSweepCache,
  isUnsolvable,
  judgeRun,
  runTimeline,
  type Pack,
  type Result,
  type Timeline,
} from '../../../src/engine'
import { drop } from '../../support/rules/edits'
import { recorded, shippedPack } from '../../support/rules/recorded'
import { replay } from '../../support/rules/replay'

const pack = shippedPack()
const clean = recorded('clean')
const livened = recorded('clean-livened')
const cache = createSweepCache()
let timeline: Timeline
let result: Result

beforeAll(() => {
  timeline = runTimeline(clean.scenario, clean.orders)
  result = judgeRun(timeline, pack, { sweep: true, cache })
}, 120_000)

const exposures = ({ sweep, visible, unsolved, swept, without, gates }: Result): string =>
  JSON.stringify({ sweep, visible, unsolved, swept, without, above: gates.above, marginal: gates.marginal })

describe('pack and current', () => {
  const harsh: Pack = {
    ...pack,
    permitAfter: 'earthsAtIsolationPoints',
    lvGuard: 'reach',
    rules: pack.rules.map((rule) => ({ ...rule, severity: 'critical' })),
  }

  it('are strangers: another pack, another grade, the same exposures to the bit', { timeout: 120_000 }, () => {
    const edited = replay(clean.scenario, drop('pw dress-leads')(clean.orders))
    const mild = judgeRun(edited, pack, { sweep: true, cache })
    const strict = judgeRun(edited, harsh, { sweep: true, cache: createSweepCache() })
    const ruleless = judgeRun(edited, { ...pack, rules: [] }, { sweep: true, cache })
    expect(exposures(strict)).toBe(exposures(mild))
    expect(exposures(ruleless)).toBe(exposures(mild))
    expect([mild.outcome, strict.outcome, ruleless.outcome]).toEqual(['pass', 'fail', 'pass'])
  })

  it('give the same result twice', { timeout: 120_000 }, () => {
    expect(JSON.stringify(judgeRun(timeline, pack, { sweep: true, cache }))).toBe(JSON.stringify(result))
  })
})

describe('the clean run', () => {
  it('passes over the whole stated range', () => {
    expect(result.outcome).toBe('pass')
    expect(result.gates).toEqual({ criticals: 0, above: 0, marginal: 0 })
    expect(result.swept.corners).toBeGreaterThan(1)
    expect(result.swept.livenings).toBe(clean.scenario.livenings.length + 1)
    expect(result.visible).toBeNull()
  })

  it('meets every element that a machine can see, and leaves the others open', () => {
    const state = Object.fromEntries(result.marks.map(({ element, state: it }) => [element, it]))
    expect(state['situational-judgement']).toBe('met')
    expect(state['emergency-response']).toBe('not observed')
    expect(Object.entries(state).filter(([, it]) => it === 'not met')).toEqual([])
    expect(state['earthing']).toBe('met')
    expect(result.notJudged).toContain('climbing')
    expect(result.notJudged).not.toContain('exposure-not-swept')
  })

  it('cannot pass unswept', () => {
    const unswept = judgeRun(timeline, pack, { sweep: false })
    expect(unswept.outcome).toBe('provisional')
    expect(unswept.notJudged).toContain('exposure-not-swept')
  })
})

describe('an empty run', () => {
  it('never passes', () => {
    const nothing = judgeRun(runTimeline(clean.scenario, []), pack, { sweep: false })
    expect(nothing.outcome).toBe('fail')
    expect(nothing.findings.map(({ rule }) => rule)).toEqual(['job-closed', 'permit-back'])
    expect(nothing.marks.filter(({ state }) => state === 'not done').length).toBeGreaterThan(5)
  })
})

describe('the livened run', () => {
  const run = (): Timeline => runTimeline(livened.scenario, livened.orders)

  it('shows what reached whom, and what each thing was worth', { timeout: 120_000 }, () => {
    const judged = judgeRun(run(), pack, { sweep: false })
    expect(judged.visible?.livening).toBe('clash-b')
    expect(judged.visible?.exposures.map(({ person }) => person)).toContain('pw')
    const cover = judged.without.find(({ item }) => item === 'C-15')?.persons.find(({ person }) => person === 'pw')
    const bond = judged.without.find(({ item }) => item === 'B-02')?.persons.find(({ person }) => person === 'pw')
    expect(cover).toBeDefined()
    expect(bond).toBeDefined()
    // Hand on the conductor, thigh at the covered pole: taking the cover away can only let more through.
    expect(cover!.withoutIt).toBeGreaterThan(cover!.withIt)
  })

  it('asks for the response', () => {
    const silent = replay(livened.scenario, drop('gw keep-still')(livened.orders))
    const judged = judgeRun(silent, pack, { sweep: false })
    expect(judged.findings.map(({ rule }) => rule)).toContain('kept-still')
    expect(judged.marks.find(({ element }) => element === 'emergency-response')?.state).toBe('not met')
  })
})

describe('an instant that cannot be solved', () => {
  it('is named with its node and keeps the run from passing', { timeout: 120_000 }, () => {
    // Without frequency the section's capacitance carries nothing: once its switch is open its conductors float.
    const scenario = { ...clean.scenario, frequency: 1e-300, ranges: [] }
    const opened = clean.orders.findIndex((order) => order.do === 'open-switch')
    const few = clean.orders.slice(0, opened + 4)
    const judged = judgeRun(runTimeline(scenario, few), { ...pack, rules: [] }, { sweep: true })
    expect(judged.outcome).toBe('provisional')
    expect(judged.unsolved.length).toBeGreaterThan(0)
    for (const each of judged.unsolved) {
      expect(isUnsolvable(each)).toBe(true)
      expect(each.node).toContain('conductor')
    }
    expect(judged.notJudged).toContain('circuit-unsolved')
  })
})
