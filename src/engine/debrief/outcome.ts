/**
 * The two gates, then the sum: a critical finding, or an exposure above its limit in every corner, fails the run
 * whatever else was done well. What depends on the corner, or could not be solved, is for a person to decide: it is
 * provisional, and nothing counts as passed that was not looked at.
 */
import type { Finding } from '../rules/finding'
import type { Result } from './result'

/** Common practice for assessments of this kind, no source: two majors may pass, a repeated one may not. */
const mostMajors = 2

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

export function decideOutcome(findings: readonly Finding[], exposed: Exposed): Result['outcome'] {
  const { criticals, majors, hasRepeatedMajor } = weigh(findings)
  if (criticals > 0 || exposed.above > 0 || majors > mostMajors || hasRepeatedMajor) return 'fail'
  return exposed.marginal > 0 || exposed.unsolved > 0 || !exposed.isSwept ? 'provisional' : 'pass'
}
