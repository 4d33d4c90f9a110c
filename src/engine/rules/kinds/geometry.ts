/** A distance, depth, extent or section measured at an act must lie between limits of the pack. */
import { invariant } from '../../units/invariant'
import type { RuleKind } from '../language/kind'
import { allMatching } from '../language/pattern'
import { aboutEntry } from '../language/raw'
import { readFlag, readNumber, readPatterns, requireText } from '../language/read'

export const geometry: RuleKind = {
  id: 'geometry',
  says: 'a measured figure within limits when an act has been done',
  occasion: 'when',
  parameters: {
    when: { kind: 'patterns', least: 1, says: 'the acts' },
    measure: { kind: 'names', of: 'measure', says: 'what is measured' },
    least: { kind: 'number', optional: true, says: 'not below' },
    most: { kind: 'number', optional: true, says: 'not above' },
    firstOnly: { kind: 'flag', optional: true, says: 'measured at the first of the acts only' },
  },
  find(view, parameters, { measures }) {
    const name = requireText(parameters, 'measure')
    const measure = measures.get(name)
    invariant(measure !== undefined, 'a measure that the pack check has let through', name)
    const least = readNumber(parameters, 'least') ?? -Infinity
    const most = readNumber(parameters, 'most') ?? Infinity
    const acts = allMatching(view, readPatterns(parameters, 'when'))
    return (readFlag(parameters, 'firstOnly') ? acts.slice(0, 1) : acts).flatMap((entry) => {
      const value = measure.measure(view, entry)
      if (value === undefined || (value >= least && value <= most)) return []
      const limits = value < least ? { least } : { most }
      return [aboutEntry(entry, '', { value, ...limits })]
    })
  },
}
