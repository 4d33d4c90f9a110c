import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { readQualification } from '../../src/files/qualification/readQualification'
import { qualifyCase, type QualificationCase } from '../../src/reports/qualification'

const folder = import.meta.dirname
const files = readdirSync(folder).filter((name) => name.endsWith('.json'))

function casesOf(file: string): readonly QualificationCase[] {
  const read = readQualification(readFileSync(join(folder, file), 'utf8'))
  if (!read.ok) throw new Error(`${file}: ${JSON.stringify(read.issues)}`)
  return read.value.cases
}

describe.each(files)('%s', (file) => {
  it.each(casesOf(file).map((item) => [item.id, item] as const))('%s', (_id, item) => {
    expect(qualifyCase(item).reasons).toEqual([])
  })
})

describe('the set of cases', () => {
  const cases = files.flatMap(casesOf)

  it('uses each id once', () => {
    expect(cases.map(({ id }) => id)).toHaveLength(new Set(cases.map(({ id }) => id)).size)
  })

  it('covers every model of the format', () => {
    const models = [
      'body-impedance',
      'conductor',
      'electrode-system',
      'fuse',
      'insulation',
      'lead-heating',
      'lead-shots',
      'line-constants',
      'line-coupling',
      'network',
      'protection',
      'relay-travel',
      'shock-zone',
      'tolerable',
    ]
    expect([...new Set(cases.map(({ model }) => model))].sort()).toEqual(models)
  })

  // A check that cannot fail shows nothing: a figure half as large again must be noticed wherever it stands.
  it.each(cases.map((item) => [item.id, item] as const))('would notice a wrong figure in %s', (_id, item) => {
    for (const path of Object.keys(item.expected)) {
      const right = item.expected[path]!
      const wrong = typeof right === 'string' ? `${right}?` : right === 0 ? 1 : right * 1.5
      expect(qualifyCase({ ...item, expected: { ...item.expected, [path]: wrong } }).passed).toBe(false)
    }
  })
})
