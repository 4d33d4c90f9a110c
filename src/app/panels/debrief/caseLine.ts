/** When, what came or could have come alive, and with which values, in one line. */
import type { Belief } from '../../../engine'
import { type Speaker, say, timeOfDay } from '../../../text'
import type { ShownCase } from '../../workers/shownCase'
import { cornerWords, liveningWords } from '../livening/caseWords'

export function caseLine({ at, livening, corner }: ShownCase, belief: Belief, speaker: Speaker): string {
  const told = {
    time: timeOfDay(belief.sheet.startsAt + at).slice(0, 5),
    what: liveningWords(livening, speaker),
  }
  if (corner === 'declared') return say('case.asStated', told)
  return say('case.in', { ...told, corner: cornerWords(corner, speaker) })
}
