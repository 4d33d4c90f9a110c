/**
 * Why an act is done, by the rules of a pack. Small packs are written here so that the answer can be read off them; what a
 * shipped pack answers to an act is held to what the trade says of it (common practice, no source).
 */
import { describe, expect, it } from 'vitest'
import { reasonsOf, runTimeline } from '../../../src/engine'
import { fakeRun, type FakeAct } from '../../support/rules/fakeRun'
import { onePack, type ShortRule } from '../../support/rules/onePack'
import { recorded, shippedPack } from '../../support/rules/recorded'

const act = (verb: string, on: string): FakeAct => ({ who: 'pw', do: verb, on })

const tested: ShortRule = {
  kind: 'done-before',
  parameters: { need: { do: 'test' }, before: { do: 'clamp' }, link: [['on', 'on']] },
}

/** For each act, whether the only rule of the pack is a reason for it. */
const answered = (rule: ShortRule, ...acts: readonly FakeAct[]): readonly boolean[] => {
  const reasons = reasonsOf(fakeRun(acts), onePack(rule))
  return acts.map((_, i) => reasons(i).length === 1)
}

describe('a rule is the reason for an act', () => {
  it('that it would miss, not for the act that needs it', () => {
    expect(answered(tested, act('test', 'conductor-a'), act('clamp', 'conductor-a'))).toEqual([true, false])
  })

  it('not where the act is on another thing, or done twice', () => {
    expect(answered(tested, act('test', 'conductor-b'), act('clamp', 'conductor-a'))).toEqual([false, false])
    const twice = [act('test', 'conductor-a'), act('test', 'conductor-a'), act('clamp', 'conductor-a')]
    expect(answered(tested, ...twice)).toEqual([false, false, false])
  })

  it('not an act that may not be done too often', () => {
    expect(answered({ kind: 'count', parameters: { of: { do: 'tug' }, most: 2 } }, act('tug', 'conductor-a'))).toEqual([
      false,
    ])
    expect(answered({ kind: 'count', parameters: { of: { do: 'tug' }, least: 1 } }, act('tug', 'conductor-a'))).toEqual(
      [true],
    )
  })
})

describe('the clean run on marrow-bend', () => {
  const { scenario, orders } = recorded('clean')
  const run = runTimeline(scenario, orders)
  const pack = shippedPack('concrete-rod')
  const reasons = reasonsOf(run, pack)
  const firstOf = (verb: string, on?: string): string | undefined => {
    const found = run.entries.find(({ order }) => order.do === verb && (on === undefined || order.on === on))
    return found && reasons(found.index)[0]
  }
  const asksOf = (rule: string | undefined) => pack.rules.find(({ id }) => id === rule)?.asks

  it.each([
    ['hold-briefing', undefined, 'briefing-held'],
    ['take-permit', undefined, 'permit-held'],
    ['fit-cover', undefined, 'covered'],
    ['bond-line', 'conductor-b', 'bonded'],
    ['tug', 'conductor-a', 'clamp-tugged'],
    ['retie', 'conductor-b', 'tied-in'],
    ['close-job', undefined, 'job-closed'],
  ])('%s: the sentence is the one about it', (verb, on, rule) => {
    expect(asksOf(firstOf(verb, on))).toBe(`${rule}.asks`)
  })

  it('each lock and tag brings the locked handle nearer', () => {
    expect(firstOf('lock', 'switch-27')).toBe('locked')
    expect(firstOf('tag', 'switch-27')).toBe('locked')
  })

  it('a rule that is taken out of the pack is no reason any longer', () => {
    const less = { ...pack, rules: pack.rules.filter(({ id }) => id !== 'clamp-tugged') }
    const tug = run.entries.find(({ order }) => order.do === 'tug')
    expect(reasonsOf(run, less)(tug?.index ?? -1)).not.toContain('clamp-tugged')
    expect(reasons(tug?.index ?? -1)).toContain('clamp-tugged')
  })
})
