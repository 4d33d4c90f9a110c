/**
 * Something must have been done before something else: earth end before a conductor clamp, a test before a clamp on
 * the same wire. `link` says what must be the same in both; `since` makes an older doing count no longer.
 */
import type { RuleKind } from '../language/kind'
import { isLinked, partOf, type Link } from '../language/link'
import { allDone, allMatching, findLast, type Pattern } from '../language/pattern'
import { aboutEntry, aboutMissing, type RawFinding } from '../language/raw'
import { readFlag, readLinks, readNumber, readPatterns } from '../language/read'
import { endOf, isBefore, type RunView } from '../language/runView'
import type { Entry } from '../../timeline/timeline'

export const doneBefore: RuleKind = {
  id: 'done-before',
  says: 'an act that must have been done before another',
  occasion: 'before',
  wanted: 'need',
  parameters: {
    need: { kind: 'patterns', least: 1, says: 'what must have been done (any of these)' },
    before: { kind: 'patterns', least: 1, says: 'what needs it' },
    link: { kind: 'links', optional: true, says: 'what must be the same in both, need first' },
    since: { kind: 'patterns', optional: true, says: 'a doing older than the last of these does not count' },
    within: { kind: 'number', least: 1, optional: true, says: 'seconds after which the need is stale' },
    ifEver: { kind: 'flag', optional: true, says: 'too late is asked, never is not: another rule says that' },
    always: {
      kind: 'flag',
      optional: true,
      says: 'needed even if what needs it never came: then it is missing at the end',
    },
  },
  find(view, parameters) {
    const need = readPatterns(parameters, 'need')
    const before = readPatterns(parameters, 'before')
    const rule = {
      need,
      done: allDone(view, need),
      links: readLinks(parameters, 'link'),
      since: readPatterns(parameters, 'since'),
      within: readNumber(parameters, 'within') ?? Infinity,
    }
    const acts = allMatching(view, before)
    if (acts.length === 0 && readFlag(parameters, 'always')) return findNeverDone(view, need)
    const asked = readFlag(parameters, 'ifEver')
      ? acts.filter((act) => rule.done.some((entry) => isLinked(view, rule.links, entry, act)))
      : acts
    return asked.flatMap((act) => (isMet(view, rule, act) ? [] : [describe(view, rule, act)]))
  },
}

interface Rule {
  readonly need: readonly Pattern[]
  /** Acts that meet the need, wherever they stand. */
  readonly done: readonly Entry[]
  readonly links: readonly Link[]
  readonly since: readonly Pattern[]
  readonly within: number
}

function isMet(view: RunView, rule: Rule, act: Entry): boolean {
  const stale = rule.since.length === 0 ? undefined : findLast(view, rule.since, act.start - 1)
  const fresh = Math.max(stale === undefined ? -Infinity : stale.end, act.start - rule.within)
  return rule.done.some((entry) => isBefore(entry, act) && entry.end >= fresh && isLinked(view, rule.links, entry, act))
}

function describe(view: RunView, rule: Rule, act: Entry): RawFinding {
  const part = rule.links[0]?.[1]
  const subject = part === undefined ? '' : (partOf(view, act, part) ?? '')
  const late = rule.done.find((entry) => entry.start >= act.start && isLinked(view, rule.links, entry, act))
  const finding = aboutEntry(act, subject, { missing: nameOf(rule.need), subject })
  return late === undefined ? finding : { ...finding, touches: [late.index] }
}

function findNeverDone(view: RunView, need: readonly Pattern[]): readonly RawFinding[] {
  if (allMatching(view, need).length > 0) return []
  return [aboutMissing(endOf(view), '', { missing: nameOf(need) })]
}

function nameOf(patterns: readonly Pattern[]): string {
  const first = patterns[0]?.do
  return typeof first === 'string' ? first : (first?.[0] ?? '')
}
