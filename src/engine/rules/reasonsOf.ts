/**
 * Why an act of a run is done: the rules of a pack that it answers. First those that would miss it if it were left out,
 * and those whose state it brings about; then those that say how it is done; last those in whose order it has a place.
 * What counts before what is own choice.
 */
import type { Entry, Timeline } from '../timeline/timeline'
import { books } from './books'
import { bindAll } from './findFindings'
import type { Pack, PackRule, Severity } from './finding'
import { ruleKinds } from './kinds'
import { listNames, matchesNames } from './language/glob'
import type { Parameters, RuleKind } from './language/kind'
import { allMatching, matchesAny, type Pattern } from './language/pattern'
import { holds, type PredicateCall, type Scope, whyNot } from './language/predicate'
import { readCall, readList, readPatterns, readText } from './language/read'
import { findItemType, findRole, viewRun, viewUntilLivening, viewWithout, type RunView } from './language/runView'
import { rulesWithOccasion } from './observedRules'

/** A rule as it is asked of one member of its set. */
interface Asked {
  readonly rule: PackRule
  readonly place: number
  readonly kind: RuleKind
  readonly parameters: Parameters
  readonly view: RunView
  /** By person, the first act before which its state was not so; -1: it always was. */
  readonly brokenAt: Map<string, number>
}

const weight: Readonly<Record<Severity, number>> = { critical: 0, major: 1, minor: 2 }

/** @returns of the act at an index of the run: ids of the rules, the most pressing first; none when no rule asks */
export function reasonsOf(timeline: Timeline, pack: Pack): (index: number) => readonly string[] {
  const asked = listAsked(timeline, pack)
  return (index) => {
    const entry = timeline.entries[index]
    if (entry === undefined) return []
    const found = asked.flatMap((each) => {
      const rank = rankOf(each, entry)
      return rank === undefined ? [] : [{ ...each, rank }]
    })
    found.sort((a, b) => a.rank - b.rank || weight[a.rule.severity] - weight[b.rule.severity] || a.place - b.place)
    return [...new Set(found.map(({ rule }) => rule.id))]
  }
}

function listAsked(timeline: Timeline, pack: Pack): readonly Asked[] {
  const whole = viewRun(timeline, pack)
  const possible = rulesWithOccasion(timeline, pack)
  return pack.rules.flatMap((rule, place) => {
    const kind = ruleKinds.get(rule.kind)
    if (kind === undefined || !possible.has(rule.id)) return []
    const view = rule.parameters['untilLivening'] === true ? viewUntilLivening(whole) : whole
    return bindAll(whole, rule.parameters).map((parameters) => ({
      rule,
      place,
      kind,
      parameters,
      view,
      brokenAt: new Map<string, number>(),
    }))
  })
}

/** A rule about a few acts says more of each than one about many. */
function rankOf(asked: Asked, entry: Entry): number | undefined {
  const { kind, parameters, view } = asked
  const isNamed = (name: string): boolean => matchesAny(view, readPatterns(parameters, name), entry)
  if (wantedBy(asked).some(isNamed) && isMissedWithout(asked, entry)) return 0
  const change = changeOf(asked, entry)
  if (change !== 'none') return change === 'so' ? 1 : 2
  if (findsEvidence(asked, entry)) return 2
  const how = howIn(asked)
  if (how !== undefined && isNamed(how) && isEverBroken(asked, entry))
    return 4 - 1 / (1 + namesIn(readPatterns(parameters, how)))
  if (isNamed('steps')) return 5
  return kind.id === 'by-whom' && isNamed('of') ? 6 : undefined
}

/** Parameters that name what has to be done; of a count that must not be passed, none. */
const wantedBy = ({ kind, parameters }: Asked): readonly string[] =>
  parameters['most'] === undefined ? [...(kind.wanted === undefined ? [] : [kind.wanted]), 'judged'] : []

/** Parameter that names the acts of which the rule says how they are done; not one that only says when it looks. */
function howIn({ kind }: Asked): string | undefined {
  const isHow = kind.wanted === undefined && kind.id !== 'judgement' && kind.id !== 'by-whom'
  return isHow ? kind.occasion : undefined
}

