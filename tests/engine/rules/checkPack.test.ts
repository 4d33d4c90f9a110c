/** Packs that cannot be used are refused, with every fault named at once; the shipped one is fine. */
import { describe, expect, it } from 'vitest'
import { actions, checkPack, gearCatalogue, startSite } from '../../../src/engine'
import { marrowBend } from '../../support/marrowBend'
import { onePack, type ShortRule } from '../../support/rules/onePack'
import { shippedPack, shippedWords } from '../../support/rules/recorded'

const vocabulary = { actions: [...actions.keys()], gearTypes: [...gearCatalogue.keys()] }
const issues = (...rules: readonly ShortRule[]) => checkPack(onePack(...rules), vocabulary)
const paths = (...rules: readonly ShortRule[]) => issues(...rules).map(({ path }) => path)
const order = (...steps: readonly string[]): ShortRule => ({
  kind: 'order',
  parameters: { steps: steps.map((step) => ({ do: step })) },
})

describe('the shipped pack', () => {
  const pack = shippedPack()
  const words = shippedWords()

  it('can be used, and says on top what it is', () => {
    expect(checkPack(pack, vocabulary)).toEqual([])
    expect(Object.keys(words)[0]).toBe('pack.caution')
    expect(words['pack.caution']).toMatch(/not a national standard/)
    expect(pack.permitAfter).toBe('isolation')
    expect(pack.lvGuard).toBe('twoCentral')
  })

  it('has at least sixty rules, each with words, a source, and an element', () => {
    expect(pack.rules.length).toBeGreaterThanOrEqual(60)
    for (const rule of pack.rules) {
      expect(words[rule.asks], rule.id).toMatch(/\.$/)
      expect(words[rule.reason], rule.id).toMatch(/\.$/)
      expect(rule.source.length, rule.id).toBeGreaterThan(0)
    }
    const used = [
      'pack.caution',
      'pack.name',
      ...pack.elements.map((it) => `element.${it}`),
      ...pack.rules.flatMap((it) => [it.asks, it.reason]),
    ]
    expect(Object.keys(words).sort()).toEqual(used.sort())
  })

  it('speaks of every act of the paragraphs A23 to A89, beyond who does it', () => {
    const spoken = JSON.stringify(pack.rules.filter(({ kind }) => kind !== 'by-whom' && kind !== 'repeat'))
    const site = startSite(marrowBend())
    const silent = [...actions.values()]
      .filter(({ things }) => things === undefined || things(site).length > 0)
      .filter(({ covers }) => covers.some((it) => Number(it.slice(1)) >= 23 && Number(it.slice(1)) <= 89))
      .map(({ id }) => id)
      .filter((id) => !spoken.includes(`"${id}"`))
    expect(silent.sort()).toEqual([
      // Only asking: what is heard changes nothing, what is done after it has its rules.
      'ask-how-it-stands',
      // The break itself: what is asked is the look after it.
      'come-back',
      // A help: the item is judged by what is done with it.
      'give',
      // Only right, and only where somebody would go: whoever goes is found.
      'hold-back',
      // Only wrong: found by what the hand touches.
      'hold-lead',
      'leave-site',
      // Only measuring: that every pole has earths of its own is asked of the pole.
      'measure-to-earths',
      'put-down',
      // Proofs beyond what the packs ask: blades are looked at, each conductor is tested at the pole.
      'test-at-switch',
      'test-pair',
    ])
  })
})

