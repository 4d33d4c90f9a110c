/**
 * The words of an employer: a pack's words stand before the program's and the scenario's. A key of theirs replaces that
 * sentence whole; `term.<as it is said here>` replaces a term in every other sentence, so that `term.earth lead` is
 * said wherever somebody wrote "earth lead". Longer terms win; a term is whole words; a term written small keeps the
 * large letter that it met. What stands between braces is never touched, but for the words that go with a count.
 */
import type { Words } from './words'

export interface Vocabulary {
  /** The employer's own sentence, if there is one. */
  readonly own: Words
  /** A sentence of somebody else's, in the employer's terms. */
  inTerms(sentence: string): string
}

const prefix = 'term.'

export const plainVocabulary: Vocabulary = { own: {}, inTerms: (sentence) => sentence }

export function vocabularyOf(own: Words): Vocabulary {
  const terms = new Map<string, string>()
  for (const [key, word] of Object.entries(own)) if (key.startsWith(prefix)) terms.set(key.slice(prefix.length), word)
  if (terms.size === 0) return { ...plainVocabulary, own }
  const longestFirst = [...terms.keys()].sort((a, b) => b.length - a.length || (a < b ? -1 : 1))
  const pattern = new RegExp(`\\{[^}]*\\}|(?<![\\p{L}-])(?:${longestFirst.map(escaped).join('|')})(?!\\p{L})`, 'giu')
  const known = new Map<string, string>()
  const translate = (sentence: string): string =>
    sentence.replace(pattern, (met) =>
      met.startsWith('{') ? met.replace(counted, countedInTerms) : termFor(terms, met),
    )
  const countedInTerms = (_: string, name: string, words: string): string => `{${name} ${translate(words)}}`
  return {
    own,
    inTerms(sentence) {
      const said = known.get(sentence) ?? translate(sentence)
      known.set(sentence, said)
      return said
    },
  }
}

/** A count with its words for one and for many. */
const counted = /^\{(\w+) (.+\|.+)\}$/

const escaped = (term: string): string => term.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')

/** As written; else the small term with the large letter that was met; else what was met, in capitals and the like. */
function termFor(terms: ReadonlyMap<string, string>, met: string): string {
  const same = terms.get(met)
  if (same !== undefined) return same
  const small = terms.get(met.slice(0, 1).toLowerCase() + met.slice(1))
  return small === undefined ? met : small.slice(0, 1).toUpperCase() + small.slice(1)
}
