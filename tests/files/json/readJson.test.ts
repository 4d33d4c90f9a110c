/** RFC 8259 is the grammar; beside it only our own limits. JSON.parse is the second opinion. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { depthLimit, readJson, sizeLimit } from '../../../src/files/json/readJson'

const pathsOf = (text: string): readonly string[] => {
  const read = readJson(text)
  return read.ok ? [] : read.issues.map((issue) => issue.path)
}

describe('readJson', () => {
  it('reads what JSON.parse reads, and refuses what it refuses', () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 6 }), (value) => {
        const text = JSON.stringify(value)
        const read = readJson(text)
        const isReserved = /"(__proto__|constructor|prototype)":/.test(text)
        expect(read.ok).toBe(!isReserved)
        if (read.ok) expect(read.value).toEqual(JSON.parse(text))
      }),
      { numRuns: 300 },
    )
  })

  it('never lets a damaged text through, and never throws', () => {
    const parses = (text: string): boolean => {
      try {
        JSON.parse(text)
        return true
      } catch {
        return false
      }
    }
    const damage = fc.tuple(
      fc.jsonValue({ maxDepth: 4 }),
      fc.nat(),
      fc.constantFrom('', '"', '{', ']', ',', '\\', '\u0000', 'e', '-', '\u00a0', '/*', '0'),
    )
    fc.assert(
      fc.property(damage, ([value, where, put]) => {
        const text = JSON.stringify(value)
        const at = where % (text.length + 1)
        const damaged = text.slice(0, at) + put + text.slice(at + 1)
        if (readJson(damaged).ok) expect(parses(damaged)).toBe(true)
        else expect(readJson(damaged)).toMatchObject({ ok: false, issues: expect.arrayContaining([expect.anything()]) })
      }),
      { numRuns: 2000 },
    )
  })

  it('names every key that stands twice, with its path', () => {
    expect(pathsOf('{"a":1,"a":2,"b":[{"c":1,"c":1,"c":2}]}')).toEqual(['$.a', '$.b[0].c', '$.b[0].c'])
    expect(pathsOf('{"a":{"b":1},"c":{"b":1}}')).toEqual([])
  })

  it('refuses keys that mean something to the language, at any depth and when escaped', () => {
    expect(pathsOf('{"__proto__":{"x":1}}')).toEqual(['$.__proto__'])
    expect(pathsOf('{"a":[{"constructor":1},{"prototype":1}]}')).toEqual(['$.a[0].constructor', '$.a[1].prototype'])
    expect(pathsOf('{"__pr\\u006fto__":1}')).toEqual(['$.__proto__'])
    expect(({} as { x?: number }).x).toBeUndefined()
  })

  it('refuses numbers that are not finite, with their paths', () => {
    expect(pathsOf('{"a":[1e400,2,-1e999]}')).toEqual(['$.a[0]', '$.a[2]'])
  })

  it('survives 100 000 nested lists, open or closed, and objects', () => {
    for (const text of ['['.repeat(100_000), '['.repeat(100_000) + ']'.repeat(100_000), '{"a":'.repeat(100_000)]) {
      expect(readJson(text)).toEqual({
        ok: false,
        issues: [
          { path: '$', found: expect.stringContaining('nested deeper'), allowed: `at most ${depthLimit} levels` },
        ],
      })
    }
    const fits = '['.repeat(depthLimit) + ']'.repeat(depthLimit)
    expect(readJson(fits).ok).toBe(true)
    expect(readJson(`[${fits}]`).ok).toBe(false)
    expect(readJson(JSON.stringify('['.repeat(100_000))).ok).toBe(true)
  })

  it('refuses a text over the limit of size', () => {
    expect(pathsOf(`"${'x'.repeat(sizeLimit)}"`)).toEqual(['$'])
  })

  it.each([
    '',
    ' ',
    '{"a":1',
    '[1,2',
    '{"a":1} {}',
    '{"a":1,}',
    '[1,]',
    '// c\n1',
    '{a:1}',
    "['x']",
    '01',
    'NaN',
    '\ufeff1',
    '"\t"',
  ])('refuses %j', (text) => {
    expect(readJson(text).ok).toBe(false)
  })
})
