/** What every livening in every corner does to everybody in one state of a run, without the time it was met. */
import type { Unsolvable } from '../physics/network'
import type { WorstExposure } from './exposure'

export interface StateAnswer {
  readonly exposures: readonly Omit<WorstExposure, 'at'>[]
  readonly unsolved: readonly (Unsolvable & { readonly livening: string; readonly corner: string })[]
}
