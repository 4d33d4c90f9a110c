// The cases of this folder, by family: each subfolder is one, what it shows is said in `families` below. The same files
// are what `npm run qualify` and the program's own page try.

import { describe, expect, it } from 'vitest'
import { qualifyCase } from '../../src/reports/qualification'
import { casesOf, expectMet, files, isOfSites, namedCases } from './caseFiles'

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

describe.each(files.filter((file) => !isOfSites(file)))('%s', (file) => {
  it.each(namedCases(file))('%s', (_id, item) => expectMet(item))
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
