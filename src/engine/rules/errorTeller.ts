/**
 * What sort of error a finding is, as far as the run shows it; else `unclear`. Told apart by what the same person did
 * on other occasions of the same rule, by which half of a pair of acts is missing, and by what stood on the written
 * plan. The names are those of the human-factors literature (slip, lapse, mistake, violation); what counts as evidence
 * for each is own choice.
 */
import type { Entry } from '../timeline/timeline'
import type { ErrorKind } from './finding'
import type { Parameters, RuleKind } from './language/kind'
import { allMatching, isAnyDone, type Pattern } from './language/pattern'
import type { RawFinding } from './language/raw'
import { readPatterns, readText } from './language/read'
import type { RunView } from './language/runView'
import { firstHalves, madeBy, undoneWhys } from './returnHalves'

export interface FoundByRule {
  readonly view: RunView
  readonly kind: RuleKind
  /** Parameters, once for each member of the rule's set. */
  readonly bound: readonly Parameters[]
  readonly raw: readonly RawFinding[]
}

export function errorTeller(rule: FoundByRule): (finding: RawFinding) => ErrorKind {
  const faulty = new Set(rule.raw.flatMap(({ entry, touches = [] }) => [entry, ...touches]))
  return (finding) => {
    const parameters = parametersOf(rule, finding)
    if (isReturnForgotten(rule, finding)) return 'lapse'
    const occasions = occasionsOf(rule, parameters, finding)
    if (isKeptBefore(occasions, faulty, finding) || isOneOfSet(rule, finding)) return 'slip-of-attention'
    const wanted = wantedOf(rule.kind, parameters, finding)
    if (wanted.length > 0) {
      if (isAnyDone(rule.view, wanted)) return 'unclear'
      return isPlanned(rule.view, wanted, finding) ? 'violation' : 'mistake'
    }
    return isNeverRight(occasions, faulty) ? 'mistake' : 'unclear'
  }
}

const memberOf = (parameters: Parameters): string | undefined => readText(parameters, '$member')

function parametersOf({ bound }: FoundByRule, { facts }: RawFinding): Parameters {
  return bound.find((it) => memberOf(it) === facts['member']) ?? bound[0] ?? {}
}

/** The first half was done, the half that undoes it was not; or the site says that something was left. */
function isReturnForgotten({ view }: FoundByRule, { facts, at }: RawFinding): boolean {
  const { missing, why } = facts
  if (typeof why === 'string' && undoneWhys.has(why)) return true
  const first = typeof missing === 'string' ? firstHalves.get(missing) : undefined
  return first !== undefined && view.done.some(({ order, end }) => order.do === first && end <= at)
}

/** Acts of the same person to which the rule was there to be kept. */
function occasionsOf({ view, kind }: FoundByRule, parameters: Parameters, { who }: RawFinding): readonly Entry[] {
  if (kind.occasion === undefined) return []
  // What prepared a part was done by others.
  const from = view.timeline.prepared?.end.time ?? 0
  const acts = allMatching(view, readPatterns(parameters, kind.occasion)).filter(({ start }) => start >= from)
  return who === undefined ? acts : acts.filter(({ order }) => order.who === who)
}

function isKeptBefore(occasions: readonly Entry[], faulty: ReadonlySet<number>, { at }: RawFinding): boolean {
  return occasions.some(({ index, start }) => start < at && !faulty.has(index))
}

/** Of a set of things that are asked one by one this is the only one that lacks it. */
function isOneOfSet({ bound, raw }: FoundByRule, { facts }: RawFinding): boolean {
  if (facts['member'] === undefined || bound.length < 3) return false
  return new Set(raw.map((it) => it.facts['member'])).size === 1
}

function isNeverRight(occasions: readonly Entry[], faulty: ReadonlySet<number>): boolean {
  return occasions.length > 1 && occasions.every(({ index }) => faulty.has(index))
}

/** The acts that were asked for: by the rule itself, or by the state that it found missing. */
function wantedOf(kind: RuleKind, parameters: Parameters, { facts: { why } }: RawFinding): readonly Pattern[] {
  const maker = typeof why === 'string' ? madeBy.get(why) : undefined
  if (maker !== undefined) return [{ do: maker }]
  return kind.wanted === undefined || parameters['most'] !== undefined ? [] : readPatterns(parameters, kind.wanted)
}

/** A card of the written plan, before the finding, has the act: `verb:item:place`. */
function isPlanned(view: RunView, wanted: readonly Pattern[], { at }: RawFinding): boolean {
  const plans = view.begunByAct.get('write-plan') ?? []
  const last = plans.filter(({ end }) => end <= at).at(-1)
  const cards = last?.order.values['cards']
  if (!Array.isArray(cards)) return false
  const verbs = wanted.flatMap(({ do: act }) => act ?? [])
  return cards.some((card) => typeof card === 'string' && verbs.includes(card.split(':')[0] ?? ''))
}
