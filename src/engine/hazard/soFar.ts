/** What a livening has done to everybody up to one of its own seconds: the story cut off there, for a picture of that second. */
import { isUnsolvable, type Unsolvable } from '../physics/network'
import type { Corner } from './corner'
import type { Exposure } from './exposure'
import type { LineStory } from './lineStory'
import { answersOf, lineOf, type LiveMoment } from './liven'
import { createSweepCache, type SweepCache } from './sweepCache'

/** Nobody has got anything at second 0. Nothing of it is graded: a limit is that of the time so far. */
export function exposuresUntil(
  moment: LiveMoment,
  livening: string,
  corner: Corner,
  second: number,
  cache: SweepCache = createSweepCache(),
): readonly Exposure[] | Unsolvable {
  const line = lineOf(moment.site, livening, corner, cache)
  if (isUnsolvable(line)) return line
  if (second <= 0) return []
  const cut = second < line.end ? cutAt(line, second) : line
  const exposures: Exposure[] = []
  for (const { answer } of answersOf(moment, cut, corner, cache)) {
    if (isUnsolvable(answer)) return answer
    if (answer.exposure !== null) exposures.push(answer.exposure)
  }
  return exposures
}

/** `cleared` says that its times are seconds, not that anything cleared it. */
function cutAt(line: LineStory, second: number): LineStory {
  const phases = line.phases
    .filter(({ from }) => from < second)
    .map((phase) => (phase.to > second ? { ...phase, to: second } : phase))
  return { ...line, key: `${line.key} until ${second}`, phases, end: second, cleared: true }
}
