/** What the worker that does the whole job is asked and tells. Plain data only: it crosses a thread. */
import type { Order, Part } from '../../engine'
import type { JobHead } from '../stores/jobStore'

export interface ShownJob {
  readonly orders: readonly Order[]
  /** How many orders come before each part of the job that it gets to, in order. */
  readonly openings: readonly { readonly part: Part; readonly orders: number }[]
  /** Why the work was declined and everything handed back; null: it was done. */
  readonly declined: { readonly why: string; readonly about: string } | null
}

export interface ShowQuestion {
  readonly head: JobHead
}

export type ShowAnswer =
  | { readonly tell: 'job'; readonly job: ShownJob }
  /** Of orders from this one on: the rule that each answers first; null: none asks for it. */
  | { readonly tell: 'reasons'; readonly from: number; readonly rules: readonly (string | null)[] }
  | { readonly tell: 'failed'; readonly reason: string }
