/** What the grader is asked and answers. Plain data only: it crosses a thread. */
import type {
  Belief,
  Exposure,
  Feelers,
  FittedThing,
  GroundGrid,
  Instant,
  Order,
  Result,
  WithoutThing,
} from '../../engine'
import type { CircuitAnswer, CircuitChoice } from './circuitOf'
import type { JobHead } from '../stores/jobStore'

/** One livening at one moment, ready to be drawn. */
export interface DrawnLivening {
  readonly livening: string
  /** Job second of the moment. */
  readonly at: number
  readonly belief: Belief
  /** What everybody was at: postures follow it. */
  readonly doing: readonly {
    readonly who: string
    readonly act: string
    readonly thing: string | null
    readonly item: string | null
  }[]
  readonly instant: Instant
  readonly siteRise: number
  readonly liveCurrent: number
  readonly duration: number
  readonly clearedBy: string
  readonly exposures: readonly Exposure[]
  readonly grid: GroundGrid
  /** Volt at each point, row by row. */
  readonly volts: readonly number[]
}

/** Something taken away, soil or relay changed: what then reaches each person at that moment. */
export interface Supposition {
  readonly away: readonly FittedThing[]
  /** Factors on the declared value. */
  readonly soil: number
  readonly relay: number
}

export interface Graded {
  readonly result: Result
  readonly drawn: DrawnLivening | null
  readonly without: readonly WithoutThing[]
  readonly fitted: readonly FittedThing[]
  readonly engine: string
}

export interface Supposed {
  readonly exposures: readonly Exposure[]
  readonly siteRise: number
  readonly liveCurrent: number
  readonly duration: number
  readonly clearedBy: string
}

/** A question, or its answer, by number: what answers an older question is no longer wanted. */
export type Numbered<T> = T & { readonly number: number }

export type Question =
  /** Whatever is being worked on is wanted no longer. */
  | { readonly ask: 'stop' }
  | { readonly ask: 'grade'; readonly head: JobHead; readonly orders: readonly Order[] }
  | { readonly ask: 'draw'; readonly head: JobHead; readonly orders: readonly Order[]; readonly now: number }
  | {
      readonly ask: 'suppose'
      readonly head: JobHead
      readonly orders: readonly Order[]
      readonly at: number
      readonly livening: string
      readonly supposition: Supposition
    }
  | {
      readonly ask: 'circuit'
      readonly head: JobHead
      readonly orders: readonly Order[]
      readonly choice: CircuitChoice
    }
  | {
      readonly ask: 'feel'
      readonly head: JobHead
      readonly orders: readonly Order[]
      readonly at: number
      readonly livening: string
      readonly feelers: Feelers
    }

export type Answer =
  | { readonly tell: 'circuit'; readonly circuit: CircuitAnswer }
  /** Null: nothing to lay a hand on, or nothing worth a number. */
  | { readonly tell: 'felt'; readonly feelers: Feelers; readonly exposure: Exposure | null }
  | { readonly tell: 'progress'; readonly done: number; readonly total: number }
  | { readonly tell: 'graded'; readonly graded: Graded }
  | { readonly tell: 'drawn'; readonly drawn: DrawnLivening | null }
  | { readonly tell: 'supposed'; readonly supposed: Supposed | null }
  | { readonly tell: 'failed'; readonly reason: string }
