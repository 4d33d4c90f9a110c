/**
 * Every paragraph, row of gear, event, exposure path and rule is carried by something, and named by a test. The numbering is
 * the procedure's (common practice, no source beyond it): 91 paragraphs, 45 rows of gear, 28 events, 22 paths.
 */
import { describe, expect, test } from 'vitest'
import { coverageRows } from '../../support/coverageRows'

const rows = coverageRows(false)
const names = (kind: keyof typeof rows, part: 'by' | 'tests'): readonly string[] =>
  rows[kind].filter((it) => it[part].length === 0).map(({ name }) => name)

describe('what is exercised', () => {
  test('as many as the procedure has', () => {
    const counts = [rows.paragraphs, rows.gear, rows.events, rows.paths].map((it) => it.length)
    expect(counts).toEqual([91, 45, 28, 22])
  })

  test.each(['paragraphs', 'gear', 'events', 'paths', 'rules'] as const)(
    'each of the %s is carried and tried',
    (kind) => {
      expect(names(kind, 'by')).toEqual([])
      expect(names(kind, 'tests')).toEqual([])
    },
  )
})
