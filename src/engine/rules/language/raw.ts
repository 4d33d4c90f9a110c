/** What a kind reports before the pack's severity and the first-deviation rule are laid over it. */
import type { Entry } from '../../timeline/timeline'

export type Facts = Readonly<Record<string, string | number>>

export interface RawFinding {
  readonly at: number
  readonly who?: string
  /** Index of the act, -1 when the point is that it never took place. */
  readonly entry: number
  /** Item, lead, conductor or person it is about: deviations on the same one are one deviation until put right. */
  readonly subject: string
  /** Further acts of the same deviation: the one that came too late, the one that was turned with it. */
  readonly touches?: readonly number[]
  /** The subject is a member of the set that the rule was asked for: whose act it was makes no other deviation. */
  readonly isMember?: boolean
  readonly facts: Facts
}

/** A finding about an act that took place. */
export function aboutEntry(entry: Entry, subject: string, facts: Facts = {}): RawFinding {
  const { order } = entry
  return {
    at: entry.start,
    who: order.who,
    entry: entry.index,
    subject,
    facts: {
      who: order.who,
      do: order.do,
      ...(order.on === undefined ? {} : { on: order.on }),
      ...(order.with === undefined ? {} : { with: order.with }),
      ...facts,
    },
  }
}

/** A finding about an act that is missing: `at` is when it was needed. */
export function aboutMissing(at: number, subject: string, facts: Facts = {}): RawFinding {
  return { at, entry: -1, subject, facts }
}
