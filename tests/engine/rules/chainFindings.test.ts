/**
 * One deviation is one finding; what other rules found of it hangs below. Scoring the first deviation and not its
 * cascade: common practice of assessors, no source.
 */
import { describe, expect, it } from 'vitest'
import { findFindings } from '../../../src/engine/rules/findFindings'
import { fakeRun, type FakeAct } from '../../support/rules/fakeRun'
import { onePack, type ShortRule } from '../../support/rules/onePack'
import { recorded, shippedPack } from '../../support/rules/recorded'
import { drop, swapped, type Edit } from '../../support/rules/edits'
import { replay } from '../../support/rules/replay'

const act = (who: string, verb: string, on?: string): FakeAct => ({ who, do: verb, ...(on !== undefined && { on }) })
const untested = (more: Partial<ShortRule> = {}): ShortRule => ({
  id: 'untested',
  kind: 'done-before',
  parameters: { need: { do: 'test' }, before: { do: 'clamp' }, link: [['on', 'on']] },
  ...more,
})
const inOrder = (more: Partial<ShortRule> = {}): ShortRule => ({
  id: 'in-order',
  kind: 'order',
  severity: 'minor',
  parameters: { steps: [{ do: 'test' }, { do: 'clamp' }] },
  ...more,
})
const swappedRun = fakeRun([act('pw', 'clamp', 'conductor-a'), act('pw', 'test', 'conductor-a')])
const chainOf = (run: ReturnType<typeof fakeRun>, ...rules: readonly ShortRule[]) =>
  findFindings(run, onePack(...rules)).map(({ rule, leadsTo }) => [rule, leadsTo.map((it) => it.rule)])

describe('a rule that asks for an order only', () => {
  it('follows from a heavier one that finds fault with the same acts', () => {
    expect(chainOf(swappedRun, inOrder(), untested())).toEqual([['untested', ['in-order']]])
  })

  it('stands where nothing else finds fault with them', () => {
    const other = untested({ parameters: { need: { do: 'brush' }, before: { do: 'untie' } } })
    const run = fakeRun([act('pw', 'clamp', 'conductor-a'), act('pw', 'test', 'conductor-a'), act('pw', 'untie')])
    expect(chainOf(run, inOrder(), other)).toEqual([
      ['in-order', []],
      ['untested', []],
    ])
  })

  it('stands where it is critical, and where the other one weighs less', () => {
    expect(chainOf(swappedRun, inOrder({ severity: 'critical' }), untested({ severity: 'critical' }))).toHaveLength(2)
    expect(chainOf(swappedRun, inOrder({ severity: 'major' }), untested({ severity: 'minor' }))).toHaveLength(2)
  })
})

describe('a chain of causes', () => {
  const rule = (id: string, ...causedBy: readonly string[]): ShortRule => ({
    id,
    kind: 'count',
    parameters: { of: { do: 'clamp' }, most: 0, ...(causedBy.length > 0 ? { causedBy } : {}) },
  })

  it('hangs below the first of it, all the way', () => {
    const run = fakeRun([act('pw', 'clamp', 'conductor-a')])
    expect(chainOf(run, rule('third', 'second'), rule('second', 'first'), rule('first'))).toEqual([
      ['first', ['third', 'second']],
    ])
  })

  it('is joined by the item that both are about', () => {
    const worn: ShortRule = {
      id: 'unbooted',
      kind: 'state-at',
      parameters: { when: { do: 'test' }, holds: 'boots-on-and-passed', consequenceOf: ['unjudged'] },
    }
    const unjudged: ShortRule = {
      id: 'unjudged',
      kind: 'judgement',
      parameters: { types: ['boots'], fault: 'not-judged', judged: { do: 'judge' }, used: { do: 'wear' } },
    }
    const wears = (run: ReturnType<typeof fakeRun>, ...items: readonly string[]) =>
      Object.fromEntries(
        Object.entries(run.end.persons).map(([id, it]) => [id, id === 'pw' ? { ...it, wears: items } : it]),
      )
    const empty = fakeRun([])
    const run = fakeRun([
      { who: 'pw', do: 'wear', on: 'BT-42', leaves: { persons: wears(empty, 'BT-42') } },
      act('pw', 'test', 'conductor-a'),
    ])
    expect(chainOf(run, worn, unjudged)).toEqual([['unjudged', ['unbooted']]])
    const barefoot = fakeRun([{ who: 'gw', do: 'wear', on: 'BT-43' }, act('pw', 'test', 'conductor-a')])
    expect(chainOf(barefoot, worn, unjudged)).toEqual([
      ['unjudged', []],
      ['unbooted', []],
    ])
  })
})

/** One omission or one turn of the recorded clean run, and the one finding that it is. */
it.each<[string, Edit, string]>([
  ['the permit never given back', drop('pic return-permit'), 'permit-back'],
  ['boots put on unjudged', drop('pw judge BT-42 #1'), 'judged-boots'],
  ['two wires tested the other way', swapped('pw test conductor-b', 'pw test conductor-c'), 'hv-across'],
  ['a harness judged before it was tried', swapped('pw test-item Y-1', 'pw judge Y-1'), 'evidence-labelled-kit'],
])('%s is one finding', (_what, edit, root) => {
  const { scenario, orders } = recorded('clean')
  const [first, ...others] = findFindings(replay(scenario, edit(orders)), shippedPack())
  expect(others.map(({ rule }) => rule)).toEqual([])
  expect(first?.rule).toBe(root)
  expect(first?.leadsTo.length).toBeGreaterThan(0)
})
