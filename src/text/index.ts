/** The program's words. `say` is typed: a key without words, or a placeholder without a value, does not compile. */
import { english } from './en'
import { makeSpeaker } from './makeSpeaker'
import type { PlaceholdersOf, WordValue } from './words'

export { english } from './en'
export { makeSpeaker, type Speaker } from './makeSpeaker'
export * from './quantities'
export type { WordValue, Words } from './words'

export type WordKey = keyof typeof english

type Needed<Key extends WordKey> = PlaceholdersOf<(typeof english)[Key]>

const own = makeSpeaker(english)

export function say<Key extends WordKey>(
  key: Key,
  ...values: [Needed<Key>] extends [never] ? [] : [Readonly<Record<Needed<Key>, WordValue>>]
): string {
  return own.say(key, values[0])
}
