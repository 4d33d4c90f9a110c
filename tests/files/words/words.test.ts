import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { compareWords, readWords, type WordsFile } from '../../../src/files/words/read'
import { missingWords, wordsOfScenario } from '../../../src/files/words/needed'
import { marrowBendBase } from '../../support/marrowBend'
import { neutralWire } from '../../support/networks'

const english = (): WordsFile => {
  const read = readWords(readFileSync(new URL('../../../scenarios/marrow-bend/text.en.json', import.meta.url), 'utf8'))
  if (!read.ok) throw new Error(JSON.stringify(read.issues))
  return read.value
}

describe('words', () => {
  it('of the shipped scenario name everything that it has', () => {
    expect(missingWords(wordsOfScenario(marrowBendBase()), english())).toEqual([])
    const others = Object.fromEntries(Object.entries(english().words).filter(([key]) => key !== 'person.pw'))
    expect(missingWords(wordsOfScenario(marrowBendBase()), { language: 'en', words: others })).toEqual([
      { path: '$.words["person.pw"]', found: 'nothing', allowed: 'a sentence' },
    ])
  })

  it('of a network with a neutral wire name that too, and no blade where there is no conductor', () => {
    const base = marrowBendBase()
    const conductors = base.conductors.filter((it) => it.phase === 'B')
    const feeders = base.feeders.map((it) => (it.id === 'f1' ? { ...it, neutralWire } : it))
    const needed = wordsOfScenario({ ...base, conductors, feeders })
    expect(needed).toContain('thing.neutral')
    expect(needed.filter((it) => it.startsWith('thing.switch-27'))).toEqual(['thing.switch-27', 'thing.switch-27/B'])
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
