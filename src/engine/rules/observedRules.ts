/** Rules that a run gave anything to look at: an act that one of their patterns means. */
import type { Timeline } from '../timeline/timeline'
import { books } from './books'
import type { Pack, PackRule } from './finding'
import { rulesInForce } from './inForce'
import { ruleKinds } from './kinds'
import { listNames, type Names } from './language/glob'
import { isAnyDone, type Pattern } from './language/pattern'
import { holds } from './language/predicate'
import { readCall, readPatterns, readText } from './language/read'
import { viewRun } from './language/runView'

export function observedRules(timeline: Timeline, pack: Pack): ReadonlySet<string> {
  const view = viewRun(timeline, pack)
  return new Set(
    rulesInForce(pack, timeline.scenario)
      .filter((rule) => isAnyDone(view, observing(rule)))
      .map(({ id }) => id),
  )
}

/** Rules that could have found something: their set has members, they apply here, what they wait for took place. */
export function rulesWithOccasion(timeline: Timeline, pack: Pack): ReadonlySet<string> {
  const scope = { view: viewRun(timeline, pack), site: timeline.end }
  const isPossible = ({ kind, parameters }: PackRule): boolean => {
    const set = readText(parameters, 'forEach')
    const condition = readCall(parameters, 'appliesIf')
    if (kind === 'response-after-livening' && timeline.struck === null) return false
    if (set !== undefined && books.sets.get(set)?.members(timeline.scenario).length === 0) return false
    return condition === undefined || holds(books.predicates, condition, scope)
  }
  return new Set(
    rulesInForce(pack, timeline.scenario)
      .filter(isPossible)
      .map(({ id }) => id),
  )
}

const patternsByRule = new WeakMap<PackRule, readonly Pattern[]>()

/** Rules are immutable, so that theirs are put together once. */
function observing(rule: PackRule): readonly Pattern[] {
  const known = patternsByRule.get(rule) ?? patternsOf(rule)
  patternsByRule.set(rule, known)
  return known
}

/** A pattern that means any act observes nothing in particular; `$each` may be any member. */
function patternsOf(rule: PackRule): readonly Pattern[] {
  const specs = ruleKinds.get(rule.kind)?.parameters ?? {}
  const names = Object.keys(specs).filter((name) => specs[name]?.kind === 'patterns' || specs[name]?.kind === 'pattern')
  return names
    .flatMap((name) => readPatterns(rule.parameters, name))
    .filter((pattern) => !listNames(pattern.do ?? '*').includes('*'))
    .map((pattern) => ({
      ...pattern,
      ...(pattern.on === undefined ? {} : { on: anyMember(pattern.on) }),
      ...(pattern.who === undefined ? {} : { who: anyMember(pattern.who) }),
      ...(pattern.with === undefined ? {} : { with: anyMember(pattern.with) }),
    }))
}

function anyMember(names: Names): readonly string[] {
  return listNames(names).map((name) => name.replaceAll('$each', '*'))
}
