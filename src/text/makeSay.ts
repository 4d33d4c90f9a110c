/** `say` over a catalogue, typed: a key without words, or a placeholder without a value, does not compile. Said in the words of the open job. */
import { speakerOver } from './makeSpeaker'
import { spoken } from './spoken'
import type { PlaceholdersOf, WordValue, Words } from './words'

export function makeSay<const Catalogue extends Words>(catalogue: Catalogue) {
  const speaker = speakerOver(spoken, [catalogue])
  return <Key extends keyof Catalogue & string>(
    key: Key,
    ...values: [PlaceholdersOf<Catalogue[Key]>] extends [never]
      ? []
      : [Readonly<Record<PlaceholdersOf<Catalogue[Key]>, WordValue>>]
  ): string => speaker.say(key, values[0])
}
