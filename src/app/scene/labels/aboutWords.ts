/** A solved figure as it is written at things: about so much; what is less than can be told is not about it. */
import { say } from '../../../text'

export const aboutWords = (figure: string): string => (figure.startsWith('<') ? figure : say('scene.about', { figure }))
