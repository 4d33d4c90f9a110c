/**
 * After a livening that the crew could perceive: what must be done (by everyone, by somebody) before other acts, or
 * what must not be done until the place is known to be safe. Nothing is asked when nothing struck.
 */
import type { RuleKind } from '../language/kind'
import { isLinked, partOf, type Link } from '../language/link'
import { findFirst, matchesAny, type Pattern } from '../language/pattern'
import { aboutEntry, aboutMissing, type RawFinding } from '../language/raw'
import { readLinks, readNumber, readPatterns } from '../language/read'
import { endOf, type RunView } from '../language/runView'

export const responseAfterLivening: RuleKind = {
  id: 'response-after-livening',
  says: 'what the crew does, and does not do, after the line came alive',
  wanted: 'need',
  parameters: {
    need: { kind: 'patterns', least: 1, says: 'what must be done after it (any of these)' },
    before: { kind: 'patterns', optional: true, says: 'acts that must wait for it; left out: needed by the end' },
    link: { kind: 'links', optional: true, says: 'what must be the same in both, need first' },
    within: { kind: 'number', least: 1, optional: true, says: 'seconds after the livening' },
  },
  find(view, parameters) {
    const { struck } = view.timeline
    if (struck === null) return []
    const need = readPatterns(parameters, 'need')
    const before = readPatterns(parameters, 'before')
    if (before.length > 0) return findHasty(view, struck.at, need, before, readLinks(parameters, 'link'))
    const done = findFirst(view, need, struck.at)
    const within = readNumber(parameters, 'within') ?? Infinity
    if (done !== undefined && done.start - struck.at <= within) return []
    return [aboutMissing(Math.min(struck.at + within, endOf(view)), '', { missing: nameOf(need) })]
  },
}

function findHasty(
  view: RunView,
  at: number,
  need: readonly Pattern[],
  before: readonly Pattern[],
  links: readonly Link[],
): readonly RawFinding[] {
  return view.done
    .filter((entry) => entry.start >= at && matchesAny(view, before, entry) && !matchesAny(view, need, entry))
    .filter(
      (act) =>
        !view.done.some(
          (entry) =>
            entry.start >= at &&
            entry.end <= act.start &&
            matchesAny(view, need, entry) &&
            isLinked(view, links, entry, act),
        ),
    )
    .map((act) => aboutEntry(act, partOf(view, act, links[0]?.[1] ?? 'who') ?? '', { missing: nameOf(need) }))
}

function nameOf(patterns: readonly Pattern[]): string {
  const first = patterns[0]?.do
  return typeof first === 'string' ? first : (first?.[0] ?? '')
}
