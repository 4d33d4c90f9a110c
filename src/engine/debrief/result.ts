/** What grading a run gives. Data only, no sentences. */
import type { Exposure, LimitVerdict } from '../hazard/exposure'
import type { Unsolvable } from '../physics/network'
import type { Finding } from '../rules/finding'

export interface WorstExposure {
  readonly person: string
  readonly path: string
  readonly verdict: LimitVerdict
  /** Job second of the moment, livening id (`none` = the supply as set). */
  readonly at: number
  readonly livening: string
  /** In the declared corner. */
  readonly exposure: Exposure
  /** Corner by corner: the value judged over its limit. */
  readonly ratios: Readonly<Record<string, number>>
}

export interface WithoutItem {
  readonly item: string
  /** Worst exposure per person at the visible (or worst) moment, with and without the item. */
  readonly persons: readonly { readonly person: string; readonly withIt: number; readonly withoutIt: number }[]
}

export interface Result {
  readonly outcome: 'pass' | 'fail' | 'provisional'
  readonly findings: readonly Finding[]
  /** What the visible livening did, per person and path; empty when none struck. */
  readonly visible: {
    readonly livening: string
    readonly at: number
    readonly exposures: readonly Exposure[]
    readonly duration: number
    readonly siteRise: number
    readonly liveCurrent: number
    readonly clearedBy: string
  } | null
  /** The worst over all moments and livenings, per person and path, ordered. */
  readonly sweep: readonly WorstExposure[]
  readonly unsolved: readonly (Unsolvable & { readonly at: number; readonly livening: string })[]
  readonly without: readonly WithoutItem[]
  readonly gates: { readonly criticals: number; readonly above: number; readonly marginal: number }
  readonly marks: readonly {
    readonly element: string
    readonly criticals: number
    readonly majors: number
    readonly minors: number
    readonly state: 'met' | 'not met' | 'not observed'
  }[]
  readonly swept: { readonly states: number; readonly livenings: number; readonly corners: number }
  readonly notJudged: readonly string[]
}
