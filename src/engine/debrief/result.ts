/** What grading a run gives. Data only, no sentences. */
import type { Exposure, WorstExposure } from '../hazard/exposure'
import type { UnsolvedState } from '../hazard/sweep'
import type { Finding, Floor } from '../rules/finding'

export type { WorstExposure }

/** One fitted thing (an item, one clamp `lead/end`, `barrier`): the judged value per person with it and without it. */
export interface WithoutItem {
  readonly item: string
  readonly persons: readonly { readonly person: string; readonly withIt: number; readonly withoutIt: number }[]
}

/** One element of competency. Findings that were put right in time weigh as minor ones. */
export interface Mark {
  readonly element: string
  readonly criticals: number
  readonly majors: number
  readonly minors: number
  /** Rules that the run gave something to look at, and those of them that were kept. */
  readonly asked: number
  readonly kept: number
  /** Of the findings, those that something was left out. */
  readonly notDone: number
  /** Share of its minor rules, 1 where none was asked. */
  readonly minorsKept: number
  readonly floor: Required<Floor>
  readonly state: 'met' | 'not met' | 'not done' | 'not observed' | 'not judged'
}

export interface Result {
  readonly outcome: 'pass' | 'fail' | 'provisional'
  readonly findings: readonly Finding[]
  /** What the visible livening did, per person and path; null when none struck or its circuit could not be solved. */
  readonly visible: {
    readonly livening: string
    readonly at: number
    readonly exposures: readonly Exposure[]
    readonly duration: number
    readonly siteRise: number
    readonly liveCurrent: number
    readonly clearedBy: string
  } | null
  /** The livening that struck, where its kind is told in words alone: no number, and nothing left open. */
  readonly told?: { readonly livening: string; readonly at: number }
  /** The worst over all moments and livenings, per person and path, ordered. */
  readonly sweep: readonly WorstExposure[]
  readonly unsolved: readonly UnsolvedState[]
  readonly without: readonly WithoutItem[]
  /** Critical findings that stand; exposures over their limit in every corner, in some. */
  readonly gates: { readonly criticals: number; readonly above: number; readonly marginal: number }
  readonly marks: readonly Mark[]
  /** Share of the minor rules that were asked, 0 to 1. */
  readonly minorsKept: number
  readonly swept: { readonly states: number; readonly livenings: number; readonly corners: number }
  /** What a person has to judge: names of the program's words. */
  readonly notJudged: readonly string[]
}
