/**
 * Slip, lapse, mistake and violation told apart by what the run shows, and `unclear` where it shows nothing. The four
 * words are Reason's (Human Error, 1990, from memory); what counts as evidence for each is own choice.
 */
import { describe, expect, it } from 'vitest'
import { actions, type Finding } from '../../../src/engine'
import { findFindings } from '../../../src/engine/rules/findFindings'
import { firstHalves } from '../../../src/engine/rules/returnHalves'
import { change, drop, type Edit } from '../../support/rules/edits'
import { fakeRun, type FakeAct } from '../../support/rules/fakeRun'
import { onePack, type ShortRule } from '../../support/rules/onePack'
import { recorded, shippedPack } from '../../support/rules/recorded'
import { replay } from '../../support/rules/replay'

const act = (who: string, verb: string, on?: string, more: Partial<FakeAct> = {}): FakeAct => ({
  who,
  do: verb,
  ...(on !== undefined && { on }),
  ...more,
})
const tested: ShortRule = {
  kind: 'done-before',
  parameters: { need: { do: 'test' }, before: { do: 'clamp' }, link: [['on', 'on']] },
}
const errorsOf = (rule: ShortRule, ...acts: readonly FakeAct[]): readonly Finding['error'][] =>
  findFindings(fakeRun(acts), onePack(rule)).map(({ error }) => error)

describe('what the run shows', () => {
  it('done right by the same person before: a slip of attention', () => {
    const right = [act('pw', 'test', 'conductor-a'), act('pw', 'clamp', 'conductor-a')]
    expect(errorsOf(tested, ...right, act('pw', 'clamp', 'conductor-b'))).toEqual(['slip-of-attention'])
    expect(errorsOf(tested, ...right, act('gw', 'clamp', 'conductor-b'))).toEqual(['unclear'])
  })

  it('never done: a mistake, and on the written plan a violation', () => {
    const clamps = [act('pw', 'clamp', 'conductor-a'), act('pw', 'clamp', 'conductor-b')]
    const plan = (...cards: readonly string[]) => act('pic', 'write-plan', undefined, { values: { cards } })
    expect(errorsOf(tested, ...clamps)).toEqual(['mistake', 'mistake'])
    expect(errorsOf(tested, plan('test:D-04:conductor-a'), ...clamps)).toEqual(['violation', 'violation'])
    expect(errorsOf(tested, plan('clamp:E-07:conductor-a'), ...clamps)).toEqual(['mistake', 'mistake'])
    expect(errorsOf(tested, ...clamps, plan('test:D-04:conductor-a'))).toEqual(['mistake', 'mistake'])
  })

  it('done, but too late or elsewhere: unclear', () => {
    expect(errorsOf(tested, act('pw', 'clamp', 'conductor-a'), act('pw', 'test', 'conductor-a'))).toEqual(['unclear'])
  })

  it('wrong each time: a mistake; wrong the only time: unclear', () => {
    const onMat: ShortRule = {
      kind: 'state-at',
      parameters: { when: { do: 'open-switch' }, holds: 'on-mat', apart: 'on' },
    }
    expect(errorsOf(onMat, act('so', 'open-switch', 'switch-27'), act('so', 'open-switch', 'switch-31'))).toEqual([
      'mistake',
      'mistake',
    ])
    expect(errorsOf(onMat, act('so', 'open-switch', 'switch-27'))).toEqual(['unclear'])
  })

  it('the half that undoes forgotten: a lapse; the first half never done: not', () => {
    const rule: ShortRule = { kind: 'done-before', parameters: { need: { do: 'unlock' }, before: { do: 'close-job' } } }
    expect(errorsOf(rule, act('so', 'lock', 'switch-27'), act('pic', 'close-job'))).toEqual(['lapse'])
    expect(errorsOf(rule, act('pic', 'close-job'))).toEqual(['mistake'])
  })
})

/** From the recorded clean run. */
it.each<[string, Edit, string, Finding['error']]>([
  [
    'a lead left aloft',
    drop(
      'pw unclamp conductor-c',
      'pw unclamp conductor-b',
      'pw unclamp conductor-a',
      'pw lower E-07',
      'gw unclamp-earth-end',
      'gw pull-rod',
      'gw book-in E-07',
      'gw book-in R-1',
    ),
    'register-in',
    'lapse',
  ],
  ['one hazard of six not marked', drop('pic mark-hazard hazard-fence'), 'hazards-marked', 'slip-of-attention'],
  ['one wire not tested', drop('pw test conductor-b'), 'said-dead-tested', 'slip-of-attention'],
  [
    'planned and left out',
    drop('pw fit-cover', 'pw look cover', 'pw remove-cover', 'pw lower C-15'),
    'covered',
    'violation',
  ],
  ['never called clear', drop('pic call-clear #1', 'pic call-clear #2'), 'called-clear', 'mistake'],
  [
    'a wrong read-back of the permit, once',
    change('pic take-permit', { values: { readBack: 'P117 27' } }),
    'permit-read-back',
    'unclear',
  ],
])('%s', (_what, edit, rule, error) => {
  const { scenario, orders } = recorded('clean')
  const found = findFindings(replay(scenario, edit(orders)), shippedPack())
  expect(found.map((it) => [it.rule, it.error])).toContainEqual([rule, error])
})

it('knows the first half of every act that undoes one', () => {
  const undoing = [...actions.keys()].filter((id) =>
    /^(un(?!tie)|remove-|take-off|take-in|take-up|clear-iso|stow-)/.test(id),
  )
  expect(undoing.filter((id) => !firstHalves.has(id))).toEqual([])
  for (const [second, first] of firstHalves) expect([actions.has(first), actions.has(second)]).toEqual([true, true])
})
