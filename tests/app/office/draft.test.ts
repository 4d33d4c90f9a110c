/** What is on the board: its issues are those of `check`, what is saved opens as the same bytes, what changed is told field by field. */
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { type Draft, changesOf, draftOfTexts, draftText, issuesOf } from '../../../src/app/stores/office/draft'
import { placeText, stepsOf, valueAt, withValue } from '../../../src/app/stores/office/place'
import { jsonPath } from '../../../src/files/issue'
import { readPack } from '../../../src/files/rulePack/read'
import { readScenario } from '../../../src/files/scenario/read'

const text = (path: string): string => readFileSync(`scenarios/${path}`, 'utf8')

function opened(...texts: readonly string[]): Draft {
  const read = draftOfTexts(texts, null)
  if (read.issues) throw new Error(JSON.stringify(read.issues))
  return read.draft
}

const pack = opened(text('packs/concrete-rod/pack.json'), text('packs/concrete-rod/text.en.json'))
const scenario = opened(text('marrow-bend/text.en.json'), text('marrow-bend/scenario.json'))

const changed = (draft: Draft, path: string, value: unknown, file: 'file' | 'words' = 'file'): Draft =>
  withValue(draft, [file, ...stepsOf(path)], value) as Draft

describe('files', () => {
  it.each([
    ['pack', pack],
    ['scenario', scenario],
  ] as const)('a %s that is saved, opened and saved again is the same to the byte', (kind, draft) => {
    expect(draft.kind).toBe(kind)
    const saved = [draftText(draft, 'file'), draftText(draft, 'words')]
    const again = opened(...saved)
    expect([draftText(again, 'file'), draftText(again, 'words')]).toEqual(saved)
    expect(JSON.parse(saved[0]!)).toEqual(draft.file)
  })

  it('words alone go to what is on the board; alone on an empty one they are refused', () => {
    const words = text('packs/two-earths/text.en.json')
    const read = draftOfTexts([words], pack)
    expect(read.issues ?? read.draft).toMatchObject({
      kind: 'pack',
      file: pack.file,
      words: JSON.parse(words) as object,
    })
    expect(draftOfTexts([words], null).issues).toEqual([
      { path: '$', found: 'words alone', allowed: 'a scenario or a pack with them' },
    ])
  })

  it('what is no JSON, or another format, is refused with every fault', () => {
    const read = draftOfTexts(['{"a": 1,}', text('marrow-bend/runs/clean.json')], null)
    expect(read.issues?.map((it) => it.path)).toEqual(['$', '$', '$.format'])
    expect(read.issues?.at(-1)?.found).toBe('"earths-on/run"')
  })

  it('a file with faults inside is opened: they are shown where they are', () => {
    const broken = opened(JSON.stringify({ ...scenario.file, frequencyHz: 'fifty' }))
    expect(issuesOf(broken).find((it) => it.path === '$.frequencyHz')).toMatchObject({
      found: '"fifty"',
      place: ['file', 'frequencyHz'],
    })
  })
})

describe('issues', () => {
  it('there are none in what is shipped', () => {
    expect(issuesOf(pack)).toEqual([])
    expect(issuesOf(scenario)).toEqual([])
  })

  it('are those of the readers, all at once, and each leads to what is there', () => {
    const broken = changed(changed(scenario, '$.soil.layers[0].resistivityOhmM', 0), '$.switches[1].feeder', 'f9')
    const read = readScenario(draftText(broken, 'file'))
    const issues = issuesOf(broken)
    expect(read.ok ? [] : read.issues.map((it) => it.path)).toEqual(issues.map((it) => it.path))
    expect(issues.map((it) => it.path)).toEqual(
      expect.arrayContaining(['$.soil.layers[0].resistivityOhmM', '$.switches[1].feeder']),
    )
    expect(issues.map((it) => valueAt(broken, it.place))).toEqual(expect.arrayContaining([0, 'f9']))
  })

  it('of a pack come from its kinds too', () => {
    const at = (pack.file.rules as { id: string }[]).findIndex((it) => it.id === 'gloves-worn')
    const place = `$.rules[${Math.max(0, at)}].kind`
    const broken = changed(pack, place, 'no-such-kind')
    const read = readPack(draftText(broken, 'file'))
    expect(read.ok).toBe(false)
    expect(issuesOf(broken).map(({ path, found, allowed }) => ({ path, found, allowed }))).toEqual(
      read.ok ? [] : read.issues,
    )
  })

  it('a name without words is one, in the words', () => {
    const renamed = changed(scenario, '$.crew[0].id', 'boss')
    expect(issuesOf(renamed).map((it) => placeText(it.place))).toContain('words.words["person.boss"]')
  })
})

describe('places', () => {
  it.each(['$.rules[3].parameters.need.do', '$.words["a.b c"]', '$', '$.list[0][12].x'])(
    '%s there and back',
    (path) => {
      expect(jsonPath(stepsOf(path))).toBe(path)
    },
  )

  it('a key that is changed keeps its place; one that is taken out is gone; the rest is the same object', () => {
    const before = { a: 1, b: { c: [1, 2, 3] }, d: { e: 1 } }
    const after = withValue(before, ['b', 'c', 1], 9) as typeof before
    expect(JSON.stringify(after)).toBe('{"a":1,"b":{"c":[1,9,3]},"d":{"e":1}}')
    expect(after.d).toBe(before.d)
    expect(withValue(before, ['b', 'c', 0], undefined)).toEqual({ a: 1, b: { c: [2, 3] }, d: { e: 1 } })
    expect(withValue(before, ['b'], undefined)).toEqual({ a: 1, d: { e: 1 } })
    expect(before.b.c).toEqual([1, 2, 3])
  })
})

describe('what changed', () => {
  it('is told field by field, entries by their ids', () => {
    const now = changed(changed(scenario, '$.soil.layers[0].resistivityOhmM', 500), '$.items[2].label.lengthM', 9)
    const changes = changesOf(scenario, now)
    expect(changes.map(({ name, before, now: is }) => [name, before, is])).toEqual([
      ['soil.layers[0].resistivityOhmM', 100, 500],
      ['items E-09.label.lengthM', 12, 9],
    ])
    expect(changes.map((it) => valueAt(now, it.place))).toEqual(changes.map((it) => it.now))
  })

  it('an entry taken out shifts nothing', () => {
    const now = changed(scenario, '$.items[2]', undefined)
    expect(changesOf(scenario, now).map(({ name, now: is }) => [name, is])).toEqual([['items E-09', undefined]])
  })

  it('another order is one change', () => {
    const items = scenario.file.items as readonly unknown[]
    const now = changed(scenario, '$.items', [items[1], items[0], ...items.slice(2)])
    expect(changesOf(scenario, now).map((it) => it.name)).toEqual(['items'])
  })

  it('nothing, where nothing did', () => expect(changesOf(pack, pack)).toEqual([]))
})
