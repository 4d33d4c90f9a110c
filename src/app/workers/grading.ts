/** What the grader is asked and answers. Plain data only: it crosses a thread. */
import type {
  Belief,
  Exposure,
  Feelers,
  FittedThing,
  GroundGrid,
  GroundHazard,
  Instant,
  Order,
  Result,
  WithoutThing,
} from '../../engine'
import type { CircuitAnswer, CircuitChoice } from './circuitOf'
import type { JobHead } from '../stores/jobStore'
import type { ShownCase } from './shownCase'

/** What is drawn of one stretch of a livening. */
export interface StretchPicture {
  readonly instant: Instant
  readonly grid: GroundGrid
  /** Volt at each point, row by row. */
  readonly volts: readonly number[]
  /** Where a pace is too high, and from where on it is not. */
  readonly ground: GroundHazard
}

/** One livening at one moment, ready to be drawn; the picture is that of its start. */
export interface DrawnLivening extends StretchPicture, ShownCase {
  readonly belief: Belief
  /** What everybody was at: postures follow it. */
  readonly doing: readonly {
    readonly who: string
    readonly act: string
    readonly thing: string | null
    readonly item: string | null
  }[]
  readonly siteRise: number
  readonly liveCurrent: number
  readonly duration: number
  readonly clearedBy: string
  readonly exposures: readonly Exposure[]
  /** What two hands can be laid on. */
  readonly handholds: readonly string[]
}

/** Something taken away, soil or relay changed: what then reaches each person at that moment. */
export interface Supposition {
  readonly away: readonly FittedThing[]
  /** Factors on the declared value. */
  readonly soil: number
  readonly relay: number
}

/** The worst of everything that was tried: of which person, where and how, and what reached them there. */
export interface WorstCase {
  readonly of: ShownCase
  readonly exposure: Exposure
  /** Layers that may fail counted as failed. */
  readonly layers: 'hold' | 'fail'
}

export interface Graded {
  readonly result: Result
  readonly worst: WorstCase | null
  /** What struck; where nothing did, the worst case. */
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
      readonly of: ShownCase
      readonly supposition: Supposition
    }
  | {
      readonly ask: 'circuit'
      readonly head: JobHead
      readonly orders: readonly Order[]
      readonly choice: CircuitChoice
    }
  /** What has reached whom by a second of the livening; the picture of its stretch too, where it is wanted. */
  | {
      readonly ask: 'second'
      readonly head: JobHead
      readonly orders: readonly Order[]
      readonly of: ShownCase
      readonly second: number
      readonly index: number
      readonly hasPicture: boolean
    }
  | {
      readonly ask: 'feel'
      readonly head: JobHead
      readonly orders: readonly Order[]
      readonly of: ShownCase
      readonly feelers: Feelers
    }

export type Answer =
  | { readonly tell: 'circuit'; readonly circuit: CircuitAnswer }
  /** Null: nothing to lay a hand on, or nothing worth a number. */
  | { readonly tell: 'felt'; readonly feelers: Feelers; readonly exposure: Exposure | null }
  | {
      readonly tell: 'second'
      readonly second: number
      readonly index: number
      readonly soFar: readonly Exposure[]
      readonly picture: StretchPicture | null
    }
  | { readonly tell: 'progress'; readonly done: number; readonly total: number }
  | { readonly tell: 'graded'; readonly graded: Graded }
  | { readonly tell: 'drawn'; readonly drawn: DrawnLivening | null }
  | { readonly tell: 'supposed'; readonly supposed: Supposed | null }
  | { readonly tell: 'failed'; readonly reason: string }
