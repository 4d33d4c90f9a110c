/** The words files of a folder: English is there, and every other language says the same with the same placeholders. */
import { join } from 'node:path'
import { missingWords } from '../files/words/needed'
import { compareWords, readWords, type WordsFile } from '../files/words/read'
import { folderEntries, issueLine, readText, type Gathered } from './input'

/**
 * @param needed keys that there must be
 * @returns the files that were read
 */
export function checkWordsOf(folder: string, needed: readonly string[], gathered: Gathered): readonly string[] {
  const files = folderEntries(folder).filter((name) => /^text\.[A-Za-z-]+\.json$/.test(name))
  const read = files.flatMap((name) => {
    const place = join(folder, name)
    const words = gathered.take(place, () => readWords(readText(place)))
    return words ? [{ place, name, words }] : []
  })
  const english = read.find(({ name }) => name === 'text.en.json')
  if (english === undefined && !files.includes('text.en.json')) {
    gathered.lines.push(`${join(folder, 'text.en.json')}: found nothing; allowed: the words in English`)
  }
  if (english) {
    const missing = missingWords(needed, english.words)
    gathered.lines.push(...missing.map((issue) => issueLine(english.place, issue)))
  }
  for (const { place, name, words } of read) gathered.lines.push(...faultsOf(place, name, words, english?.words))
  return read.map(({ place }) => place)
}

function faultsOf(place: string, name: string, words: WordsFile, english: WordsFile | undefined): readonly string[] {
  const own =
    name === `text.${words.language}.json`
      ? []
      : [
          issueLine(place, {
            path: '$.language',
            found: words.language,
            allowed: 'the language of the name of the file',
          }),
        ]
  return [...own, ...(english ? compareWords(english, words) : []).map((issue) => issueLine(place, issue))]
}
