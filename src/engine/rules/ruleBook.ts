/** What a pack may be written in: the kinds of rule with their parameters, the questions, and every name that counts. */
import { books } from './books'
import { commonParameters } from './checkPack'
import { ruleKinds } from './kinds'
import { roles } from './language/checkParameters'
import { parts } from './language/link'
import type { ParameterSpecs } from './language/parameterSpec'

export interface RuleBook {
  readonly kinds: ReadonlyMap<string, { readonly says: string; readonly parameters: ParameterSpecs }>
  /** Parameters that a rule of any kind may carry. */
  readonly common: ParameterSpecs
  /** What is asked of whom, and the parameters of the question. */
  readonly questions: ReadonlyMap<
    string,
    {
      readonly says: string
      readonly about: 'site' | 'person' | 'moment' | 'act'
      readonly takes: ParameterSpecs
    }
  >
  readonly measures: readonly string[]
  readonly truths: readonly string[]
  readonly sets: readonly string[]
  readonly roles: readonly string[]
  /** Of an act: what two acts may have in common. */
  readonly parts: readonly string[]
}

export const ruleBook: RuleBook = {
  kinds: ruleKinds,
  common: commonParameters,
  questions: books.predicates,
  measures: [...books.measures.keys()],
  truths: [...books.truths.keys()],
  sets: [...books.sets.keys()],
  roles,
  parts,
}
