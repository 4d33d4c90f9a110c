/** Compares the parameters of a rule with the description of its kind. */
import { matchesName } from './glob'
import type { Books } from './kind'
import { parts } from './link'
import { patternParts } from './pattern'
import type { NameKind, PackIssue, ParameterSpec, ParameterSpecs } from './parameterSpec'

/** Names that exist in this program: which a pattern may speak of. */
export interface Vocabulary {
  readonly actions: readonly string[]
  readonly gearTypes: readonly string[]
  readonly rules?: readonly string[]
  /** What each act takes: the types of gear it is done with, if with any, and the names of its values. */
  readonly takes?: ReadonlyMap<string, { readonly withTypes?: readonly string[]; readonly values: readonly string[] }>
}

export const roles = ['person-in-charge', 'pole-worker', 'ground-worker', 'switching-operator'] as const

interface Check {
  readonly vocabulary: Vocabulary
  readonly books: Books
  readonly issues: PackIssue[]
}

type Bag = Readonly<Record<string, unknown>>

export function checkParameters(
  specs: ParameterSpecs,
  given: Bag,
  path: string,
  vocabulary: Vocabulary,
  books: Books,
): readonly PackIssue[] {
  const check: Check = { vocabulary, books, issues: [] }
  checkBag(check, specs, given, path, [])
  return check.issues
}

function checkBag(check: Check, specs: ParameterSpecs, given: Bag, path: string, also: readonly string[]): void {
  const known = [...Object.keys(specs), ...also]
  for (const key of Object.keys(given)) {
    if (!known.includes(key)) report(check, `${path}.${key}`, key, `one of ${known.join(', ')}`)
  }
  for (const [name, spec] of Object.entries(specs)) {
    const value = Object.hasOwn(given, name) ? given[name] : undefined
    if (value !== undefined) checkValue(check, spec, value, `${path}.${name}`)
    else if (spec.optional !== true) report(check, path, 'nothing', `${name}: ${spec.says}`)
  }
}

function checkValue(check: Check, spec: ParameterSpec, value: unknown, path: string): void {
  switch (spec.kind) {
    case 'pattern':
      return checkPattern(check, value, path)
    case 'patterns':
      return checkEach(check, value, path, spec.least ?? 0, (part, at) => checkPattern(check, part, at))
    case 'predicate':
      return checkCall(check, value, path, spec.about)
    case 'predicates':
      return checkEach(check, value, path, spec.least ?? 0, (part, at) => checkCall(check, part, at, spec.about))
    case 'number':
      return checkNumber(check, value, path, spec.least ?? -Infinity, spec.most ?? Infinity)
    case 'choice':
      return checkChoice(check, value, path, spec.of)
    case 'choices':
      return checkEach(check, value, path, 1, (part, at) => checkChoice(check, part, at, spec.of))
    case 'names':
      return checkEach(check, value, path, 1, (part, at) => checkName(check, part, at, spec.of))
    case 'flag':
      if (value !== true) report(check, path, show(value), 'true, or leave it out')
      return
    case 'links':
      return checkEach(check, value, path, 1, (part, at) => checkLink(check, part, at))
    case 'literal':
      if (!['string', 'number', 'boolean'].includes(typeof value))
        report(check, path, show(value), 'text, a number, true or false')
      return
    case 'putRight':
      if (!isBag(value)) return report(check, path, show(value), 'an object of by and before')
      return checkBag(
        check,
        {
          by: { kind: 'patterns', least: 1, says: 'acts that mend it' },
          before: { kind: 'patterns', least: 1, says: 'acts that rely on it' },
        },
        value,
        path,
        [],
      )
  }
}

function checkEach(
  check: Check,
  value: unknown,
  path: string,
  least: number,
  each: (part: unknown, path: string) => void,
): void {
  const list: readonly unknown[] = Array.isArray(value) ? value : [value]
  if (list.length < least) report(check, path, `${list.length}`, `at least ${least}`)
  list.forEach((part, i) => each(part, Array.isArray(value) ? `${path}[${i}]` : path))
}

function checkPattern(check: Check, value: unknown, path: string): void {
  if (!isBag(value)) return report(check, path, show(value), `an object of ${patternParts.join(', ')}`)
  for (const [key, part] of Object.entries(value)) {
    const at = `${path}.${key}`
    if (!patternParts.some((known) => known === key)) report(check, at, key, `one of ${patternParts.join(', ')}`)
    else if (key === 'values') checkValueTests(check, part, at)
    else checkEach(check, part, at, 1, (name, where) => checkName(check, name, where, nameKindOf(key)))
  }
  if (value['do'] === undefined) report(check, path, 'no do', 'the act, or * for any')
}

