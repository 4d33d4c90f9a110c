/** Where a timeline stands, and where *go on* stops next. */
import { invariant } from '../units/invariant'
import type { Site } from '../site/site'
import type { OpenTimeline } from './fold'
import type { Timeline } from './timeline'

/** Job second of the last order: nothing can be ordered before it. */
export function clockOf(timeline: OpenTimeline): number {
  return timeline.resume.clock
}

/** The next end of an act or the livening's effect after a second; undefined when everybody is at rest. */
export function pauseAt(timeline: Timeline, after: number): number | undefined {
  const ends = timeline.entries.filter((entry) => entry.end > after).map((entry) => entry.end)
  const { struck } = timeline
  const effect = struck && struck.at + 1 > after ? [struck.at + 1] : []
  return ends.length + effect.length > 0 ? Math.min(...ends, ...effect) : undefined
}

/** The site as it is at a second: ends at that second applied. */
export function siteAt(timeline: Timeline, second: number): Site {
  const moment = timeline.moments.findLast((it) => it.from <= second)
  invariant(moment, 'a second of the run', second)
  return second > moment.to ? { ...timeline.end, time: second } : { ...moment.site, time: second }
}

/** Entries in progress at a second. */
export function busyAt(timeline: Timeline, second: number): readonly number[] {
  return timeline.entries.filter((entry) => entry.start <= second && second < entry.end).map((entry) => entry.index)
}
