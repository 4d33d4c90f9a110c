/** Ids of a scenario as words, for people who read a table. */
import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { readWords } from '../files/words/read'
import { english, makeSpeaker, type Speaker } from '../text'
import { readText } from './input'

/** Without a words file the ids stay as they are. */
export function speakerOf(folder: string | undefined): Speaker {
  const place = folder === undefined ? undefined : join(folder, 'text.en.json')
  const read = place !== undefined && existsSync(place) ? readWords(readText(place)) : undefined
  return makeSpeaker(english, read?.ok ? read.value.words : {})
}

/** The word for an id, or the id. */
export function wordFor(speaker: Speaker, kind: string, id: string): string {
  const key = `${kind}.${id}`
  return speaker.has(key) ? speaker.say(key) : id
}
