/** Who is there, and who is in charge. Common practice, no source. */
import { describe, expect, test } from 'vitest'
import { believe, bodiesAt } from '../../../src/engine'
import { done } from '../../support/cleanStages'
import { withRelief } from './shiftCases'

describe('somebody of the next shift', () => {
  test('is touched by nothing, counted by nobody and not in the picture before coming', () => {
    const site = withRelief(90_000)
    expect(bodiesAt(site).map((it) => it.person)).not.toContain('pic-2')
    expect(believe(site).persons.find((it) => it.id === 'pic-2')?.isHere).toBe(false)
    expect(done(site, 'pic', 'head-count').evidence.at(-1)?.values['crew']).toBe(4)
    const there = withRelief(0)
    expect(bodiesAt(there).map((it) => it.person)).toContain('pic-2')
    expect(done(there, 'pic', 'head-count').evidence.at(-1)?.values['crew']).toBe(5)
  })

  test('has no briefing who was not there for it', () => {
    const briefed = done(withRelief(90_000), 'pic', 'hold-briefing')
    expect(briefed.persons['pic-2']?.briefed).toBe(false)
    expect(done(withRelief(0), 'pic', 'hold-briefing').persons['pic-2']?.briefed).toBe(true)
  })

  test('is in charge from the hand-over on, not before', () => {
    const site = withRelief(0)
    expect(believe(site).inCharge).toBe('pic')
    const handed = done(site, 'pic', 'hand-over-charge', { on: 'charge', values: { next: 'pic-2', papers: [] } })
    expect(believe(handed).inCharge).toBe('pic-2')
  })
})
