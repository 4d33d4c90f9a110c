/** One row of the tables of rules: an edit of a recorded run that breaks the rule, and the nearest one that keeps it. */
import type { Pack, Scenario } from '../../../src/engine'
import type { Edit } from './edits'

export interface CaseRun {
  readonly edit: Edit
  /** Which run is edited; the clean recording unless said. */
  readonly of?: 'clean' | 'clean-livened' | 'two-earths' | 'bucket'
  /** Hidden defects, by item, beside those of the recording. */
  readonly defects?: Readonly<Record<string, string>>
  /** What the label says instead, by item. */
  readonly labels?: Readonly<Record<string, Readonly<Record<string, string | number>>>>
  /** Blades that hang when the supply switch opens. */
  readonly hung?: readonly ('A' | 'B' | 'C')[]
  readonly pack?: Partial<Pack>
  /** The place with something else in it. */
  readonly place?: (scenario: Scenario) => Scenario
}

export type RuleCases = Readonly<Record<string, { readonly breaks: Edit | CaseRun; readonly near: Edit | CaseRun }>>
