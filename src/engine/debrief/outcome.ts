/**
 * The two gates, then the sum: a critical finding, or an exposure above its limit in every corner, fails the run
 * whatever else was done well. So does an element below its floor. What depends on the corner, could not be solved, or
 * was never come to, is for a person to decide: it is provisional, and nothing counts as passed that was not looked at.
 */
import type { Finding } from '../rules/finding'
import type { Mark, Result } from './result'

/** Common practice for assessments of this kind, no source: two majors may pass, a repeated one may not. */
const mostMajors = 2
/** Of the minor rules that were asked, this share must be kept. Common practice, no source. */
const leastMinorsKept = 0.85

export interface Weighed {
  readonly criticals: number
  readonly majors: number
  readonly hasRepeatedMajor: boolean
}

/** What the crew put right before it mattered weighs as a minor one. */
export function weigh(findings: readonly Finding[]): Weighed {
  const standing = findings.filter(({ recovered }) => !recovered)
  const majors = standing.filter(({ severity }) => severity === 'major')
  const rules = majors.map(({ rule }) => rule)
  return {
    criticals: standing.filter(({ severity }) => severity === 'critical').length,
    majors: majors.length,
    hasRepeatedMajor: new Set(rules).size < rules.length,
  }
}

export interface Exposed {
  readonly above: number
  readonly marginal: number
  readonly unsolved: number
  readonly isSwept: boolean
}

export interface Marked {
  readonly marks: readonly Pick<Mark, 'state'>[]
  /** Share of the minor rules of the whole pack. */
  readonly minorsKept: number
}

export function decideOutcome(
  findings: readonly Finding[],
  exposed: Exposed,
  { marks, minorsKept }: Marked,
): Result['outcome'] {
  const { criticals, majors, hasRepeatedMajor } = weigh(findings)
  const isBelow = minorsKept < leastMinorsKept || marks.some(({ state }) => state === 'not met')
  if (criticals > 0 || exposed.above > 0 || majors > mostMajors || hasRepeatedMajor || isBelow) return 'fail'
  const isOpen = exposed.marginal > 0 || exposed.unsolved > 0 || !exposed.isSwept
  return isOpen || marks.some(({ state }) => state === 'not done') ? 'provisional' : 'pass'
}
