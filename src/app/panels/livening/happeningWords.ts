/** What happens at a second of the livening, in a few words. */
import type { Happening } from '../../../engine'
import { plain, say } from '../../../text'
import type { Course } from '../../stores/course'

/** To a hundredth: a relay and its breaker lie closer than two figures tell. */
export const exactSeconds = (second: number): string => `${plain(second, second < 100 ? 2 : 1)}\u00a0s`

/** Of one second, in the order in which it came. */
export function wordsAt({ happenings, end, isCleared, stretches }: Course, second: number): readonly string[] {
  const words = happenings.filter(({ at }) => at === second).map(happeningWords)
  if (second === 0 && stretches[0]?.isLive) words.unshift(say('course.starts'))
  if (second === end) words.push(say(isCleared ? 'course.clears' : 'course.nothing'))
  return words
}

/** Of the first so many happenings: the last with its time, and what gave way. Null before the first. */
export function toldOf({ happenings }: Course, count: number) {
  const past = happenings.slice(0, count)
  const last = past[past.length - 1]
  if (!last) return null
  return {
    last: `${exactSeconds(last.at)} ${happeningWords(last)}`,
    gone: past.flatMap((it) =>
      it.what === 'lead-melts' || it.what === 'clamp-comes-off' || it.what === 'layer-fails'
        ? [{ of: it.of, person: it.what === 'layer-fails' ? it.person : null, words: happeningWords(it) }]
        : [],
    ),
  }
}

const relays = ['earth-fault', 'overcurrent', 'sensitive-earth-fault'] as const

function happeningWords(it: Happening): string {
  switch (it.what) {
    case 'relay-operates': {
      const name = relays.find((relay) => relay === it.by) ?? 'other'
      return say('course.relay-operates', { by: say(`course.by.${name}`) })
    }
    case 'clamp-comes-off':
      return say('course.clamp-comes-off', { of: it.of, end: endWords(it.end) })
    case 'lead-melts':
    case 'layer-fails':
      return say(`course.${it.what}`, { of: it.of })
    default:
      return say(`course.${it.what}`)
  }
}

const ends = ['earth', '1', '2', '3', 'metal', 'line'] as const

export function endWords(end: string): string {
  const known = ends.find((it) => it === end)
  return known ? say(`end.${known}`) : end
}
