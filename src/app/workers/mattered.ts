/** What the worker that shares out the worst exposure is asked and tells. Plain data only: it crosses a thread. */
import type { Chance, Exposure, JudgedPerson, Order, Shares, Unsolvable, WorstExposure } from '../../engine'
import type { JobHead } from '../stores/jobStore'

/** Of whose exposures the largest is asked about. */
export interface Weighed {
  /** Of what came alive; they come before the worst. Empty where nothing did, or it reached nobody. */
  readonly happened: readonly Exposure[]
  /** As the sweep found them. */
  readonly worst: readonly WorstExposure[]
}

export interface MatteredQuestion extends Weighed {
  readonly head: JobHead
  readonly orders: readonly Order[]
}

export interface WeighedInstant {
  readonly at: number
  readonly whom: JudgedPerson
  /** False: the worst of what could have happened. */
  readonly didHappen: boolean
}

export type MatteredAnswer =
  /** Null: nothing reached anybody. */
  | { readonly tell: 'worst'; readonly worst: WeighedInstant | null }
  | { readonly tell: 'shares'; readonly shares: Shares | Unsolvable }
  | { readonly tell: 'progress'; readonly done: number; readonly total: number }
  | { readonly tell: 'chance'; readonly chance: Chance | Unsolvable }
  | { readonly tell: 'failed'; readonly reason: string }
