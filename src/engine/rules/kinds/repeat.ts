/** The same act again at once, by the same person, on the same thing with the same figures: it adds nothing. */
import type { Entry } from '../../timeline/timeline'
import type { RuleKind } from '../language/kind'
import { matchesAny } from '../language/pattern'
import { aboutEntry } from '../language/raw'
import { readNumber, readPatterns } from '../language/read'

export const repeat: RuleKind = {
  id: 'repeat',
  says: 'an act done twice in a row with no need',
  parameters: {
    of: { kind: 'patterns', least: 1, says: 'the acts' },
    within: { kind: 'number', least: 0, optional: true, says: 'so many seconds after the first' },
    except: { kind: 'patterns', optional: true, says: 'acts that may well be repeated' },
  },
  find(view, parameters) {
    const of = readPatterns(parameters, 'of')
    const within = readNumber(parameters, 'within') ?? Infinity
    const except = readPatterns(parameters, 'except')
    const last = new Map<string, Entry>()
    return view.done.flatMap((entry) => {
      const previous = last.get(entry.order.who)
      last.set(entry.order.who, entry)
      const isAgain = previous !== undefined && entry.start - previous.end <= within && isSameAct(previous, entry)
      if (!isAgain || !matchesAny(view, of, entry) || matchesAny(view, except, entry)) return []
      return [aboutEntry(entry, `${entry.order.do} ${entry.order.on ?? ''} ${entry.order.with ?? ''}`)]
    })
  },
}

function isSameAct(a: Entry, b: Entry): boolean {
  const { order: first } = a
  const { order: second } = b
  return (
    first.do === second.do &&
    first.on === second.on &&
    first.with === second.with &&
    JSON.stringify(first.values) === JSON.stringify(second.values)
  )
}
