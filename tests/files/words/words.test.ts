import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { compareWords, readWords, type WordsFile } from '../../../src/files/words/read'
import { startSite } from '../../../src/engine'
import { marrowBend } from '../../support/marrowBend'

const english = (): WordsFile => {
  const read = readWords(readFileSync(new URL('../../../scenarios/marrow-bend/text.en.json', import.meta.url), 'utf8'))
  if (!read.ok) throw new Error(JSON.stringify(read.issues))
  return read.value
}

describe('words', () => {
  it('of the shipped scenario name everything that it has', () => {
    const { words } = english()
    const scenario = marrowBend()
    const site = startSite(scenario)
    const needed = [
      ...Object.keys(site.persons).map((id) => `person.${id}`),
      ...[
        ...scenario.conductors,
        ...scenario.lv.wires,
        ...scenario.feeders,
        ...scenario.switches,
        ...scenario.hazards,
      ].map((it) => `thing.${it.id}`),
      ...scenario.switches.flatMap((it) => ['A', 'B', 'C'].map((phase) => `thing.${it.id}/${phase}`)),
      ...scenario.livenings.map((it) => `livening.${it.id}`),
    ]
    expect(needed.filter((key) => words[key] === undefined)).toEqual([])
  })

  it('of another language have the same keys and placeholders', () => {
    const one: WordsFile = { language: 'en', words: { a: 'One {x} of {y:m}', b: 'Two', c: 'Three' } }
    const same: WordsFile = { language: 'fr', words: { a: '{y:m} et {x}', b: 'Deux', c: 'Trois' } }
    const other: WordsFile = { language: 'fr', words: { a: 'Un {z}', b: 'Deux', d: 'Quatre' } }
    expect(compareWords(one, same)).toEqual([])
    expect(compareWords(one, other)).toEqual([
      { path: '$.words["a"]', found: 'z', allowed: 'x, y' },
      { path: '$.words["c"]', found: 'nothing', allowed: 'the sentence in fr' },
      { path: '$.words["d"]', found: 'a key that en does not have', allowed: 'the same keys' },
    ])
  })

  it.each([
    {},
    { format: 'earths-on/words', version: 1, language: 'English', words: { a: 1 } },
    { format: 'earths-on/words', version: 2 },
  ])('refuses %j', (file) => {
    expect(readWords(JSON.stringify(file)).ok).toBe(false)
  })
})
