/** What the worker that grades recorded runs anew is asked and tells. Plain data only: it crosses a thread. */
import type { Result, WorstExposure } from '../../engine'
import type { Issue } from '../../files/issue'

/** Texts to grade by; without a pack, each run's own from the shelf. */
export interface Edition {
  readonly scenario: string
  readonly pack?: string
}

export interface RegradeQuestion {
  readonly number: number
  /** Recorded runs by name; none: whatever is being worked on is wanted no longer. */
  readonly runs: Readonly<Record<string, string>>
  readonly before: Edition
  readonly now: Edition
  /** Only what happened, not what could have. */
  readonly isQuick?: boolean
}

/** What one run gave. */
export interface Regraded {
  readonly outcome: Result['outcome']
  /** Rules whose findings there are, one for each finding, in order. */
  readonly rules: readonly string[]
  /** False: only what happened was looked at so far, not what could have. */
  readonly isSwept: boolean
  readonly worst: WorstExposure | null
  readonly refused: number
}

/** A run that the edition cannot be played with, and why. */
export type RunAnswer = Regraded | { readonly issues: readonly Issue[] }

export interface RegradedRun {
  readonly name: string
  readonly before: RunAnswer
  readonly now: RunAnswer
}

export type RegradeAnswer =
  | { readonly tell: 'run'; readonly run: RegradedRun }
  | { readonly tell: 'progress'; readonly done: number; readonly total: number }
  | { readonly tell: 'done' }
  | { readonly tell: 'failed'; readonly reason: string }
