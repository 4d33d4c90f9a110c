/** What rules and the hazard engine read: the run laid out in time. Made by runTimeline (fold.ts). */
import type { Order, Refusal } from '../actions/action'
import type { Body } from '../site/contact'
import type { Scenario } from '../site/scenario'
import type { Site } from '../site/site'

export interface Entry {
  /** Place in the run's list, from 0. */
  readonly index: number
  readonly order: Order
  readonly outcome: 'done' | 'refused' | 'withdrawn'
  readonly refusal?: Refusal
  readonly start: number
  readonly end: number
  /** Site when it started and when it had been applied (the same object when refused). */
  readonly before: Site
  readonly after: Site
}

/** A stretch of time in which neither the site nor any contact changes. */
export interface Moment {
  readonly from: number
  readonly to: number
  readonly site: Site
  /** Entries (indices) in progress. */
  readonly busy: readonly number[]
  readonly bodies: readonly Body[]
  /** The same site with the joints that acts in progress make or break already changed: the moment is in all of them. */
  readonly also?: readonly Site[]
}

export interface Timeline {
  readonly scenario: Scenario
  readonly entries: readonly Entry[]
  readonly moments: readonly Moment[]
  readonly end: Site
  /** The visible livening, if it struck: which moment it struck in. */
  readonly struck: { readonly livening: string; readonly at: number; readonly moment: number } | null
  /** The trigger was drawn but its cause had been removed. */
  readonly prevented: { readonly livening: string; readonly why: string } | null
  /** Of a run that begins at a part: what prepared its site. Rules know that it was done; nothing of it is graded. */
  readonly prepared?: Timeline
}
