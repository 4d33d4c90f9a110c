/** How often something is done: at least, at most; optionally counted by different things, items or people. */
import type { RuleKind } from '../language/kind'
import { partOf, type Part } from '../language/link'
import { allMatching, findFirst } from '../language/pattern'
import { aboutEntry, aboutMissing } from '../language/raw'
import { readFlag, readNumber, readPatterns, readText } from '../language/read'
import { endOf } from '../language/runView'

export const count: RuleKind = {
  id: 'count',
  says: 'how often an act is done',
  wanted: 'of',
  parameters: {
    of: { kind: 'patterns', least: 1, says: 'the acts' },
    least: { kind: 'number', least: 1, optional: true, says: 'at least so often' },
    most: { kind: 'number', least: 0, optional: true, says: 'at most so often' },
    different: {
      kind: 'choice',
      of: ['on', 'with', 'who', 'item', 'device'],
      optional: true,
      says: 'counted by different ones of these',
    },
    from: { kind: 'patterns', optional: true, says: 'counted from the end of the first of these' },
    to: { kind: 'patterns', optional: true, says: 'counted to the start of the first of these after that' },
    ifBegun: { kind: 'flag', optional: true, says: 'nothing is missing when the stretch never began' },
  },
  find(view, parameters) {
    const from = readPatterns(parameters, 'from')
    const to = readPatterns(parameters, 'to')
    const first = from.length === 0 ? undefined : findFirst(view, from)
    if (from.length > 0 && first === undefined) return []
    const begins = first?.end ?? -Infinity
    const stop = to.length === 0 ? undefined : findFirst(view, to, begins)
    if (to.length > 0 && stop === undefined && readFlag(parameters, 'ifBegun')) return []
    const ends = stop?.start ?? Infinity
    const acts = allMatching(view, readPatterns(parameters, 'of')).filter((it) => it.start >= begins && it.end <= ends)
    const part = readText(parameters, 'different') as Part | undefined
    const counted = part === undefined ? acts.length : new Set(acts.map((act) => partOf(view, act, part))).size
    const least = readNumber(parameters, 'least') ?? 0
    const most = readNumber(parameters, 'most') ?? Infinity
    if (counted < least) {
      const at = Math.min(ends, endOf(view))
      return [
        stop === undefined
          ? aboutMissing(at, '', { count: counted, least })
          : aboutEntry(stop, '', { count: counted, least }),
      ]
    }
    const over = acts[most]
    return counted > most && over !== undefined ? [aboutEntry(over, '', { count: counted, most })] : []
  },
}
