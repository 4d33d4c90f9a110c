/** A kind of rule: a general shape of demand. What exactly is demanded is in the pack's parameters. */
import type { Entry } from '../../timeline/timeline'
import type { NamedSet } from './each'
import type { ParameterSpecs } from './parameterSpec'
import type { PredicateBook } from './predicate'
import type { RawFinding } from './raw'
import type { RunView } from './runView'

/** A number read off the site at an act; undefined when there is nothing to measure. */
export interface Measure {
  readonly id: string
  readonly says: string
  readonly unit: 'metre' | 'millimetre2' | 'second' | 'none'
  measure(view: RunView, entry: Entry): number | undefined
}

/** What a statement of the crew is compared with: exactly these members, in any order. */
export interface Truth {
  readonly id: string
  readonly says: string
  right(view: RunView, entry: Entry): readonly (string | number)[]
  /** May be said too without harm. */
  alsoRight?(view: RunView, entry: Entry): readonly (string | number)[]
}

/** The names that parameters may use, looked up when a rule runs. */
export interface Books {
  readonly predicates: PredicateBook
  readonly measures: ReadonlyMap<string, Measure>
  readonly truths: ReadonlyMap<string, Truth>
  readonly sets: ReadonlyMap<string, NamedSet>
}

export interface RuleKind {
  readonly id: string
  readonly says: string
  readonly parameters: ParameterSpecs
  /** Asks for an order only: where a heavier rule finds fault with the same acts, that says it already. */
  readonly isSequence?: true
  /** Parameter whose acts are the occasions on which the rule is kept or broken. */
  readonly occasion?: string
  /** Parameter that names what must be done. */
  readonly wanted?: string
  find(view: RunView, parameters: Parameters, books: Books): readonly RawFinding[]
}

export type Parameters = Readonly<Record<string, unknown>>
