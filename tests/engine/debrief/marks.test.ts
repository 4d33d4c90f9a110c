/**
 * Elements each by themselves with their own floor; not done differs from not observed. The floors and the share of
 * minor rules: common practice of assessors (no critical, few majors, 85 % of the minors), no source.
 */
import { describe, expect, it } from 'vitest'
import { createSweepCache, judgeRun, type Pack, type Result } from '../../../src/engine'
import { markRun } from '../../../src/engine/debrief/marks'
import { decideOutcome } from '../../../src/engine/debrief/outcome'
import { findFindings } from '../../../src/engine/rules/findFindings'
import { change, drop, none, swapped, type Edit } from '../../support/rules/edits'
import { recorded, shippedPack } from '../../support/rules/recorded'
import { replay } from '../../support/rules/replay'

const pack = shippedPack()
const { scenario, orders } = recorded('clean')
const cache = createSweepCache()

const timelineOf = (edit: Edit) => replay(scenario, edit(orders))
function marksOf(edit: Edit, by: Pack = pack) {
  const timeline = timelineOf(edit)
  const marking = markRun(timeline, by, findFindings(timeline, by))
  return { ...marking, of: (element: string) => marking.marks.find((it) => it.element === element)! }
}

describe('the clean run', () => {
  const clean = marksOf(none)

  it('keeps every rule that it was asked, in every element, and meets what it could show', () => {
    for (const { kept, asked, element } of clean.marks) expect([element, kept]).toEqual([element, asked])
    expect(clean.minorsKept).toBe(1)
    const states = Object.fromEntries(clean.marks.map(({ element, state }) => [element, state]))
    expect(states['emergency-response']).toBe('not observed')
    expect(Object.values(states).filter((it) => it === 'met')).toHaveLength(11)
  })
})

describe('a run that ends early', () => {
  it('leaves what the place had an occasion for not done, and what it had none for not observed', () => {
    const early = marksOf((all) =>
      all.slice(
        0,
        all.findIndex(({ do: act }) => act === 'receive-step'),
      ),
    )
    expect(early.of('earthing').state).toBe('not done')
    expect(early.of('emergency-response').state).toBe('not observed')
    expect(early.of('plan-and-hazards').state).toBe('met')
  })

  it('is for a person to decide, though no rule was broken', () => {
    const met = { state: 'met' } as const
    const exposed = { above: 0, marginal: 0, unsolved: 0, isSwept: true }
    const outcome = (...marks: readonly { readonly state: Result['marks'][number]['state'] }[]) =>
      decideOutcome([], exposed, { marks, minorsKept: 1 })
    expect(outcome(met, { state: 'not done' })).toBe('provisional')
    expect(outcome(met, { state: 'not observed' })).toBe('pass')
    expect(outcome(met, { state: 'not judged' })).toBe('pass')
    expect(outcome(met, { state: 'not met' })).toBe('fail')
    expect(decideOutcome([], exposed, { marks: [met], minorsKept: 0.84 })).toBe('fail')
    expect(decideOutcome([], exposed, { marks: [met], minorsKept: 0.85 })).toBe('pass')
  })
})

describe('a floor', () => {
  const noDressing = drop('pw dress-leads')
  const oneMajor = drop('gw stage-rescue', 'gw book-in RK-1')

  it('of one element is below what that of another is', () => {
    const marks = marksOf(oneMajor)
    expect(marks.of('plan-and-hazards')).toMatchObject({ majors: 1, state: 'met' })
    const strict = { ...pack, floors: { 'plan-and-hazards': { majors: 0 } } }
    expect(marksOf(oneMajor, strict).of('plan-and-hazards').state).toBe('not met')
    expect(marksOf(oneMajor, strict).of('earthing').state).toBe('met')
  })

  it('counts a share of the minor rules', () => {
    const marks = marksOf(noDressing).of('bonding-and-covering')
    expect(marks.minorsKept).toBeLessThan(1)
    expect(marks.state).toBe('met')
    const strict = { ...pack, floors: { 'bonding-and-covering': { minorsKept: 1 } } }
    expect(marksOf(noDressing, strict).of('bonding-and-covering').state).toBe('not met')
  })

  it('tells what was left out from what was done wrongly', () => {
    expect(marksOf(oneMajor).of('plan-and-hazards').notDone).toBe(1)
    const wrong = marksOf(change('pic choose-earths', { values: { area: 24 } })).of('plan-and-hazards')
    expect(wrong).toMatchObject({ majors: 1, notDone: 0 })
  })
})

describe('luck', () => {
  /** A clamp tugged late, while the ground worker has a hand on the lead. No livening comes in either run. */
  const holding = recorded('overlap-hand-on-lead')
  const late = swapped('pw tug conductor-a', 'pw clamp conductor-b')(holding.orders)
  const tugOf = (hasHole: boolean, sweep: boolean) => {
    const items = holding.scenario.items.map((it) =>
      hasHole && it.type === 'boots' ? { ...it, defects: ['nail-hole-left', 'nail-hole-right'] } : it,
    )
    const timeline = replay({ ...holding.scenario, items, visible: null }, late)
    expect(timeline.struck).toBeNull()
    return judgeRun(timeline, pack, { sweep, cache }).findings.find(({ rule }) => rule === 'clamp-tugged')
  }

  it('is no credit: put right in time is what no livening could have overtaken', () => {
    expect(tugOf(false, true)).toMatchObject({ recovered: true })
    expect(tugOf(true, true)).toMatchObject({ recovered: false })
    expect(tugOf(true, false)).toMatchObject({ recovered: true })
  }, 240_000)
})
