/**
 * Every paragraph of the trade from A01 to A91 is carried by an action, or it says why this site has no such act. The
 * numbering is the procedure's (common practice, no source beyond it).
 */
import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { actions } from '../../../src/engine'
import { actionsFor, coverageTable, notOfThisSite, paragraphs } from '../../support/coverage'
import { recorded } from '../../support/cleanStages'

describe('the job, paragraph by paragraph', () => {
  test.each(paragraphs)('%s is carried by an action or not of this site', (paragraph) => {
    const isCarried = actionsFor(paragraph).length > 0
    const reason = notOfThisSite[paragraph]
    expect(isCarried || reason !== undefined).toBe(true)
    expect(isCarried && reason !== undefined, `${paragraph} is carried and excused`).toBe(false)
  })

  test('actions name paragraphs that exist, and each names one', () => {
    const named = [...actions.values()].flatMap((action) => action.covers)
    expect(named.filter((it) => !paragraphs.includes(it))).toEqual([])
    expect([...actions.values()].filter((action) => action.covers.length === 0)).toEqual([])
  })

  test('the table beside the scenario is up to date', () => {
    const file = new URL('../../../scenarios/marrow-bend/coverage.md', import.meta.url)
    expect(readFileSync(file, 'utf8')).toBe(coverageTable())
  })

  test('at least 45 actions', () => expect(actions.size).toBeGreaterThanOrEqual(45))

  test('what the clean run does carries A23 to A89, but for what only goes wrong or is not of this site', () => {
    const done = new Set(recorded('clean').entries.map((it) => it.order.do))
    const carried = new Set([...actions.values()].filter((it) => done.has(it.id)).flatMap((it) => it.covers))
    const missing = paragraphs.slice(22, 89).filter((it) => !carried.has(it) && notOfThisSite[it] === undefined)
    // A74 is a break, which the clean run has none of; A77 the response, which the clean-livened run shows.
    expect(missing).toEqual(['A74', 'A77'])
    const livened = new Set(recorded('clean-livened').entries.map((it) => it.order.do))
    expect(actionsFor('A77').filter((id) => livened.has(id))).toEqual(['keep-still', 'call-control', 'ask-source-off'])
  })
})
