/** One thing is finished before the next is begun: an item is judged before another one is picked up. */
import type { RuleKind } from '../language/kind'
import { partOf, type Part } from '../language/link'
import { matchesAny } from '../language/pattern'
import { aboutEntry, type RawFinding } from '../language/raw'
import { readPatterns, requireText } from '../language/read'

export const oneAtATime: RuleKind = {
  id: 'one-at-a-time',
  says: 'each person finishes one item or thing before beginning the next',
  parameters: {
    of: { kind: 'patterns', least: 1, says: 'the acts' },
    ends: { kind: 'patterns', least: 1, says: 'the act that finishes' },
    part: { kind: 'choice', of: ['on', 'with', 'who', 'item'], says: 'what is one thing' },
  },
  find(view, parameters) {
    const of = readPatterns(parameters, 'of')
    const ends = readPatterns(parameters, 'ends')
    const part = requireText(parameters, 'part') as Part
    const open = new Map<string, string>()
    const found: RawFinding[] = []
    for (const entry of view.done) {
      const { who } = entry.order
      const subject = partOf(view, entry, part)
      if (subject === undefined || !matchesAny(view, [...of, ...ends], entry)) continue
      const unfinished = open.get(who)
      if (unfinished !== undefined && unfinished !== subject) {
        found.push(aboutEntry(entry, unfinished, { unfinished }))
      }
      if (matchesAny(view, ends, entry)) open.delete(who)
      else open.set(who, subject)
    }
    return found
  },
}
