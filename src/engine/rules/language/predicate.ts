/** What a rule may ask of the site: named questions, combined by `allOf`, `anyOf` and `not`. */
import { invariant } from '../../units/invariant'
import type { Entry, Moment } from '../../timeline/timeline'
import type { PersonId } from '../../site/scenario'
import type { Site } from '../../site/site'
import type { ParameterSpecs } from './parameterSpec'
import type { Facts } from './raw'
import type { RunView } from './runView'

export interface Scope {
  readonly view: RunView
  readonly site: Site
  /** Whom it is asked of; questions about a person need one. */
  readonly person?: PersonId
  readonly entry?: Entry
  readonly moment?: Moment
}

export interface SitePredicate {
  readonly id: string
  readonly says: string
  /** `person`: asked of one person at a time; `moment`: needs the contacts in force, so only while time passes. */
  readonly about: 'site' | 'person' | 'moment' | 'act'
  readonly takes: ParameterSpecs
  /** Undefined when it holds, else what was found instead. */
  fails(scope: Scope, given: Readonly<Record<string, unknown>>): Facts | undefined
}

export type PredicateCall =
  | string
  | ({ readonly is: string } & Readonly<Record<string, unknown>>)
  | { readonly not: PredicateCall }
  | { readonly allOf: readonly PredicateCall[] }
  | { readonly anyOf: readonly PredicateCall[] }

/** Looks up predicates by name; the registry is passed down so that this file knows none of them. */
export type PredicateBook = ReadonlyMap<string, SitePredicate>

/** Undefined when the call holds, else the facts of the first question that failed. */
export function whyNot(book: PredicateBook, call: PredicateCall, scope: Scope): Facts | undefined {
  if (typeof call === 'string') return ask(book, call, scope, {})
  if ('is' in call) return ask(book, call.is, scope, call)
  if ('not' in call) return whyNot(book, call.not, scope) === undefined ? {} : undefined
  if ('allOf' in call) return firstFailure(book, call.allOf, scope)
  const failures = call.anyOf.map((part) => whyNot(book, part, scope))
  return failures.includes(undefined) ? undefined : Object.assign({}, ...[...failures].reverse())
}

export function holds(book: PredicateBook, call: PredicateCall, scope: Scope): boolean {
  return whyNot(book, call, scope) === undefined
}

function firstFailure(book: PredicateBook, calls: readonly PredicateCall[], scope: Scope): Facts | undefined {
  for (const part of calls) {
    const failure = whyNot(book, part, scope)
    if (failure !== undefined) return failure
  }
  return undefined
}

function ask(
  book: PredicateBook,
  id: string,
  scope: Scope,
  given: Readonly<Record<string, unknown>>,
): Facts | undefined {
  const predicate = book.get(id)
  invariant(predicate !== undefined, 'a predicate that the pack check has let through', id)
  return predicate.fails(scope, given)
}
