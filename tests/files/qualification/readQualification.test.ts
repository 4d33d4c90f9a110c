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
const read = (cases: unknown, head: object = {}) =>
  readQualification(JSON.stringify({ format: 'earths-on/qualification', version: 1, ...head, cases }))

function issuesOf(cases: unknown, head: object = {}): readonly string[] {
  const reading = read(cases, head)
  return reading.kind === 'refused' ? reading.issues.map(({ path, message }) => `${path}: ${message}`) : []
}

describe('a qualification file', () => {
  it('is read, with a tolerance for all, per path, or none where only words are expected', () => {
    const perPath = { ...item, id: 'per-path', tolerance: { 'currentA.0': { absolute: 1, relative: 0.1 } } }
    const words = { ...item, id: 'words', expected: { zone: 'AC-1' }, tolerance: undefined }
    const reading = read([item, perPath, words])
    expect(reading.kind === 'read' && reading.file.cases.map(({ id }) => id)).toEqual(['ohm-1.5x', 'per-path', 'words'])
  })

  it('is refused with every fault and its path at once', () => {
    const faulty = { ...item, id: 'Not Kebab', basis: 'rumour', extra: 1, more: 2, source: '', expected: {} }
    expect(
      issuesOf([faulty, { ...item, tolerance: { relative: -1 } }, 7, item], { also: true }).map(
        (text) => text.split(':')[0],
      ),
    ).toEqual(
      expect.arrayContaining([
        'also',
        'cases.0.id',
        'cases.0.basis',
        'cases.0.extra',
        'cases.0.more',
        'cases.0.source',
        'cases.0.expected',
        'cases.1.tolerance.relative',
        'cases.2',
        'cases.3.id',
      ]),
    )
  })

  it('is refused when an id is used twice, naming the first', () => {
    expect(issuesOf([item, item])).toEqual(['cases.1.id: must not be used twice, but ohm-1.5x is already cases.0'])
  })

  it('is refused with a tolerance that would let anything pass, that says nothing or that belongs to nothing', () => {
    expect(issuesOf([{ ...item, tolerance: { relative: 1 } }])).toHaveLength(1)
    expect(issuesOf([{ ...item, tolerance: {} }])).toHaveLength(1)
    expect(issuesOf([{ ...item, tolerance: { 'currentA.9': { relative: 0.1 } } }])).toEqual([
      'cases.0.tolerance.currentA.9: is a tolerance for a value that is not expected',
    ])
  })

  it('is refused by name when it is newer, when it is another format, empty or no JSON', () => {
    expect(issuesOf([item], { version: 2 })).toEqual([
      'version: earths-on/qualification version 2 is newer than 1, the newest known here',
    ])
    expect(issuesOf([item], { format: 'earths-on/run' })[0]).toMatch(/^format: must be earths-on\/qualification/)
    expect(issuesOf([])[0]).toMatch(/^cases: must hold at least one case/)
    expect(readQualification('{').kind).toBe('refused')
    expect(readQualification('[]').kind).toBe('refused')
  })

  it('is refused when a number is not finite', () => {
    expect(
      readQualification(
        JSON.stringify({ format: 'earths-on/qualification', version: 1, cases: [item] }).replace('0.01', '1e400'),
      ).kind,
    ).toBe('refused')
  })
})
