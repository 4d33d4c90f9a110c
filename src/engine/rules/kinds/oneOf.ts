/** Alternatives: at least one of several protections must be there when an act begins. */
import type { RuleKind } from '../language/kind'
import { allMatching } from '../language/pattern'
import { whyNot, type PredicateCall } from '../language/predicate'
import { aboutEntry } from '../language/raw'
import { readPatterns } from '../language/read'

export const oneOf: RuleKind = {
  id: 'one-of',
  says: 'at least one of several things holds when an act begins',
  occasion: 'when',
  parameters: {
    when: { kind: 'patterns', least: 1, says: 'the acts' },
    anyOf: { kind: 'predicates', least: 2, about: ['site', 'person', 'act'], says: 'the alternatives' },
  },
  find(view, parameters, { predicates }) {
    const alternatives = parameters['anyOf'] as readonly PredicateCall[]
    return allMatching(view, readPatterns(parameters, 'when')).flatMap((entry) => {
      const scope = { view, site: entry.before, person: entry.order.who, entry }
      const failures = alternatives.map((call) => whyNot(predicates, call, scope))
      return failures.includes(undefined)
        ? []
        : [aboutEntry(entry, '', { ...failures[0], alternatives: failures.length })]
    })
  },
}
