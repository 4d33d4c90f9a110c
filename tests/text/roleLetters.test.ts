/** Letters of the crew: common practice, no source, is that two people of one job are never written alike. */
import { expect, test } from 'vitest'
import { personLetters } from '../../src/text'
import { scenarioBase, scenarioSlugs } from '../support/record/shelf'

test.each(scenarioSlugs())('%s: everybody of the crew has letters of their own', (slug) => {
  const { crew } = scenarioBase(slug)
  const letters = crew.map(({ id }) => personLetters(crew, id))
  expect(new Set(letters).size).toBe(crew.length)
})

test('the first of a role has its letters alone, who comes after is counted, a stranger keeps the name', () => {
  const crew = [
    { id: 'a', role: 'person-in-charge' },
    { id: 'b', role: 'pole-worker' },
    { id: 'c', role: 'person-in-charge' },
  ] as const
  expect(['a', 'b', 'c', 'd'].map((id) => personLetters(crew, id))).toEqual(['PIC', 'PW', 'PIC\u00a02', 'd'])
})
