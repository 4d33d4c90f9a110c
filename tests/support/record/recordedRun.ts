/** A run that lies beside a scenario: what is drawn for it, and what its crew does differently from one that errs in nothing. */
import type { Conduct } from '../../../src/engine'

export interface RecordedRun {
  readonly name: string
  readonly seed: number
  readonly purpose?: 'practise' | 'assess'
  /** Whose rules it is played and graded by. */
  readonly pack: string
  /** By whose rules its crew works, where it is graded by others. */
  readonly worksBy?: string
  /** In one sentence, for whoever reviews the recordings. */
  readonly about: string
  /** Left out: everything right. Made anew for each recording: a piece may count what it has seen. */
  conduct?(): Conduct
}
