/** What is looked at, in words: what came alive, and which values were taken. */
import { type Speaker, say } from '../../../text'

/** @param id of a livening; `none` is the supply as it was set */
export const liveningWords = (id: string, speaker: Speaker): string =>
  id === 'none' ? say('could.asSet') : speaker.say(`livening.${id}`)

/** `soil-low fixing-high` in words. */
export const cornerWords = (id: string, speaker: Speaker): string =>
  id
    .split(' ')
    .map((part) => speaker.say(`corner.${part}`))
    .join(', ')
