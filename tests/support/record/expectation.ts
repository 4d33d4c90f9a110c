/** From a result, what a recorded run must give again, and what a person reads to see whether it is what was meant. */
import type { Exposure, Result } from '../../../src/engine'
import type { Expectation, ExpectedExposure } from '../../../src/files/run/run'

/**
 * So many exposures are pinned: the worst of each person and path, by how far over or under its limit; and the worst by
 * each other path, whoever it reached.
 */
const pinned = 8

export function expectationOf(result: Result): Expectation {
  const worst = [...result.sweep].sort(
    (a, b) => b.exposure.judged / b.exposure.limit - a.exposure.judged / a.exposure.limit,
  )
  const isFirstOfPath = (at: number): boolean => worst.findIndex(({ path }) => path === worst[at]?.path) === at
  return {
    outcome: result.outcome,
    findings: result.findings.map(({ rule, at }) => [rule, at] as const),
    exposures: worst.filter((_, i) => i < pinned || isFirstOfPath(i)).map(({ at, exposure }) => pinnedOf(at, exposure)),
  }
}

function pinnedOf(at: number, { person, path, zone, bodyCurrent }: Exposure): ExpectedExposure {
  return { person, path, at, zone, current: Number(bodyCurrent.toPrecision(4)) }
}

export function summaryOf(result: Result): string {
  const findings = result.findings.map(
    (it) => `  ${it.severity} ${it.rule} at ${it.at} s${it.recovered ? ' (put right)' : ''}`,
  )
  const exposures = result.sweep
    .filter((it) => it.verdict !== 'below')
    .map(
      ({ person, path, verdict, at, livening, exposure }) =>
        `  ${verdict}: ${person} ${path} at ${at} s, ${livening}: ${exposure.judged} over ${exposure.limit}, ${exposure.zone}`,
    )
  return [`  outcome ${result.outcome}`, ...findings, ...exposures].join('\n')
}
