/**
 * A verdict on an item, against what was looked at and against the truth: used without a verdict, passed without having
 * looked oneself, passed though something was wrong with it and then used, refused though sound, used although refused.
 */
import { requireGearType } from '../../gear/catalogue'
import { isUnsound } from '../../site/questions'
import type { ItemId } from '../../site/scenario'
import type { Entry } from '../../timeline/timeline'
import { matchesNames } from '../language/glob'
import type { RuleKind } from '../language/kind'
import { allMatching } from '../language/pattern'
import { gearInUse } from '../predicates/custody'
import { aboutEntry, type RawFinding } from '../language/raw'
import { readList, readPatterns, requireText } from '../language/read'
import { findItemOf, findItemType, isBefore, type RunView } from '../language/runView'

const faults = ['not-judged', 'no-evidence', 'missed-defect', 'sound-refused', 'used-refused'] as const

export const judgement: RuleKind = {
  id: 'judgement',
  says: 'the verdict on an item against the evidence looked at and the truth',
  occasion: 'used',
  parameters: {
    types: { kind: 'names', of: 'gearType', says: 'the items' },
    fault: { kind: 'choice', of: faults, says: 'what is looked for' },
    evidence: {
      kind: 'choices',
      of: ['label', 'look', 'test'],
      optional: true,
      says: 'what must have been looked at; a test only where the type has one',
    },
    judged: { kind: 'patterns', least: 1, says: 'the act of judging' },
    used: { kind: 'patterns', optional: true, says: 'what counts as use' },
  },
  find(view, parameters) {
    const types = readList(parameters, 'types')
    const judged = allMatching(view, readPatterns(parameters, 'judged')).filter((entry) => isOfType(view, types, entry))
    const used = allMatching(view, readPatterns(parameters, 'used')).filter((entry) => isOfType(view, types, entry))
    const run = { view, judged, used }
    switch (requireText(parameters, 'fault') as (typeof faults)[number]) {
      case 'not-judged':
        return firstUses(run).flatMap(([item, use]) =>
          lastVerdict(run, item, use) === undefined ? [aboutEntry(use, item, { item })] : [],
        )
      case 'no-evidence':
        return judged.flatMap((entry) => findUnread(run, entry, readList(parameters, 'evidence')))
      case 'missed-defect':
        return firstUses(run).flatMap(([item, use]) => findMissed(run, item, use))
      case 'sound-refused':
        return judged.filter((entry) => verdictOf(entry) === 'quarantine').flatMap((entry) => findRefused(run, entry))
      case 'used-refused':
        return used.flatMap((use) => {
          const item = findItemOf(view, use)
          return item !== undefined && lastVerdict(run, item, use) === 'quarantine'
            ? [aboutEntry(use, item, { item })]
            : []
        })
    }
  },
}

interface Judging {
  readonly view: RunView
  readonly judged: readonly Entry[]
  readonly used: readonly Entry[]
}

function isOfType(view: RunView, types: readonly string[], entry: Entry): boolean {
  return matchesNames(types, findItemType(view, findItemOf(view, entry)))
}

function firstUses({ view, used }: Judging): readonly (readonly [ItemId, Entry])[] {
  const first = new Map<ItemId, Entry>()
  for (const entry of used) {
    const item = findItemOf(view, entry)
    if (item !== undefined && !first.has(item)) first.set(item, entry)
  }
  return [...first]
}

function verdictOf(entry: Entry): string {
  const { verdict } = entry.order.values
  return typeof verdict === 'string' ? verdict : ''
}

function lastVerdict({ view, judged }: Judging, item: ItemId, use: Entry): string | undefined {
  const before = judged.filter((entry) => findItemOf(view, entry) === item && isBefore(entry, use))
  const last = before[before.length - 1]
  return last === undefined ? undefined : verdictOf(last)
}

function findUnread({ view }: Judging, entry: Entry, wanted: readonly string[]): readonly RawFinding[] {
  const item = findItemOf(view, entry)
  if (item === undefined || verdictOf(entry) !== 'pass') return []
  const type = requireGearType(findItemType(view, item) ?? '')
  const missing = wanted
    .filter((by) => by !== 'test' || type.test !== undefined)
    .find((by) => !entry.before.evidence.some((it) => it.of === item && it.by === by && it.who === entry.order.who))
  return missing === undefined ? [] : [aboutEntry(entry, item, { item, missing })]
}

function findMissed(run: Judging, item: ItemId, use: Entry): readonly RawFinding[] {
  if (lastVerdict(run, item, use) !== 'pass' || !isUnsound(use.before, item)) return []
  const found = use.before.items[item]?.defects[0]
  return [aboutEntry(use, item, { item, defect: found ?? 'out-of-test' })]
}

function findRefused({ view }: Judging, entry: Entry): readonly RawFinding[] {
  const item = findItemOf(view, entry)
  if (item === undefined || isUnsound(entry.before, item) || wasInUseAtLivening(view, entry, item)) return []
  return [aboutEntry(entry, item, { item })]
}

/** Nobody can see what a lead carried: whatever was in use when the line came alive may be set aside. */
function wasInUseAtLivening({ timeline: { struck, moments } }: RunView, entry: Entry, item: ItemId): boolean {
  const moment = struck === null || struck.at > entry.start ? undefined : moments[struck.moment]
  return moment !== undefined && gearInUse(moment.site).includes(item)
}
