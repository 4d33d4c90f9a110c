/**
 * A catalogue of words: key to sentence. A sentence may hold placeholders, `{name}` for a value as it is, or
 * `{name:format}` for a quantity, a time of day, or the name of a person, thing or item (formats in makeSpeaker.ts), or
 * `{name wire|wires}` for a count with its word, said for one and for any other number.
 */
export type Words = Readonly<Record<string, string>>

/** What a placeholder may be filled with. Quantities in SI units. */
export type WordValue = string | number | boolean

export type WordValues = Readonly<Record<string, WordValue>>

/** Names of the placeholders of a sentence, read off its literal type. */
export type PlaceholdersOf<Sentence extends string> = Sentence extends `${string}{${infer Inside}}${infer Rest}`
  ? (Inside extends `${infer Name}:${string}` | `${infer Name} ${string}` ? Name : Inside) | PlaceholdersOf<Rest>
  : never
