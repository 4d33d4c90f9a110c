/** What the worker that shares out the worst exposure is asked and tells. Plain data only: it crosses a thread. */
import type { Chance, JudgedPerson, Order, Shares, Unsolvable, WorstExposure } from '../../engine'
import type { JobHead } from '../stores/jobStore'

export interface MatteredQuestion {
  readonly head: JobHead
  readonly orders: readonly Order[]
  /** As the sweep found them. */
  readonly worst: readonly WorstExposure[]
}

export type MatteredAnswer =
  /** Null: nothing reached anybody. */
  | { readonly tell: 'worst'; readonly worst: { readonly at: number; readonly whom: JudgedPerson } | null }
  | { readonly tell: 'shares'; readonly shares: Shares | Unsolvable }
  | { readonly tell: 'progress'; readonly done: number; readonly total: number }
  | { readonly tell: 'chance'; readonly chance: Chance | Unsolvable }
  | { readonly tell: 'failed'; readonly reason: string }
