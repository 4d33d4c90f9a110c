/**
 * The words of an employer in place of the program's: terms by data, no word in code. Which words belong to which
 * vocabulary: common practice, no source.
 */
import { readFileSync } from 'node:fs'
import { afterEach, describe, expect, it } from 'vitest'
import { english, makeSpeakerOf, say, speakAs } from '../../src/text'
import { vocabularyOf } from '../../src/text/vocabulary'
import { shippedWords } from '../support/rules/recorded'

afterEach(() => speakAs(null))

describe('terms', () => {
  const inTerms = (terms: Readonly<Record<string, string>>, sentence: string): string =>
    vocabularyOf(Object.fromEntries(Object.entries(terms).map(([key, word]) => [`term.${key}`, word]))).inTerms(
      sentence,
    )

  it.each([
    ['a whole word, with the large letter that it met', { stay: 'guy' }, 'Stay and stay', 'Guy and guy'],
    ['no part of a word', { stay: 'guy', earth: 'ground' }, 'It stays; unearthed', 'It stays; unearthed'],
    ['the longest that fits', { earth: 'ground', 'earth lead': 'jumper' }, 'Earth lead to earth', 'Jumper to ground'],
    ['nothing between braces', { lead: 'jumper' }, '{lead:item} lead', '{lead:item} jumper'],
    ['the words of a count', { lead: 'jumper', leads: 'jumpers' }, '{lead lead|leads}', '{lead jumper|jumpers}'],
    [
      'a name only as it is written',
      { 'Earths On': 'Earths On', earths: 'grounds' },
      'Earths On, earths',
      'Earths On, grounds',
    ],
    ['a word before a hyphen, not after', { earth: 'ground' }, 'Earth-fault, off-earth', 'Ground-fault, off-earth'],
  ])('replace %s', (_what, terms, sentence, expected) => {
    expect(inTerms(terms, sentence)).toBe(expected)
  })
})

describe('a pack says the words of the program its way', () => {
  it('in the typed words of every sheet, until the job is left', () => {
    expect(say('refusal.no-permit')).toBe('No permit is held')
    speakAs(shippedWords('multi-ground'))
    expect(say('refusal.no-permit')).toBe('No clearance is held')
    expect(say('action.clamp')).toBe('Clamp ground lead with hot stick')
    expect(say('permit.returned')).toBe('clearance released')
    expect(say('app.name')).toBe('Earths On')
    speakAs(null)
    expect(say('refusal.no-permit')).toBe('No permit is held')
  })

  it('and in the names of the scenario, looked up inside a sentence too', () => {
    const speaker = makeSpeakerOf(shippedWords('multi-ground'), english, marrowBend())
    expect(speaker.say('thing.hazard-stay')).toBe('Guy and its anchor')
    expect(speaker.say('did.walk', { who: 'pw', of: 'truck' })).toBe('Lineworker walked to: Truck')
  })
})

/** What a vocabulary never says. */
const foreign: Readonly<Record<string, RegExp>> = {
  'multi-ground':
    /\b(earth(s|ed|ing)?|unearthed|stay anchor|the stay|permit|operating stick|metres?|colour|guards?)\b/i,
  'two-earths': /\b(earth leads?|truck|control room|operating stick|tag|guy|clearance)\b/i,
}

/** Sentences that say such a word on purpose, each with why. */
const allowed: Readonly<Record<string, readonly string[]>> = {
  // Titles of the program itself.
  'multi-ground': ['app.name', 'banner.aside'],
  'two-earths': [],
}

describe.each(Object.keys(foreign))('no mixed vocabulary under %s', (pack) => {
  const own = shippedWords(pack)
  const speaker = makeSpeakerOf(own, english, marrowBend())
  // Placeholders are filled with names, which are looked at as sentences of their own.
  const said = [...Object.keys(english), ...Object.keys(marrowBend()), ...Object.keys(own)]
    .filter((key) => !key.startsWith('term.') && !key.startsWith('netlist.'))
    .map((key) => [key, (own[key] ?? speaker.say(key)).replace(/[{][^}]*[}]/g, '')] as const)

  it('on any sheet: program, scenario and rules', () => {
    expect(said.length).toBeGreaterThan(900)
    const mixed = said.filter(([key, sentence]) => foreign[pack]!.test(sentence) && !allowed[pack]!.includes(key))
    expect(mixed.map(([key, sentence]) => `${key}: ${sentence}`)).toEqual([])
  })
})

function marrowBend(): Readonly<Record<string, string>> {
  const text = readFileSync(new URL('../../scenarios/marrow-bend/text.en.json', import.meta.url), 'utf8')
  return (JSON.parse(text) as { words: Record<string, string> }).words
}