describe('a fault of form', () => {
  it.each<[string, ShortRule, string]>([
    ['a kind that does not exist', { kind: 'maybe', parameters: {} }, '$.rules[0].kind'],
    [
      'a parameter that the kind does not have',
      { ...order('climb', 'haul'), parameters: { steps: [{ do: 'climb' }, { do: 'haul' }], speed: 3 } },
      '$.rules[0].parameters.speed',
    ],
    ['a parameter that is missing', { kind: 'order', parameters: {} }, '$.rules[0].parameters'],
    ['too few steps', order('climb'), '$.rules[0].parameters.steps'],
    ['an act that does not exist', order('climb', 'fly'), '$.rules[0].parameters.steps[1].do'],
    [
      'a part that a pattern does not have',
      { kind: 'count', parameters: { of: { do: 'climb', at: 3 }, most: 1 } },
      '$.rules[0].parameters.of.at',
    ],
    [
      'a pattern without an act',
      { kind: 'count', parameters: { of: { on: 'arm' }, most: 1 } },
      '$.rules[0].parameters.of',
    ],
    [
      'a gear type that does not exist',
      { kind: 'count', parameters: { of: { do: 'wear', itemType: 'wings' }, most: 1 } },
      '$.rules[0].parameters.of.itemType',
    ],
    [
      'a role that does not exist',
      { kind: 'by-whom', parameters: { of: { do: 'climb' }, roles: ['mascot'] } },
      '$.rules[0].parameters.roles[0]',
    ],
    [
      'a question that does not exist',
      { kind: 'state-at', parameters: { when: { do: 'climb' }, holds: 'lucky' } },
      '$.rules[0].parameters.holds',
    ],
    [
      'a question asked of the wrong thing',
      { kind: 'state-at', parameters: { when: { do: 'climb' }, holds: 'off-lead' } },
      '$.rules[0].parameters.holds',
    ],
    [
      'a question with an argument too many',
      { kind: 'state-at', parameters: { when: { do: 'climb' }, holds: { is: 'strapped', twice: true } } },
      '$.rules[0].parameters.holds.twice',
    ],
    [
      'a question with an argument too few',
      { kind: 'state-at', parameters: { when: { do: 'climb' }, holds: { is: 'wears' } } },
      '$.rules[0].parameters.holds',
    ],
    [
      'a measure that does not exist',
      { kind: 'geometry', parameters: { when: { do: 'climb' }, measure: 'luck', least: 1 } },
      '$.rules[0].parameters.measure',
    ],
    [
      'a number that is none',
      { kind: 'count', parameters: { of: { do: 'climb' }, most: 'three' } },
      '$.rules[0].parameters.most',
    ],
    [
      'a number out of range',
      { kind: 'count', parameters: { of: { do: 'climb' }, most: -1 } },
      '$.rules[0].parameters.most',
    ],
    [
      'a set that does not exist',
      { kind: 'count', parameters: { forEach: 'angels', of: { do: 'climb' }, most: 1 } },
      '$.rules[0].parameters.forEach',
    ],
    [
      'a link of the wrong parts',
      { kind: 'done-before', parameters: { need: { do: 'test' }, before: { do: 'clamp' }, link: [['on']] } },
      '$.rules[0].parameters.link[0]',
    ],
    [
      'a consequence of a rule that is not there',
      { kind: 'count', parameters: { of: { do: 'climb' }, most: 1, consequenceOf: ['gone'] } },
      '$.rules[0].parameters.consequenceOf[0]',
    ],
    [
      'a cure without an act',
      { kind: 'count', parameters: { of: { do: 'climb' }, most: 1, putRight: { by: { do: 'tug' } } } },
      '$.rules[0].parameters.putRight',
    ],
    ['an element that the pack does not have', { ...order('climb', 'haul'), element: 'luck' }, '$.rules[0].element'],
  ])('%s', (_name, rule, path) => {
    expect(paths(rule)).toEqual([path])
  })

  it('names all faults at once', () => {
    expect(
      paths(order('climb', 'fly'), { kind: 'maybe', parameters: {} }, { ...order('climb', 'haul'), id: 'rule-0' }),
    ).toEqual(['$.rules[0].parameters.steps[1].do', '$.rules[1].kind', '$.rules[2].id'])
  })
})

