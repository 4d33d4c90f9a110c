/**
 * Marks by element of competency, each with a floor of its own. An element of which the run shows nothing is *not done*
 * where the place had the occasion, *not observed* where it had none; one that no rule of the pack asks about is *not
 * judged*. None of the three is met or failed.
 */
import type { Timeline } from '../timeline/timeline'
import { observedRules, rulesWithOccasion } from '../rules/observedRules'
import type { Finding, Floor, Pack, PackRule } from '../rules/finding'
import type { Mark } from './result'

/** Where a pack says nothing else: one major and half of the minor rules. Own choice. */
const commonFloor: Required<Floor> = { majors: 1, minorsKept: 0.5 }

export interface Marking {
  readonly marks: readonly Mark[]
  /** Share of the minor rules of the whole pack that were kept; what was put right counts as a minor one broken. */
  readonly minorsKept: number
}

export function markRun(timeline: Timeline, pack: Pack, findings: readonly Finding[]): Marking {
  const possible = rulesWithOccasion(timeline, pack)
  const observed = observedRules(timeline, pack)
  const broken = new Set(findings.map(({ rule }) => rule))
  const asked = pack.rules.filter(({ id }) => (observed.has(id) && possible.has(id)) || broken.has(id))
  const mended = new Set(findings.filter(({ recovered }) => recovered).map(({ rule }) => rule))
  const minors = asked.filter(({ id, severity }) => severity === 'minor' || mended.has(id))
  const marks = pack.elements.map((element): Mark => {
    const isOwn = (it: { readonly element: string }): boolean => it.element === element
    const seen = summarise(element, findings.filter(isOwn), asked.filter(isOwn), {
      ...commonFloor,
      ...pack.floors?.[element],
    })
    return { ...seen, state: stateOf(seen, pack.rules.filter(isOwn), possible) }
  })
  return { marks, minorsKept: shareKept(minors, broken) }
}

function summarise(
  element: string,
  own: readonly Finding[],
  asked: readonly PackRule[],
  floor: Required<Floor>,
): Omit<Mark, 'state'> {
  const broken = new Set(own.map(({ rule }) => rule))
  const criticals = count(own, 'critical')
  const majors = count(own, 'major')
  return {
    element,
    criticals,
    majors,
    minors: own.length - criticals - majors,
    asked: asked.length,
    kept: asked.filter(({ id }) => !broken.has(id)).length,
    notDone: own.filter(({ entry, facts }) => entry < 0 || 'missing' in facts).length,
    minorsKept: shareKept(
      asked.filter(({ severity }) => severity === 'minor'),
      broken,
    ),
    floor,
  }
}

function stateOf(seen: Omit<Mark, 'state'>, rules: readonly PackRule[], possible: ReadonlySet<string>): Mark['state'] {
  if (rules.length === 0) return 'not judged'
  if (seen.asked === 0) return rules.some(({ id }) => possible.has(id)) ? 'not done' : 'not observed'
  const { criticals, majors, minorsKept, floor } = seen
  return criticals === 0 && majors <= floor.majors && minorsKept >= floor.minorsKept ? 'met' : 'not met'
}

/** 1 where none was asked. */
function shareKept(asked: readonly PackRule[], broken: ReadonlySet<string>): number {
  return asked.length === 0 ? 1 : asked.filter(({ id }) => !broken.has(id)).length / asked.length
}

function count(findings: readonly Finding[], severity: Finding['severity']): number {
  return findings.filter((finding) => finding.severity === severity && !finding.recovered).length
}
