/** What lies over every kind alike: first deviation, put right, consequence, one by one, only until the line came alive. */
import { describe, expect, it } from 'vitest'
import { findFindings } from '../../../src/engine/rules/findFindings'
import { fakeRun, type FakeAct } from '../../support/rules/fakeRun'
import { onePack } from '../../support/rules/onePack'

const act = (who: string, verb: string, on?: string): FakeAct => ({ who, do: verb, ...(on !== undefined && { on }) })
const untested = {
  kind: 'done-before',
  parameters: { need: { do: 'test' }, before: { do: 'clamp' }, link: [['on', 'on']] },
}

describe('the first deviation', () => {
  it('is scored once for the same person and thing, again for another', () => {
    const run = fakeRun([
      act('pw', 'clamp', 'conductor-a'),
      act('pw', 'clamp', 'conductor-a'),
      act('pw', 'clamp', 'conductor-b'),
    ])
    expect(findFindings(run, onePack(untested)).map(({ entry }) => entry)).toEqual([0, 2])
  })

  it('is scored again once it was put right', () => {
    const putRight = { by: { do: 'test' }, before: { do: 'untie' } }
    const rule = { ...untested, parameters: { ...untested.parameters, since: { do: 'unclamp' }, putRight } }
    const run = fakeRun([
      act('pw', 'clamp', 'conductor-a'),
      act('pw', 'test', 'conductor-a'),
      act('pw', 'unclamp', 'conductor-a'),
      act('pw', 'clamp', 'conductor-a'),
    ])
    expect(findFindings(run, onePack(rule)).map(({ entry, recovered }) => [entry, recovered])).toEqual([
      [0, true],
      [3, false],
    ])
  })
})

describe('put right', () => {
  const rule = {
    ...untested,
    parameters: { ...untested.parameters, putRight: { by: { do: 'test' }, before: { do: 'untie' } } },
  }
  const recovered = (acts: readonly FakeAct[], struck: number | null = null): readonly boolean[] => {
    const more = struck === null ? {} : { struck: { livening: 'clash-b', at: struck, moment: 0 } }
    return findFindings(fakeRun(acts, more), onePack(rule)).map((finding) => finding.recovered)
  }

  it('counts only on the same thing, before anybody relies on it', () => {
    expect(
      recovered([act('pw', 'clamp', 'conductor-a'), act('pw', 'test', 'conductor-a'), act('pw', 'untie')]),
    ).toEqual([true])
    expect(
      recovered([act('pw', 'clamp', 'conductor-a'), act('pw', 'test', 'conductor-b'), act('pw', 'untie')]),
    ).toEqual([false])
    expect(
      recovered([act('pw', 'clamp', 'conductor-a'), act('pw', 'untie'), act('pw', 'test', 'conductor-a')]),
    ).toEqual([false])
  })

  it('comes too late once the line came alive', () => {
    const run = [act('pw', 'clamp', 'conductor-a'), act('pw', 'test', 'conductor-a')]
    expect(recovered(run, 15)).toEqual([false])
    expect(recovered(run, 25)).toEqual([true])
  })
})

describe('a consequence', () => {
  const cause = { ...untested, id: 'cause', severity: 'critical' as const }
  const effect = (more: object = {}) => ({
    id: 'effect',
    kind: 'count',
    parameters: { of: { do: 'clamp' }, most: 0, consequenceOf: ['cause'], ...more },
  })

  it('is not scored beside its cause, and is scored without it', () => {
    const bad = fakeRun([act('pw', 'clamp', 'conductor-a')])
    const good = fakeRun([act('pw', 'test', 'conductor-a'), act('pw', 'clamp', 'conductor-a')])
    const sameThing = {
      ...effect(),
      kind: 'done-before',
      parameters: { need: { do: 'x' }, before: { do: 'clamp' }, link: [['on', 'on']], consequenceOf: ['cause'] },
    }
    expect(findFindings(bad, onePack(cause, sameThing)).map(({ rule }) => rule)).toEqual(['cause'])
    expect(findFindings(good, onePack(cause, sameThing)).map(({ rule }) => rule)).toEqual(['effect'])
  })
})

