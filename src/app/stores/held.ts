/**
 * The truth of the open job, closed away: the timeline as it really is. Nothing that draws or speaks imports this file;
 * the stores beside it hand out belief, refusals of the world, and what was ordered.
 */
import { type OpenTimeline, type Scenario, type Site, siteAt } from '../../engine'

export interface Held {
  readonly scenario: Scenario
  readonly timeline: OpenTimeline
  /** Job second of the trainee: the clock stands while they think. */
  readonly now: number
}

let held: Held | null = null
let past: readonly Held[] = []

export function hold(next: Held | null, before: readonly Held[] = []): void {
  held = next
  past = before
}

export function requireHeld(): Held {
  if (!held) throw new Error('expected an open job, got none')
  return held
}

/** Remembers what was, so that it can be taken back. */
export function advance(next: Held): void {
  past = [...past, requireHeld()]
  held = next
}

/** The clock alone is no step to take back. */
export function moveClock(now: number): void {
  held = { ...requireHeld(), now }
}

/** Back to where so many orders had been given. */
export function takeBackTo(orders: number): boolean {
  const index = past.findLastIndex((it) => it.timeline.entries.length <= orders)
  const found = past[index]
  if (!found) return false
  past = past.slice(0, index)
  held = found
  return true
}

/** What is so at the trainee's second; acts in progress have not been done yet. */
export const siteNow = ({ timeline, now }: Held): Site => siteAt(timeline, now)
