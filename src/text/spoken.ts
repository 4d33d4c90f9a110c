/** In whose words the program speaks now: those of the open job's pack. Set when a job is opened or left. */
import { plainVocabulary, vocabularyOf, type Vocabulary } from './vocabulary'
import type { Words } from './words'

let current: Vocabulary = plainVocabulary

export const spoken = (): Vocabulary => current

/** @param own the words of the pack; none: the program's own again */
export function speakAs(own: Words | null): void {
  if (own === current.own) return
  current = own === null ? plainVocabulary : vocabularyOf(own)
}
