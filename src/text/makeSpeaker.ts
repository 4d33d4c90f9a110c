/** Turns a key and its values into a sentence, from the pack's words, the program's own and those of the scenario. */
import { amperes, labelDate, metres, ohms, plain, seconds, timeOfDay, turns, twoFigures, volts } from './quantities'
import { plainVocabulary, type Vocabulary, vocabularyOf } from './vocabulary'
import type { WordValue, WordValues, Words } from './words'

export interface Speaker {
  /** The sentence; the key itself between angle brackets when nobody wrote words for it. */
  say(key: string, values?: WordValues): string
  has(key: string): boolean
}

const numberFormats: Readonly<Record<string, (value: number) => string>> = {
  V: volts,
  A: amperes,
  m: metres,
  s: seconds,
  ohm: ohms,
  turns,
  about: twoFigures,
  whole: (value) => plain(value, 0),
  plain: (value) => plain(value, 2),
  percent: (value) => `${twoFigures(value * 100)}\u00a0%`,
  time: timeOfDay,
}

/** Metres from the pole, and the point of the compass that less than nothing lies towards. */
const compass: Readonly<Record<string, readonly [string, string]>> = {
  east: ['where.east', 'where.west'],
  north: ['where.north', 'where.south'],
}

const placeholder = /\{(\w+)(?::(\w+)| ([^|}]+)\|([^}]+))?\}/g

/** A figure that is told as less than another is not about it. */
const aboutLess = /\babout ([<>])/gi

/** Which of the two words goes with a number, in the language of these catalogues. */
const plurals = new Intl.PluralRules('en')

/** `{count wire|wires}`: the number, and the word that goes with it. */
const counted = (value: WordValue | undefined, one: string, many: string): string =>
  `${typeof value === 'number' ? plain(value, 2) : (value ?? '–')} ${plurals.select(Number(value)) === 'one' ? one : many}`

/** Formats that look a name up: `{who:person}` is the sentence of `person.<who>`. */
const nameFormats = new Set([
  'person',
  'thing',
  'item',
  'gear',
  'livening',
  'action',
  'path',
  'element',
  'place',
  'value',
  'choice',
  'evidence',
  'limb',
])

/** @param catalogues searched in order; the first that has the key wins */
export const makeSpeaker = (...catalogues: readonly Words[]): Speaker => speakerOver(() => plainVocabulary, catalogues)

/** The same, with the employer's words before them and its terms in them. */
export function makeSpeakerOf(pack: Words, ...catalogues: readonly Words[]): Speaker {
  const vocabulary = vocabularyOf(pack)
  return speakerOver(() => vocabulary, catalogues)
}

/** @param vocabulary asked at each sentence, so that it may change between two */
export function speakerOver(vocabulary: () => Vocabulary, catalogues: readonly Words[]): Speaker {
  const find = (key: string): string | undefined => {
    const { own, inTerms } = vocabulary()
    if (Object.hasOwn(own, key)) return own[key]
    for (const words of catalogues) if (Object.hasOwn(words, key)) return inTerms(words[key]!)
    return undefined
  }
  const fill = (value: WordValue | undefined, format: string | undefined): string => {
    if (value === undefined) return '–'
    if (format === undefined) return typeof value === 'number' ? plain(value, 3) : String(value)
    if (format === 'date') return labelDate(String(value))
    if (nameFormats.has(format)) return named(format, String(value))
    if (format === 'permit') return permitWords(String(value))
    if (compass[format] && typeof value === 'number') return towards(value, compass[format])
    const write = numberFormats[format]
    return write && typeof value === 'number' ? write(value) : String(value)
  }
  /** The far end of a conductor with a jumper, and what hangs at the next pole, is named by the thing. */
  const named = (format: string, value: string): string => {
    const [whole, end] = value.split(/(\/far|@next)$/)
    return (
      find(`${format}.${value}`) ??
      (end === undefined ? value : say(end === '/far' ? 'thing.far-end' : 'thing.at-next-pole', { of: whole ?? value }))
    )
  }
  const towards = (value: number, [plus, minus]: readonly [string, string]): string =>
    `${metres(Math.abs(value))} ${say(value < 0 ? minus : plus)}`
  /** What a permit is for: its number (`#`), the pole, the points of isolation, its end (`@`, a second of the day). */
  const permitWords = (value: string): string => {
    const words = value.split(' ')
    const find = (sign: string): string | undefined => words.find((it) => it.startsWith(sign))?.slice(1)
    const [permit, until] = [find('#'), find('@')]
    const [pole = '', ...points] = words.filter((it) => !/^[#@]/.test(it))
    const [from = '', to = ''] = points
    const where =
      points.length === 2
        ? say('control.permit-limits', { number: pole, from, to })
        : say('control.permit-points', { number: pole, points: points.join(', ') })
    const bounded = until === undefined ? where : say('control.permit-ends', { limits: where, until: Number(until) })
    return permit === undefined ? bounded : say('control.permit-number', { number: permit, limits: bounded })
  }
  const say = (key: string, values: WordValues = {}): string => {
    const sentence = find(key)
    if (sentence === undefined)
      return /(\/far|@next)$/.test(key) ? fill(key.slice('thing.'.length), 'thing') : `⟨${key}⟩`
    return sentence
      .replace(placeholder, (_, name: string, format?: string, one?: string, many?: string) =>
        one === undefined ? fill(values[name], format) : counted(values[name], one, many ?? one),
      )
      .replace(aboutLess, '$1')
  }
  return { say, has: (key) => find(key) !== undefined }
}
