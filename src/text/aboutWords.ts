/** A solved figure as it is written at things: about so much; what is less than can be told is not about it. */
import { english } from './en'
import { makeSay } from './makeSay'

const say = makeSay(english)

export const aboutWords = (figure: string): string => (figure.startsWith('<') ? figure : say('scene.about', { figure }))
