import { describe, expect, it } from 'vitest'
import { readQualification } from '../../../src/files/qualification/readQualification'

const item = {
  id: 'ohm-1.5x',
  model: 'network',
  basis: 'closed-form',
  source: 'Ohm',
  inputs: {},
  expected: { 'currentA.0': 1 },
  tolerance: { relative: 0.01 },
}
const textOf = (cases: unknown, head: object = {}) =>
  JSON.stringify({ format: 'earths-on/qualification', version: 1, ...head, cases })

function issuesOf(text: string): readonly string[] {
  const read = readQualification(text)
  return read.ok ? [] : read.issues.map(({ path, found, allowed }) => `${path}: ${found} / ${allowed}`)
}

describe('a qualification file', () => {
  it('is read, with a tolerance for all, per path, or none where only words are expected', () => {
    const perPath = { ...item, id: 'per-path', tolerance: { 'currentA.0': { absolute: 1, relative: 0.1 } } }
    const words = { ...item, id: 'words', expected: { zone: 'AC-1' }, tolerance: undefined }
    const read = readQualification(textOf([item, perPath, words]))
    expect(read.ok && read.value.cases).toEqual([item, perPath, JSON.parse(JSON.stringify(words))])
  })

  it('is refused with every fault and its path at once', () => {
    const faulty = { ...item, id: 'Not Kebab', basis: 'rumour', extra: 1, more: 2, source: '', expected: {} }
    const cases = [faulty, { ...item, tolerance: { relative: -1 } }, 7, item]
    const paths = issuesOf(textOf(cases, { also: true })).map((text) => text.split(':')[0])
    expect(paths).toEqual(
      expect.arrayContaining([
        '$.also',
        '$.cases[0].id',
        '$.cases[0].basis',
        '$.cases[0].extra',
        '$.cases[0].more',
        '$.cases[0].source',
        '$.cases[0].expected',
        '$.cases[1].tolerance.relative',
        '$.cases[2]',
        '$.cases[3].id',
      ]),
    )
    expect(paths).toHaveLength(10)
  })

  it('is refused when an id is used twice, naming the first', () => {
    expect(issuesOf(textOf([item, item]))).toEqual(['$.cases[1].id: "ohm-1.5x" / each id once; $.cases[0] has it'])
  })

  it('is refused with a tolerance that would let anything pass, that says nothing or that belongs to nothing', () => {
    expect(issuesOf(textOf([{ ...item, tolerance: { relative: 1 } }]))).toEqual([
      '$.cases[0].tolerance.relative: 1 / below 1',
    ])
    expect(issuesOf(textOf([{ ...item, tolerance: {} }]))).toEqual([
      '$.cases[0].tolerance: {} / relative or absolute, or both',
    ])
    expect(issuesOf(textOf([{ ...item, tolerance: { 'currentA.9': { relative: 0.1 } } }]))).toEqual([
      '$.cases[0].tolerance["currentA.9"]: the key "currentA.9" / a path that is expected: currentA.0',
    ])
  })

  it('is refused by name when it is newer, when it is another format, empty, or not strict JSON', () => {
    expect(issuesOf(textOf([item], { version: 2 }))[0]).toMatch(/^\$\.version: earths-on\/qualification version 2/)
    expect(issuesOf(textOf([item], { format: 'earths-on/run' }))[0]).toMatch(/^\$\.format: "earths-on\/run"/)
    expect(issuesOf(textOf([]))[0]).toMatch(/^\$\.cases: \[\] \/ a list of 1/)
    expect(issuesOf('{')).not.toEqual([])
    expect(issuesOf('[]')).not.toEqual([])
    expect(issuesOf(textOf([item]).replace('0.01', '1e400'))).toEqual([
      '$.cases[0].tolerance.relative: "1e400" / a finite number',
    ])
    expect(issuesOf(textOf([item]).replace('"source"', '"model":"x","source"'))[0]).toMatch(/"model" again/)
    expect(issuesOf(textOf([item]).replace('"inputs":{}', '"inputs":{"__proto__":1}'))[0]).toMatch(/__proto__/)
  })
})
