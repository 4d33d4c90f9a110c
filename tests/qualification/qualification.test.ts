// The cases of this folder, by family: each subfolder is one, what it shows is said in `families` below. The same files
// are what `npm run qualify` and the program's own page try.

import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { readQualification } from '../../src/files/qualification/readQualification'
import { differences } from '../../src/reports/qualification/compare'
import { qualifyCase, type FindScenarioText, type QualificationCase } from '../../src/reports/qualification'

const folder = import.meta.dirname
const scenarios = join(folder, '../../scenarios')
const files = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.json'))
  .sort()

/** What a family shows, and the fewest cases that it has. */
const families: Readonly<Record<string, { readonly shows: string; readonly least: number }>> = {
  'exact-circuit': { shows: 'circuits worked by hand', least: 30 },
  'exact-field': { shows: 'ground with a closed form', least: 12 },
  'numeric-field': { shows: 'another program, and the order at which pieces and images converge', least: 20 },
  published: { shows: 'figures of standards and handbooks', least: 200 },
  limits: { shows: 'what must come out at the edge of a formula', least: 35 },
  invariants: { shows: 'the same thing said in two ways', least: 10 },
  traps: { shows: 'where common belief is wrong', least: 15 },
  conditioning: { shows: 'no number where there is no answer', least: 12 },
  timing: { shows: 'what ends it, and when', least: 20 },
  decisions: { shows: 'verdicts below, marginal, above', least: 8 },
  'whole-sites': { shows: 'everything together, worked by hand', least: 12 },
}

const findText: FindScenarioText = (place) => {
  const file = join(scenarios, place)
  return existsSync(file) ? readFileSync(file, 'utf8') : undefined
}

function casesOf(file: string): readonly QualificationCase[] {
  const read = readQualification(readFileSync(join(folder, file), 'utf8'))
  if (!read.ok) throw new Error(`${file}: ${JSON.stringify(read.issues)}`)
  return read.value.cases
}

describe.each(files)('%s', (file) => {
  it.each(casesOf(file).map((item) => [item.id, item] as const))('%s', (_id, item) => {
    const { reasons, values } = qualifyCase(item, findText)
    expect(reasons).toEqual([])
    // A check that cannot fail shows nothing: a figure half as large again must be noticed wherever it stands.
    for (const { path, expected, got } of values) {
      const wrong = typeof expected === 'string' ? `${expected}?` : expected === 0 ? 1 : expected * 1.5
      expect(differences({ [path]: got! }, { ...item, expected: { [path]: wrong } }), path).toHaveLength(1)
    }
  })
})

describe('the set of cases', () => {
  const cases = files.flatMap(casesOf)

  it('uses each id once', () => {
    expect(cases.map(({ id }) => id)).toHaveLength(new Set(cases.map(({ id }) => id)).size)
  })

  it.each(Object.entries(families))('%s', (family, { least }) => {
    const own = files.filter((file) => file.startsWith(`${family}/`)).flatMap(casesOf)
    expect(own.length).toBeGreaterThanOrEqual(least)
  })

  it('has no case outside a family', () => {
    expect([...new Set(files.map((file) => file.split('/')[0]))].sort()).toEqual(Object.keys(families).sort())
  })

  it('covers every model of the format', () => {
    const used = [...new Set(cases.map(({ model }) => model))].sort()
    const unknown = qualifyCase({ ...cases[0]!, model: 'none' }).reasons[0]!
    expect(used.join(', ')).toBe(unknown.slice(unknown.indexOf('are ') + 4))
  })
})
