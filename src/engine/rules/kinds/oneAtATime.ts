/** One thing is finished before the next is begun: an item is judged before another one is picked up. */
import type { RuleKind } from '../language/kind'
import { partOf, type Part } from '../language/link'
import { findFirst, matchesAny } from '../language/pattern'
import { aboutEntry, type RawFinding } from '../language/raw'
import { readPatterns, requireText } from '../language/read'

export const oneAtATime: RuleKind = {
  id: 'one-at-a-time',
  says: 'each person finishes one item or thing before beginning the next',
  isSequence: true,
  parameters: {
    of: { kind: 'patterns', least: 1, says: 'the acts' },
    ends: { kind: 'patterns', least: 1, says: 'the act that finishes' },
    part: { kind: 'choice', of: ['on', 'with', 'who', 'item', 'device'], says: 'what is one thing' },
    to: { kind: 'patterns', optional: true, says: 'only acts before the first of these' },
  },
  find(view, parameters) {
    const of = readPatterns(parameters, 'of')
    const ends = readPatterns(parameters, 'ends')
    const part = requireText(parameters, 'part') as Part
    const to = readPatterns(parameters, 'to')
    const ending = (to.length === 0 ? undefined : findFirst(view, to))?.start ?? Infinity
    const open = new Map<string, Open>()
    const found: RawFinding[] = []
    for (const entry of view.done) {
      const { who } = entry.order
      const subject = partOf(view, entry, part)
      if (subject === undefined || entry.start >= ending || !matchesAny(view, [...of, ...ends], entry)) continue
      const unfinished = open.get(who)
      if (unfinished !== undefined && unfinished.subject !== subject) {
        const finding = aboutEntry(entry, unfinished.subject, { unfinished: unfinished.subject })
        found.push({ ...finding, touches: [unfinished.last] })
      }
      if (matchesAny(view, ends, entry)) closeEverywhere(open, subject)
      else open.set(who, { subject, last: entry.index })
    }
    return found
  },
}

interface Open {
  readonly subject: string
  /** The last act with it. */
  readonly last: number
}

/** Whoever finishes it, it is finished for all who had it in hand. */
function closeEverywhere(open: Map<string, Open>, subject: string): void {
  for (const [who, unfinished] of open) if (unfinished.subject === subject) open.delete(who)
}
