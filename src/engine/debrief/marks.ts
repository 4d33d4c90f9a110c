/**
 * Marks by element of competency. Floor of an element: no critical finding and at most one major that stands. An
 * element that no act of the run touches is *not observed*, which is neither met nor failed.
 */
import type { Timeline } from '../timeline/timeline'
import { observedRules } from '../rules/observedRules'
import type { Finding, Pack } from '../rules/finding'
import type { Result } from './result'

/** Common practice, no source. */
const mostMajorsOfElement = 1

export function markElements(timeline: Timeline, pack: Pack, findings: readonly Finding[]): Result['marks'] {
  const observed = observedRules(timeline, pack)
  return pack.elements.map((element) => {
    const own = findings.filter((finding) => finding.element === element)
    const criticals = count(own, 'critical')
    const majors = count(own, 'major')
    const isSeen = own.length > 0 || pack.rules.some((rule) => rule.element === element && observed.has(rule.id))
    const isMet = criticals === 0 && majors <= mostMajorsOfElement
    return {
      element,
      criticals,
      majors,
      minors: own.length - criticals - majors,
      state: !isSeen ? 'not observed' : isMet ? 'met' : 'not met',
    }
  })
}

function count(findings: readonly Finding[], severity: Finding['severity']): number {
  return findings.filter((finding) => finding.severity === severity && !finding.recovered).length
}