export function nameKindOf(key: string): NameKind {
  if (key === 'do') return 'action'
  if (key === 'itemType') return 'gearType'
  if (key === 'onSet') return 'set'
  return key === 'role' ? 'role' : 'any'
}

function checkValueTests(check: Check, value: unknown, path: string): void {
  if (!isBag(value)) return report(check, path, show(value), 'an object of values and what they must be')
  for (const [key, test] of Object.entries(value)) {
    const isBounds =
      isBag(test) &&
      Object.entries(test).every(([name, bound]) => ['least', 'most'].includes(name) && typeof bound === 'number')
    const isPlain = ['string', 'number', 'boolean'].includes(typeof test)
    const isList = Array.isArray(test) && test.every((part) => ['string', 'number'].includes(typeof part))
    if (!isBounds && !isPlain && !isList)
      report(check, `${path}.${key}`, show(test), 'a value, a list of values, or least and most')
  }
}

type About = 'site' | 'person' | 'moment' | 'act'

function checkCall(check: Check, value: unknown, path: string, about: readonly About[]): void {
  if (typeof value === 'string') return checkAsk(check, value, {}, path, about)
  if (!isBag(value)) return report(check, path, show(value), 'a question by name, or is, not, allOf, anyOf')
  if ('is' in value) return checkAsk(check, String(value['is']), value, path, about)
  if ('not' in value) return checkCall(check, value['not'], `${path}.not`, about)
  const key = 'allOf' in value ? 'allOf' : 'anyOf'
  if (!(key in value)) return report(check, path, show(value), 'is, not, allOf or anyOf')
  checkEach(check, value[key], `${path}.${key}`, 1, (part, at) => checkCall(check, part, at, about))
}

function checkAsk(check: Check, id: string, given: Bag, path: string, about: readonly About[]): void {
  const predicate = check.books.predicates.get(id)
  if (predicate === undefined) {
    return report(check, path, id, `one of ${[...check.books.predicates.keys()].join(', ')}`)
  }
  if (!about.includes(predicate.about))
    report(check, path, `${id}, asked of ${predicate.about}`, `one asked of ${about.join(', ')}`)
  checkBag(check, predicate.takes, given, path, ['is'])
}

function checkName(check: Check, value: unknown, path: string, of: NameKind): void {
  if (typeof value !== 'string' || value === '') return report(check, path, show(value), 'a name')
  const known = namesOf(check, of)
  if (known === undefined || value.includes('$each')) return
  if (!known.some((name) => matchesName(value, name))) report(check, path, value, `one of ${known.join(', ')}`)
}

function namesOf({ vocabulary, books }: Check, of: NameKind): readonly string[] | undefined {
  switch (of) {
    case 'action':
      return vocabulary.actions
    case 'gearType':
      return vocabulary.gearTypes
    case 'role':
      return roles
    case 'set':
      return [...books.sets.keys()]
    case 'measure':
      return [...books.measures.keys()]
    case 'truth':
      return [...books.truths.keys()]
    case 'rule':
      return vocabulary.rules ?? []
    case 'any':
      return undefined
  }
}

function checkNumber(check: Check, value: unknown, path: string, least: number, most: number): void {
  const isFine = typeof value === 'number' && Number.isFinite(value) && value >= least && value <= most
  if (!isFine) report(check, path, show(value), `a number from ${least} to ${most}`)
}

function checkChoice(check: Check, value: unknown, path: string, of: readonly string[]): void {
  if (typeof value !== 'string' || !of.includes(value)) report(check, path, show(value), `one of ${of.join(', ')}`)
}

function checkLink(check: Check, value: unknown, path: string): void {
  const isPair =
    Array.isArray(value) && value.length === 2 && value.every((part) => parts.some((known) => known === part))
  if (!isPair) report(check, path, show(value), `two of ${parts.join(', ')}`)
}

function isBag(value: unknown): value is Bag {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

function show(value: unknown): string {
  const text = JSON.stringify(value) ?? 'nothing'
  return text.length > 60 ? `${text.slice(0, 60)}…` : text
}

function report(check: Check, path: string, found: string, allowed: string): void {
  check.issues.push({ path, found, allowed })
}
