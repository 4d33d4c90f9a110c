/**
 * Steps in an order: no act of a later step before the last act of an earlier one. Steps that never took place are
 * passed over (another rule asks for them). With `same` the order holds for each item, thing or person by itself.
 */
import { type RuleKind } from '../language/kind'
import { partOf, type Part } from '../language/link'
import { allDone, findFirst, matches, type Pattern } from '../language/pattern'
import { aboutEntry, type RawFinding } from '../language/raw'
import { readPatterns, readText } from '../language/read'
import type { RunView } from '../language/runView'
import type { Entry } from '../../timeline/timeline'

export const order: RuleKind = {
  id: 'order',
  says: 'acts that follow one another in a given order',
  isSequence: true,
  parameters: {
    steps: { kind: 'patterns', least: 2, says: 'the steps, first to last' },
    from: { kind: 'patterns', optional: true, says: 'only acts after the first of these' },
    to: { kind: 'patterns', optional: true, says: 'only acts before the first of these, itself included' },
    same: {
      kind: 'choice',
      of: ['on', 'with', 'who', 'item', 'device'],
      optional: true,
      says: 'the order holds for each of these apart',
    },
  },
  find(view, parameters) {
    const steps = readPatterns(parameters, 'steps')
    const same = readText(parameters, 'same') as Part | undefined
    const from = readPatterns(parameters, 'from')
    const to = readPatterns(parameters, 'to')
    const first = from.length === 0 ? undefined : findFirst(view, from)
    if (from.length > 0 && first === undefined) return []
    const begins = first?.start ?? -Infinity
    const ends = (to.length === 0 ? undefined : findFirst(view, to, begins))?.start ?? Infinity
    const stretch = allDone(view, steps).filter((entry) => entry.start >= begins && entry.start <= ends)
    return [...groupActs(view, steps, stretch, same)].flatMap(([subject, acts]) => findTurned(acts, subject))
  },
}

interface StepAct {
  readonly act: Entry
  readonly step: number
}

function groupActs(
  view: RunView,
  steps: readonly Pattern[],
  stretch: readonly Entry[],
  same: Part | undefined,
): ReadonlyMap<string, readonly StepAct[]> {
  const groups = new Map<string, StepAct[]>()
  for (const act of stretch) {
    const subject = same === undefined ? '' : partOf(view, act, same)
    if (subject === undefined) continue
    const step = steps.findIndex((pattern) => matches(view, pattern, act))
    const group = groups.get(subject)
    if (group === undefined) groups.set(subject, [{ act, step }])
    else group.push({ act, step })
  }
  return groups
}

/** The first act that came although an earlier step was still to come. */
function findTurned(acts: readonly StepAct[], subject: string): readonly RawFinding[] {
  for (const { act, step } of acts) {
    const late = acts.find((other) => other.step < step && other.act.end > act.start)?.act
    if (late !== undefined) {
      const facts = { early: act.order.do, late: late.order.do, lateOn: late.order.on ?? '' }
      return [{ ...aboutEntry(act, subject, facts), touches: [late.index] }]
    }
  }
  return []
}
