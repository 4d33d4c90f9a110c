/** `earths-on/words`: key to sentence with named placeholders, one file per language. */
import * as v from 'valibot'
import { checkHead } from '../head'
import type { Issue, Read } from '../issue'
import { readJson } from '../json/readJson'
import { parse } from '../parse'
import { choice, numberChoice, record, shape, text } from '../shape'

export const wordsFormat = 'earths-on/words'
const wordsVersion = 1

export interface WordsFile {
  readonly language: string
  readonly words: Readonly<Record<string, string>>
}

const language = 'a language tag, like en or en-NZ'

export const wordsSchema = v.pipe(
  shape({
    format: choice(wordsFormat),
    version: numberChoice(wordsVersion),
    language: v.pipe(v.string(language), v.regex(/^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$/, language)),
    words: record(text(2000), 'keys with a sentence each'),
  }),
  v.transform(({ language, words }): WordsFile => ({ language, words })),
) as v.GenericSchema<unknown, WordsFile>

export function readWords(source: string): Read<WordsFile> {
  const json = readJson(source)
  if (!json.ok) return json
  const head = checkHead(json.value, { format: wordsFormat, version: wordsVersion })
  return head.ok ? parse(wordsSchema, head.value) : head
}

/** Another language must have the same keys, with the same placeholders. */
export function compareWords(reference: WordsFile, other: WordsFile): readonly Issue[] {
  const keys = [...new Set([...Object.keys(reference.words), ...Object.keys(other.words)])].sort()
  return keys.flatMap((key) => {
    const path = `$.words[${JSON.stringify(key)}]`
    const [here, there] = [reference.words[key], other.words[key]]
    if (there === undefined) return [{ path, found: 'nothing', allowed: `the sentence in ${other.language}` }]
    if (here === undefined)
      return [{ path, found: `a key that ${reference.language} does not have`, allowed: 'the same keys' }]
    const [wanted, got] = [placeholders(here), placeholders(there)]
    return wanted === got ? [] : [{ path, found: got || 'no placeholder', allowed: wanted || 'no placeholder' }]
  })
}

function placeholders(sentence: string): string {
  return [...new Set([...sentence.matchAll(/\{(\w+)(?::\w+| [^|}]+\|[^}]+)?\}/g)].map((it) => it[1] ?? ''))]
    .sort()
    .join(', ')
}
