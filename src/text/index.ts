/** The program's words, all of them. */
import { english } from './en'
import { makeSay } from './makeSay'

export { english } from './en'
export { exposureTime } from './exposureTime'
export { aboutWords } from './aboutWords'
export { feltWords } from './feltWords'
export { generalPart } from './generalPart'
export { heartWords } from './heartWords'
export { makeSpeaker, makeSpeakerOf, type Speaker } from './makeSpeaker'
export * from './quantities'
export { personLetters, roleLetters } from './roleLetters'
export { speakAs } from './spoken'
export { spotWords } from './spotWords'
export { verdictWords } from './verdictWords'
export type { Words } from './words'

export type WordKey = keyof typeof english

export const say = makeSay(english)
