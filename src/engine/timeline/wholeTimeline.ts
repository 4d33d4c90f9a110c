/**
 * A run that begins at a part, with what prepared its site laid before it: one timeline, as rules read it. Acts and
 * moments are counted through; what can strike struck in the run itself.
 */
import type { Entry, Moment, Timeline } from './timeline'

/** @returns the run itself where nothing was prepared */
export function wholeTimeline(timeline: Timeline): Timeline {
  const { prepared, entries, moments, struck } = timeline
  if (prepared === undefined) return timeline
  const acts = prepared.entries.length
  // The last moment of a run is the rest after it: here the run itself goes on.
  const before = prepared.moments.slice(0, -1)
  return {
    ...timeline,
    entries: [...prepared.entries, ...entries.map((it): Entry => ({ ...it, index: it.index + acts }))],
    moments: [...before, ...moments.map((it): Moment => ({ ...it, busy: it.busy.map((index) => index + acts) }))],
    struck: struck && { ...struck, moment: struck.moment + before.length },
  }
}
