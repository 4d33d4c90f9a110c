/** What a person states (a read-back, a count, an answer, a list) must be the truth, or what the pack asks to be stated. */
import { invariant } from '../../units/invariant'
import type { Value } from '../../actions/action'
import type { RuleKind } from '../language/kind'
import { allMatching } from '../language/pattern'
import { aboutEntry } from '../language/raw'
import { readPatterns, readText, requireText } from '../language/read'

export const stated: RuleKind = {
  id: 'stated',
  says: 'what is read back, counted or answered, against the truth',
  occasion: 'of',
  parameters: {
    of: { kind: 'patterns', least: 1, says: 'the statements' },
    value: { kind: 'names', of: 'any', says: 'which of its values' },
    truth: { kind: 'names', of: 'truth', optional: true, says: 'what it is compared with' },
    equals: { kind: 'literal', optional: true, says: 'or the answer itself' },
  },
  find(view, parameters, { truths }) {
    const value = requireText(parameters, 'value')
    const name = readText(parameters, 'truth')
    const truth = name === undefined ? undefined : truths.get(name)
    invariant(name === undefined || truth !== undefined, 'a truth that the pack check has let through', name)
    return allMatching(view, readPatterns(parameters, 'of')).flatMap((entry) => {
      const right = truth === undefined ? asList(parameters['equals'] as Value) : truth.right(view, entry)
      const allowed = [...right, ...(truth?.alsoRight?.(view, entry) ?? [])]
      const said = asList(entry.order.values[value])
      const isRight = said.every((member) => allowed.includes(member)) && right.every((member) => said.includes(member))
      return isRight
        ? []
        : [aboutEntry(entry, entry.order.on ?? '', { said: said.join(', '), right: right.join(', ') })]
    })
  },
}

function asList(value: Value | undefined): readonly (string | number)[] {
  if (typeof value === 'string' || typeof value === 'number') return [value]
  if (typeof value === 'boolean') return [String(value)]
  return Array.isArray(value) ? value.filter((part) => typeof part === 'string') : []
}
