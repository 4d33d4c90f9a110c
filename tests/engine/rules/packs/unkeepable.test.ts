/** Packs whose rules no run can keep together, or that can never find anything, are refused with all of it at once. */
import { expect, it } from 'vitest'
import { actions, checkPack, gearCatalogue } from '../../../../src/engine'
import { readPack } from '../../../../src/files/rulePack/read'
import { onePack, type ShortRule } from '../../../support/rules/onePack'
import { shippedPack } from '../../../support/rules/recorded'

const takes = new Map(
  [...actions.values()].map(({ id, withTypes, values = {} }) => [
    id,
    { ...(withTypes && { withTypes }), values: Object.keys(values) },
  ]),
)
const paths = (...rules: readonly ShortRule[]) =>
  checkPack(onePack(...rules), { actions: [...actions.keys()], gearTypes: [...gearCatalogue.keys()], takes }).map(
    ({ path }) => path,
  )
const order = (same: string, ...steps: readonly string[]): ShortRule => ({
  kind: 'order',
  parameters: { same, steps: steps.map((step) => ({ do: step })) },
})
const way = (name: string, of = 'clamp'): ShortRule => ({
  kind: 'across',
  parameters: { of: { do: of }, way: name, as: { do: 'test' } },
})
const end = (deadEnd: string, going = 'on'): ShortRule => ({
  kind: 'lead-order',
  parameters: { types: ['earth-lead'], deadEnd, going },
})
const answer = (equals: string, value = 'place'): ShortRule => ({
  kind: 'stated',
  parameters: { of: { do: 'choose-earths' }, value, equals },
})
const byWhom = (act: string, ...roles: readonly string[]): ShortRule => ({
  kind: 'by-whom',
  parameters: { of: { do: act }, roles },
})
const need = (pattern: object): ShortRule => ({
  kind: 'done-before',
  parameters: { need: pattern, before: { do: 'untie' } },
})

it.each<[string, readonly ShortRule[], readonly ShortRule[], string]>([
  [
    'two orders for the same item that turn back on each other',
    [order('item', 'look', 'judge'), order('item', 'judge', 'look')],
    [order('item', 'look', 'judge'), order('who', 'judge', 'look')],
    '$.rules[0].parameters',
  ],
  [
    'the way of other acts and against it',
    [way('same-as'), way('against')],
    [way('same-as'), way('against', 'brush')],
    '$.rules[1].parameters.way',
  ],
  [
    'either end of a lead first',
    [end('earth'), end('line')],
    [end('earth'), end('line', 'off')],
    '$.rules[1].parameters.deadEnd',
  ],
  [
    'two answers to one question',
    [answer('work-position'), answer('isolation-points')],
    [answer('work-position'), answer('chain', 'arrangement')],
    '$.rules[1].parameters.equals',
  ],
  [
    'an act asked of a role that the pack does not give it to',
    [byWhom('watch', 'ground-worker'), need({ do: 'watch', role: 'pole-worker' })],
    [byWhom('watch', 'ground-worker', 'pole-worker'), need({ do: 'watch', role: 'pole-worker' })],
    '$.rules[1].parameters.need.role',
  ],
  [
    'gear that an act is never done with',
    [need({ do: 'clamp', itemType: 'boots' })],
    [need({ do: 'clamp', itemType: 'earth-lead' })],
    '$.rules[0].parameters.need.itemType',
  ],
  [
    'a value that an act does not have',
    [need({ do: 'clamp', values: { depth: 1 } })],
    [need({ do: 'clamp', values: { turns: 6 } })],
    '$.rules[0].parameters.need.values.depth',
  ],
])('%s', (_what, refused, fine, path) => {
  expect(paths(...refused)).toContain(path)
  expect(paths(...fine)).toEqual([])
})

it('lists all of them at once', () => {
  const found = paths(
    way('same-as'),
    way('against'),
    end('earth'),
    end('line'),
    need({ do: 'clamp', itemType: 'boots' }),
  )
  expect(found).toHaveLength(3)
})

it.each(['multi-ground', 'two-earths'])('%s is fine, has seventy rules and more, each with a source', (id) => {
  const pack = shippedPack(id)
  expect(pack.rules.length).toBeGreaterThanOrEqual(70)
  for (const rule of pack.rules) expect(rule.source.length, rule.id).toBeGreaterThan(0)
})

it('a rule with a later day of its own is read with it', () => {
  const source = JSON.stringify({
    format: 'earths-on/rule-pack',
    version: 1,
    ...onePack(),
    rules: [{ ...shippedPack().rules[0], effectiveFrom: '2031-06-01' }],
    elements: ['plan-and-hazards'],
  })
  const read = readPack(source)
  expect(read.ok && read.value.rules[0]?.effectiveFrom).toBe('2031-06-01')
})
