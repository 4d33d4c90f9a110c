/** What a pack may be written in: the kinds of rule with their parameters, the questions, and every name that counts. */
import { books } from './books'
import { commonParameters } from './checkPack'
import { ruleKinds } from './kinds'
import { nameKindOf, roles } from './language/checkParameters'
import { parts } from './language/link'
import type { NameKind, ParameterSpecs } from './language/parameterSpec'
import { patternParts } from './language/pattern'

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
  /** Of a pattern of acts: what of an act it can speak of by name, and of which names. */
  readonly pattern: ReadonlyMap<string, NameKind>
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
  pattern: new Map(patternParts.filter((it) => it !== 'values').map((it) => [it, nameKindOf(it)])),
}
