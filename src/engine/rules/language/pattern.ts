/** Which acts of a run a rule speaks of. Every part given must match; a part left out matches anything. */
import type { Value } from '../../actions/action'
import { withoutPole } from '../../site/nextPole'
import type { Entry } from '../../timeline/timeline'
import { listNames, matchesNames, type Names } from './glob'
import { findItemOf, findItemType, findRole, membersOf, type RunView } from './runView'

export type ValueTest =
  | number
  | string
  | boolean
  | readonly (string | number)[]
  | { readonly least?: number; readonly most?: number }

export interface Pattern {
  readonly do?: Names
  /** The thing of either pole; `…@next` is that of the next one alone. */
  readonly on?: Names
  /** On a member of this set, whatever the place calls it. */
  readonly onSet?: string
  readonly with?: Names
  /** Type of the gear in the hand, or of the gear that it is done to. */
  readonly itemType?: Names
  readonly role?: Names
  readonly who?: Names
  readonly values?: Readonly<Record<string, ValueTest>>
}

export const patternParts = ['do', 'on', 'onSet', 'with', 'itemType', 'role', 'who', 'values'] as const

export function matches(view: RunView, pattern: Pattern, entry: Entry): boolean {
  const { order } = entry
  if (pattern.do !== undefined && !matchesNames(pattern.do, order.do)) return false
  const thing = order.on === undefined ? undefined : withoutPole(order.on)
  if (pattern.on !== undefined && !matchesNames(pattern.on, order.on) && !matchesNames(pattern.on, thing)) return false
  if (pattern.onSet !== undefined && !membersOf(view, pattern.onSet).has(thing ?? '')) return false
  if (pattern.with !== undefined && !matchesNames(pattern.with, order.with)) return false
  if (pattern.who !== undefined && !matchesNames(pattern.who, order.who)) return false
  if (pattern.role !== undefined && !matchesNames(pattern.role, findRole(view, order.who))) return false
  if (pattern.itemType !== undefined && !matchesNames(pattern.itemType, findItemType(view, findItemOf(view, entry)))) {
    return false
  }
  const { values } = pattern
  return values === undefined || Object.keys(values).every((key) => passesValue(values[key]!, order.values[key]))
}

export function matchesAny(view: RunView, patterns: readonly Pattern[], entry: Entry): boolean {
  return patterns.some((pattern) => matches(view, pattern, entry))
}

function passesValue(test: ValueTest, value: Value | undefined): boolean {
  if (value === undefined) return false
  if (typeof test !== 'object') return value === test
  if (isList(test)) return (typeof value === 'string' || typeof value === 'number') && test.includes(value)
  if (typeof value !== 'number') return false
  return value >= (test.least ?? -Infinity) && value <= (test.most ?? Infinity)
}

function isList(test: ValueTest): test is readonly (string | number)[] {
  return Array.isArray(test)
}

/** The first that was carried to its end. */
export function findFirst(view: RunView, patterns: readonly Pattern[], from = -Infinity): Entry | undefined {
  return candidates(view, patterns).find((entry) => entry.start >= from && isDoneAs(view, patterns, entry))
}

export function findLast(view: RunView, patterns: readonly Pattern[], until = Infinity): Entry | undefined {
  return candidates(view, patterns).findLast((entry) => entry.start <= until && isDoneAs(view, patterns, entry))
}

/** All that match, broken off or not, in order. */
export function allMatching(view: RunView, patterns: readonly Pattern[]): readonly Entry[] {
  return candidates(view, patterns).filter((entry) => matchesAny(view, patterns, entry))
}

/** All that match and were carried to their end, in order. */
export function allDone(view: RunView, patterns: readonly Pattern[]): readonly Entry[] {
  return candidates(view, patterns).filter((entry) => isDoneAs(view, patterns, entry))
}

function isDoneAs(view: RunView, patterns: readonly Pattern[], entry: Entry): boolean {
  return entry.outcome === 'done' && matchesAny(view, patterns, entry)
}

/** Whether any that match was carried to its end. */
export function isAnyDone(view: RunView, patterns: readonly Pattern[]): boolean {
  return candidates(view, patterns).some((entry) => isDoneAs(view, patterns, entry))
}

/** Acts whose names the patterns have, where every one of them names its acts in full. */
function candidates(view: RunView, patterns: readonly Pattern[]): readonly Entry[] {
  const acts = patterns.flatMap((pattern) => listNames(pattern.do ?? '*'))
  if (acts.some((act) => act.includes('*'))) return view.begun
  const different = [...new Set(acts)]
  if (different.length === 1) return view.begunByAct.get(different[0]!) ?? []
  const lists = different.flatMap((act) => view.begunByAct.get(act) ?? [])
  return lists.sort((a, b) => a.start - b.start || a.index - b.index)
}
