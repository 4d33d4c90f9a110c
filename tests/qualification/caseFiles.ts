/** The case files of this folder, read, and the check that each test makes of a case. */
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect } from 'vitest'
import { readQualification } from '../../src/files/qualification/readQualification'
import { differences } from '../../src/reports/qualification/compare'
import { qualifyCase, type FindScenarioText, type QualificationCase } from '../../src/reports/qualification'

const folder = import.meta.dirname
const scenarios = join(folder, '../../scenarios')

/** `family/subject.json`, sorted. */
export const files = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.json'))
  .sort()

/** Cases of whole sites take long; they have a test file of their own. */
export function isOfSites(file: string): boolean {
  return file.startsWith('whole-sites/') || file.endsWith('/sites.json')
}

export function casesOf(file: string): readonly QualificationCase[] {
  const read = readQualification(readFileSync(join(folder, file), 'utf8'))
  if (!read.ok) throw new Error(`${file}: ${JSON.stringify(read.issues)}`)
  return read.value.cases
}

export function namedCases(file: string) {
  return casesOf(file).map((item) => [item.id, item] as const)
}

/** A check that cannot fail shows nothing: a figure half as large again must be noticed wherever it stands. */
export function expectMet(item: QualificationCase): void {
  const { reasons, values } = qualifyCase(item, findText)
  expect(reasons).toEqual([])
  for (const { path, expected, got } of values) {
    const wrong = typeof expected === 'string' ? `${expected}?` : expected === 0 ? 1 : expected * 1.5
    expect(differences({ [path]: got! }, { ...item, expected: { [path]: wrong } }), path).toHaveLength(1)
  }
}

const findText: FindScenarioText = (place) => {
  const file = join(scenarios, place)
  return existsSync(file) ? readFileSync(file, 'utf8') : undefined
}