describe('a cause', () => {
  it('says it whoever did it and whenever it was seen', () => {
    const early = { id: 'early', kind: 'count', parameters: { of: { do: 'sign-on' }, most: 0, causedBy: ['cause'] } }
    const cause = { ...untested, id: 'cause' }
    const signed = act('gw', 'sign-on')
    const clamped = act('pw', 'clamp', 'conductor-a')
    expect(findFindings(fakeRun([signed]), onePack(cause, early)).map(({ rule }) => rule)).toEqual(['early'])
    expect(findFindings(fakeRun([signed, clamped]), onePack(cause, early)).map(({ rule }) => rule)).toEqual(['cause'])
  })

  it('never swallows the rule that would swallow it: the first of the pack stays', () => {
    const rule = (id: string, of: string) => ({
      id,
      kind: 'count',
      parameters: { of: { do: 'clamp' }, most: 0, consequenceOf: [of] },
    })
    const run = fakeRun([act('pw', 'clamp', 'conductor-a')])
    const found = findFindings(run, onePack(rule('one', 'two'), rule('two', 'one')))
    expect(found.map((finding) => finding.rule)).toEqual(['one'])
  })
})

it('reports only the first deviation of the run where the rule says once', () => {
  const once = { ...untested, parameters: { ...untested.parameters, once: true } }
  const run = fakeRun([act('pw', 'clamp', 'conductor-a'), act('gw', 'clamp', 'conductor-b')])
  expect(findFindings(run, onePack(untested))).toHaveLength(2)
  expect(findFindings(run, onePack(once)).map(({ entry }) => entry)).toEqual([0])
})

it('scores what one member of a set lacks once, whoever goes on without it', () => {
  const rule = {
    kind: 'done-before',
    parameters: { forEach: 'crew', need: { do: 'sign-on', who: '$each' }, before: { do: 'climb' } },
  }
  const run = fakeRun([...['gw', 'pic', 'pw'].map((it) => act(it, 'sign-on')), act('pw', 'climb'), act('gw', 'climb')])
  expect(findFindings(run, onePack(rule)).map(({ facts }) => facts['member'])).toEqual(['so'])
})

it('asks a set one by one', () => {
  const rule = {
    kind: 'done-before',
    parameters: { forEach: 'crew', need: { do: 'sign-on', who: '$each' }, before: { do: 'climb' } },
  }
  const signed = (...who: readonly string[]) => who.map((it) => act(it, 'sign-on'))
  expect(findFindings(fakeRun([...signed('gw', 'pic', 'pw', 'so'), act('pw', 'climb')]), onePack(rule))).toEqual([])
  expect(findFindings(fakeRun([...signed('gw', 'pic', 'pw'), act('pw', 'climb')]), onePack(rule))).toHaveLength(1)
})

it('looks away from what came after a livening where the rule says so', () => {
  const rule = { ...untested, parameters: { ...untested.parameters, untilLivening: true } }
  const run = [act('pw', 'x'), act('pw', 'clamp', 'conductor-a')]
  expect(findFindings(fakeRun(run), onePack(rule))).toHaveLength(1)
  expect(findFindings(fakeRun(run, { struck: { livening: 'clash-b', at: 5, moment: 0 } }), onePack(rule))).toEqual([])
})

it('asks only where the pack says the rule applies', () => {
  const rule = { ...untested, parameters: { ...untested.parameters, appliesIf: 'line-came-alive' } }
  const run = [act('pw', 'clamp', 'conductor-a')]
  expect(findFindings(fakeRun(run), onePack(rule))).toEqual([])
  expect(findFindings(fakeRun(run, { struck: { livening: 'clash-b', at: 5, moment: 0 } }), onePack(rule))).toHaveLength(
    1,
  )
})

it('orders findings by time, then rule', () => {
  const second = { ...untested, id: 'a-rule' }
  const first = { ...untested, id: 'b-rule' }
  const run = fakeRun([act('pw', 'clamp', 'conductor-b'), act('pw', 'clamp', 'conductor-a')])
  expect(findFindings(run, onePack(first, second)).map(({ rule, at }) => `${at} ${rule}`)).toEqual([
    '0 a-rule',
    '0 b-rule',
    '10 a-rule',
    '10 b-rule',
  ])
})
