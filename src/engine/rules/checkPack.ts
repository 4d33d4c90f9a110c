/**
 * Refuses a pack that cannot be used, with every fault at once: a rule kind, parameter, predicate, action, gear type or
 * set that does not exist, a value of the wrong shape, and rules that contradict one another or can never find anything.
 */
import { books } from './books'
import { findContradictions } from './contradictions'
import type { Pack, PackRule } from './finding'
import { ruleKinds } from './kinds'
import { checkParameters, type Vocabulary } from './language/checkParameters'
import type { PackIssue, ParameterSpecs } from './language/parameterSpec'
import { findUnreachable } from './unreachable'

/** Parameters that every rule may carry. */
export const commonParameters: ParameterSpecs = {
  forEach: { kind: 'names', of: 'set', optional: true, says: 'asked once for each member; $each stands for it' },
  appliesIf: { kind: 'predicate', about: ['site'], optional: true, says: 'asked only where this holds at the end' },
  untilLivening: { kind: 'flag', optional: true, says: 'only what was done before the line came alive' },
  atEachPole: {
    kind: 'flag',
    optional: true,
    says: 'of the work at each pole by itself, where it goes on to the next',
  },
  putRight: { kind: 'putRight', optional: true, says: 'acts that mend it, before acts that rely on it' },
  consequenceOf: { kind: 'names', of: 'rule', optional: true, says: 'rules whose finding on the same thing says it' },
  causedBy: { kind: 'names', of: 'rule', optional: true, says: 'rules whose finding on anything already says it' },
  once: { kind: 'flag', optional: true, says: 'only the first deviation of the run is reported' },
}

/** @returns nothing when the pack can be used */
export function checkPack(pack: Pack, vocabulary: Vocabulary): readonly PackIssue[] {
  const issues = pack.rules.flatMap((rule, i) => checkRule(pack, rule, `$.rules[${i}]`, vocabulary))
  return issues.length > 0 ? issues : [...findContradictions(pack), ...findUnreachable(pack, vocabulary)]
}

function checkRule(pack: Pack, rule: PackRule, path: string, vocabulary: Vocabulary): readonly PackIssue[] {
  const issues: PackIssue[] = []
  if (pack.rules.find(({ id }) => id === rule.id) !== rule) {
    issues.push({ path: `${path}.id`, found: rule.id, allowed: 'an id that no other rule has' })
  }
  if (!pack.elements.includes(rule.element)) {
    issues.push({ path: `${path}.element`, found: rule.element, allowed: `one of ${pack.elements.join(', ')}` })
  }
  const kind = ruleKinds.get(rule.kind)
  if (kind === undefined) {
    return [
      ...issues,
      { path: `${path}.kind`, found: rule.kind, allowed: `one of ${[...ruleKinds.keys()].join(', ')}` },
    ]
  }
  const specs = { ...kind.parameters, ...commonParameters }
  const names = { ...vocabulary, rules: pack.rules.map(({ id }) => id) }
  return [...issues, ...checkParameters(specs, rule.parameters, `${path}.parameters`, names, books)]
}
