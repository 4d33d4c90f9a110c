/**
 * Runs every rule of a pack over a run. Over each kind's own finding lie, for all kinds alike: `forEach` (one by one
 * over a set), `atEachPole` (of the work at each pole by itself), `appliesIf` (asked of the finished site), `putRight` (the crew mended it before it mattered), `once`
 * (only the first of the run) and the rule that the first deviation is scored once. What several rules found of one
 * deviation, chainFindings joins.
 */
import { invariant } from '../units/invariant'
import type { Timeline } from '../timeline/timeline'
import { wholeTimeline } from '../timeline/wholeTimeline'
import { books } from './books'
import { chainFindings, type Found } from './chainFindings'
import { errorTeller } from './errorTeller'
import type { Finding, Pack, PackRule } from './finding'
import { rulesInForce } from './inForce'
import { ruleKinds } from './kinds'
import { bindEach } from './language/each'
import { viewEachPole } from './language/eachPole'
import type { Parameters, RuleKind } from './language/kind'
import { matchesAny, type Pattern } from './language/pattern'
import { holds, type PredicateCall } from './language/predicate'
import type { RawFinding } from './language/raw'
import { readList, readPatterns, readText } from './language/read'
import { viewRun, viewUntilLivening, type RunView } from './language/runView'

/** Ordered by job second, then rule, then act. Of a run that begins at a part, only what was done in it. */
export function findFindings(timeline: Timeline, pack: Pack): readonly Finding[] {
  const { prepared } = timeline
  const view = viewRun(wholeTimeline(timeline), pack)
  const found = rulesInForce(pack, timeline.scenario)
    .flatMap((rule, place) => findOfRule(view, rule, place))
    .filter(({ finding }) => prepared === undefined || finding.at >= prepared.end.time)
  return [...chainFindings(found)].sort(compare).map((it) => countedFrom(it, prepared?.entries.length ?? 0))
}

/** Acts are counted from the first of the run itself; -1, no act, stays. */
function countedFrom(finding: Finding, first: number): Finding {
  return first === 0 || finding.entry < 0 ? finding : { ...finding, entry: finding.entry - first }
}

function findOfRule(view: RunView, rule: PackRule, place: number): readonly Found[] {
  const kind = ruleKinds.get(rule.kind)
  invariant(kind !== undefined, 'a rule kind that the pack check has let through', rule.kind)
  if (!applies(view, rule.parameters)) return []
  const asked = rule.parameters['untilLivening'] === true ? viewUntilLivening(view) : view
  const bound = bindAll(view, rule.parameters)
  const parts = rule.parameters['atEachPole'] === true ? viewEachPole(asked) : [asked]
  const raw = parts.flatMap((part) => bound.flatMap((parameters) => findOfMember(part, parameters, kind)))
  if (raw.length === 0) return []
  const causes = readList(rule.parameters, 'consequenceOf')
  const roots = readList(rule.parameters, 'causedBy')
  const marked = [...raw].sort((a, b) => a.at - b.at || a.entry - b.entry).map((each) => markRecovery(view, rule, each))
  const kept = rule.parameters['once'] === true ? marked.slice(0, 1) : keepFirst(marked)
  const errors = errorTeller({ view: asked, kind, bound, raw })
  return kept.map(({ raw: each, ...recovery }) => ({
    finding: dress(rule, each, recovery, errors(each)),
    place,
    subject: each.subject,
    touches: each.entry < 0 ? (each.touches ?? []) : [each.entry, ...(each.touches ?? [])],
    isSequence: kind.isSequence === true,
    causes,
    roots,
  }))
}

/** Asked of one member of a set, a finding that is about nothing else is about that member, whoever's act it was. */
function findOfMember(view: RunView, parameters: Parameters, kind: RuleKind): readonly RawFinding[] {
  const member = readText(parameters, '$member')
  const found = kind.find(view, parameters, books)
  if (member === undefined) return found
  return found.map((each) => {
    const named = { ...each, facts: { ...each.facts, member } }
    return each.subject === '' ? { ...named, subject: member, isMember: true } : named
  })
}

function applies(view: RunView, parameters: Parameters): boolean {
  const call = parameters['appliesIf'] as PredicateCall | undefined
  return call === undefined || holds(books.predicates, call, { view, site: view.timeline.end })
}

/** Once for each member of the set that it asks one by one. */
export function bindAll(view: RunView, parameters: Parameters): readonly Parameters[] {
  const name = readText(parameters, 'forEach')
  if (name === undefined) return [parameters]
  const set = books.sets.get(name)
  invariant(set !== undefined, 'a set that the pack check has let through', name)
  return set.members(view.timeline.scenario).map((member) => ({ ...bindEach(parameters, member), $member: member }))
}

interface Marked {
  readonly raw: RawFinding
  readonly recovered: boolean
  readonly putRightAt?: number
}

/** Mended: an act of `by` followed, before the first act of `before`, and before anything came alive. */
function markRecovery(view: RunView, rule: PackRule, raw: RawFinding): Marked {
  const putRight = rule.parameters['putRight'] as Parameters | undefined
  if (putRight === undefined) return { raw, recovered: false }
  const by = readPatterns(putRight, 'by')
  const mended = view.done.find(
    (entry) => entry.start >= raw.at && entry.index !== raw.entry && isAbout(view, by, entry, raw),
  )
  if (mended === undefined) return { raw, recovered: false }
  const before = readPatterns(putRight, 'before')
  const relied = view.done.some(
    (entry) => entry.start > raw.at && entry.start < mended.end && matchesAny(view, before, entry),
  )
  const { struck } = view.timeline
  const struckBetween = struck !== null && struck.at >= raw.at && struck.at < mended.end
  return relied || struckBetween ? { raw, recovered: false } : { raw, recovered: true, putRightAt: mended.end }
}

function isAbout(view: RunView, by: readonly Pattern[], entry: RunView['done'][number], raw: RawFinding): boolean {
  if (!matchesAny(view, by, entry)) return false
  const { on, with: held, who } = entry.order
  return raw.subject === '' || [on, held, who].includes(raw.subject)
}

/** The same person with the same thing: scored once until it was put right. */
function keepFirst(marked: readonly Marked[]): readonly Marked[] {
  const open = new Set<string>()
  return marked.filter(({ raw, recovered }) => {
    const key = raw.isMember === true ? raw.subject : `${raw.who ?? ''} ${raw.subject}`
    if (open.has(key)) return false
    if (!recovered) open.add(key)
    return true
  })
}

function dress(
  rule: PackRule,
  raw: RawFinding,
  recovery: Pick<Finding, 'recovered' | 'putRightAt'>,
  error: Finding['error'],
): Finding {
  return {
    rule: rule.id,
    at: raw.at,
    severity: rule.severity,
    element: rule.element,
    ...(raw.who === undefined ? {} : { who: raw.who }),
    entry: raw.entry,
    facts: raw.facts,
    ...recovery,
    error,
    leadsTo: [],
  }
}

function compare(a: Finding, b: Finding): number {
  return (
    a.at - b.at ||
    (a.rule < b.rule ? -1 : a.rule > b.rule ? 1 : 0) ||
    a.entry - b.entry ||
    ((a.who ?? '') < (b.who ?? '') ? -1 : 1)
  )
}