const namesIn = (patterns: readonly Pattern[]): number =>
  patterns.reduce((sum, pattern) => sum + listNames(pattern.do ?? '*').length, 0)

/** The rule finds more once the act is left out. */
function isMissedWithout({ kind, parameters, view }: Asked, entry: Entry): boolean {
  return kind.find(viewWithout(view, entry), parameters, books).length > kind.find(view, parameters, books).length
}

/** Whether the state that the rule asks for is so after the act and was not before, or lacks something else than this. */
function changeOf(asked: Asked, entry: Entry): 'so' | 'nearer' | 'none' {
  const call = readCall(asked.parameters, 'holds')
  const scope = call === undefined ? undefined : scopeOf(asked, entry)
  if (call === undefined || scope === undefined || needsMoment(call)) return 'none'
  const before = whyNot(books.predicates, call, { ...scope, site: entry.before })
  if (before === undefined) return 'none'
  const after = whyNot(books.predicates, call, { ...scope, site: entry.after })
  if (after === undefined) return 'so'
  const { who, on, with: held } = entry.order
  const isAboutIt = Object.values(before).some((it) => it === who || it === on || it === held)
  return isAboutIt && JSON.stringify(before) !== JSON.stringify(after) ? 'nearer' : 'none'
}

/** What a verdict has to rest on is found out: the label is read, the item looked over or tried. */
function findsEvidence({ parameters, view }: Asked, { before, after }: Entry): boolean {
  const wanted = readList(parameters, 'evidence')
  if (wanted.length === 0) return false
  const types = readList(parameters, 'types')
  const found = after.evidence.slice(before.evidence.length)
  return found.some(({ of, by }) => wanted.includes(by) && matchesNames(types, findItemType(view, of)))
}

/** A state that was never otherwise before an act is no reason for it. */
function isEverBroken(asked: Asked, entry: Entry): boolean {
  const call = readCall(asked.parameters, 'holds')
  if (call === undefined || needsMoment(call)) return call === undefined
  const { entries } = asked.view.timeline
  const person = entry.order.who
  const first =
    asked.brokenAt.get(person) ?? entries.findIndex(({ before: site }) => isBroken(asked, call, site, entry))
  asked.brokenAt.set(person, first)
  return first >= 0 && first < entry.index
}

const isBroken = ({ view }: Asked, call: PredicateCall, site: Scope['site'], entry: Entry): boolean =>
  !holds(books.predicates, call, { view, site, person: entry.order.who, entry })

/** Of whom and at which act the state will be asked: the next one that the rule looks at, or every person alike. */
function scopeOf({ parameters, view }: Asked, entry: Entry): Omit<Scope, 'site'> | undefined {
  const when: readonly Pattern[] = readPatterns(parameters, 'when')
  const next = when.length === 0 ? undefined : allMatching(view, when).find(({ start }) => start >= entry.end)
  if (next !== undefined) {
    const unless = readCall(parameters, 'unless')
    const scope = { view, person: next.order.who, entry: next }
    const isExempt = unless !== undefined && holds(books.predicates, unless, { ...scope, site: next.before })
    return isExempt ? undefined : scope
  }
  if (parameters['atEnd'] === true) return { view }
  if (readText(parameters, 'each') === 'site') return { view }
  if (readText(parameters, 'each') !== 'crew') return undefined
  const roles = readList(parameters, 'roles')
  const { who } = entry.order
  return roles.length === 0 || roles.includes(findRole(view, who) ?? '') ? { view, person: who } : undefined
}

/** Somewhere in it a question about contacts in force, which no site alone can answer. */
function needsMoment(call: PredicateCall): boolean {
  if (typeof call === 'string') return books.predicates.get(call)?.about === 'moment'
  if ('is' in call) return books.predicates.get(call.is)?.about === 'moment'
  if ('not' in call) return needsMoment(call.not)
  return ('allOf' in call ? call.allOf : call.anyOf).some(needsMoment)
}
