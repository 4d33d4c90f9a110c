/**
 * Every act, paragraph, row of gear, defect, event, exposure path and rule is carried by something, comes up in a recorded run or
 * in the place of one, and is tried by a test. The numbering is the procedure's (common practice, no source beyond it): 91
 * paragraphs, 45 rows of gear, 28 events, 22 paths.
 */
import { describe, expect, test } from 'vitest'
import { coverageRows, withoutOccasion } from '../../support/coverageRows'

const rows = coverageRows()
const kinds = ['actions', 'paragraphs', 'gear', 'defects', 'events', 'paths', 'rules'] as const

describe('what is exercised', () => {
  test('as many as the procedure has', () => {
    const counts = [rows.paragraphs, rows.gear, rows.events, rows.paths].map((it) => it.length)
    expect(counts).toEqual([91, 45, 28, 22])
  })

  test('what has no occasion has none: whoever makes one takes the excuse away', () => {
    const excused = rows.actions.filter(({ name }) => withoutOccasion[name] !== undefined)
    expect(excused.map(({ scenarios }) => scenarios)).toEqual(Object.keys(withoutOccasion).map(() => []))
  })

  test.each(kinds)('each of the %s is carried, comes up somewhere and is tried', (kind) => {
    const without = (part: 'by' | 'scenarios' | 'tests'): readonly string[] =>
      rows[kind].filter((it) => it[part].length === 0).map(({ name }) => name)
    expect(without('by')).toEqual([])
    expect(without('scenarios').filter((name) => withoutOccasion[name] === undefined)).toEqual([])
    expect(without('tests')).toEqual([])
  })
})