describe('rules that cannot be kept together, or find nothing', () => {
  it('refuses orders that turn back on themselves, through several rules too', () => {
    expect(issues(order('climb', 'haul'), order('haul', 'climb'))).toHaveLength(1)
    expect(issues(order('climb', 'haul'), order('haul', 'clamp'), order('clamp', 'climb'))).toHaveLength(1)
    const need: ShortRule = { kind: 'done-before', parameters: { need: { do: 'haul' }, before: { do: 'climb' } } }
    expect(issues(order('climb', 'haul'), need)).toHaveLength(1)
    expect(issues(order('climb', 'haul'), order('haul', 'clamp'), order('climb', 'clamp'))).toEqual([])
  })

  it('refuses a least above the most', () => {
    expect(issues({ kind: 'count', parameters: { of: { do: 'clamp' }, least: 4, most: 3 } })).toHaveLength(1)
    expect(issues({ kind: 'count', parameters: { of: { do: 'clamp' }, least: 3, most: 3 } })).toEqual([])
  })

  it('refuses an act that two rules give to different roles', () => {
    const given = (...roles: readonly string[]): ShortRule => ({
      kind: 'by-whom',
      parameters: { of: { do: 'haul' }, roles },
    })
    expect(issues(given('pole-worker'), given('ground-worker'))).toHaveLength(1)
    expect(issues(given('pole-worker'), given('ground-worker', 'pole-worker'))).toEqual([])
  })

  it('refuses to ask for an act that another rule forbids', () => {
    const never: ShortRule = { kind: 'count', parameters: { of: { do: 'clamp-by-hand' }, most: 0 } }
    const asked: ShortRule = { kind: 'count', parameters: { of: { do: 'clamp-by-hand' }, least: 1 } }
    expect(issues(never, asked)).toHaveLength(1)
    expect(issues(never)).toEqual([])
  })

  it('refuses a finding swallowed by one of less weight', () => {
    const count = (id: string, severity: 'critical' | 'minor', more: object = {}): ShortRule => ({
      id,
      severity,
      kind: 'count',
      parameters: { of: { do: 'climb' }, most: 3, ...more },
    })
    expect(issues(count('small', 'minor'), count('big', 'critical', { consequenceOf: ['small'] }))).toHaveLength(1)
    expect(issues(count('big', 'critical'), count('small', 'minor', { consequenceOf: ['big'] }))).toEqual([])
  })

  it('refuses findings that swallow one another, however long the way round, and nothing that ends', () => {
    const rule = (id: string, ...causedBy: readonly string[]): ShortRule => ({
      id,
      kind: 'count',
      parameters: { of: { do: 'climb' }, most: 3, ...(causedBy.length > 0 ? { causedBy } : {}) },
    })
    expect(issues(rule('a', 'b'), rule('b', 'a'))).toHaveLength(2)
    expect(issues(rule('a', 'b'), rule('b', 'c'), rule('c', 'a'))).toHaveLength(3)
    expect(issues(rule('a', 'a'))).toHaveLength(1)
    expect(issues(rule('a', 'b'), rule('b', 'c'), rule('c'))).toEqual([])
  })

  it('refuses a floor of an element that the pack does not have', () => {
    const floored = { ...onePack(order('climb', 'haul')), floors: { any: { majors: 0 }, luck: { majors: 2 } } }
    expect(checkPack(floored, vocabulary).map(({ path }) => path)).toEqual(['$.floors.luck'])
  })

  it.each<[string, ShortRule]>([
    ['a count without a limit', { kind: 'count', parameters: { of: { do: 'climb' } } }],
    ['a figure without a limit', { kind: 'geometry', parameters: { when: { do: 'drive-rod' }, measure: 'rod-depth' } }],
    ['a state that is never asked', { kind: 'state-at', parameters: { holds: 'barrier-up' } }],
    [
      'a statement compared with nothing',
      { kind: 'stated', parameters: { of: { do: 'report-earths' }, value: 'count' } },
    ],
    ['a way as that of no acts', { kind: 'across', parameters: { of: { do: 'clamp' }, way: 'same-as' } }],
    [
      'evidence that asks for nothing',
      { kind: 'judgement', parameters: { types: ['boots'], fault: 'no-evidence', judged: { do: 'judge' } } },
    ],
  ])('refuses %s', (_name, rule) => {
    expect(issues(rule)).toHaveLength(1)
  })
})
