/** What a recorded run says it must give, against what it gave: a line for each difference. */
import type { Exposure, Result } from '../engine'
import type { Expectation, ExpectedExposure } from '../files/run/run'

/** Relative difference of currents that is still the same. */
const tolerance = 0.05

export function checkExpectation(expect: Expectation, result: Result, isSwept: boolean): readonly string[] {
  const outcome =
    isSwept && expect.outcome !== result.outcome ? [`outcome ${result.outcome}, expected ${expect.outcome}`] : []
  return [
    ...outcome,
    ...findingFaults(expect, result),
    ...expect.exposures.flatMap((it) => exposureFaults(it, result, isSwept)),
  ]
}

/** Complete and in order. */
function findingFaults(expect: Expectation, result: Result): readonly string[] {
  const wanted = expect.findings.map(([rule, at]) => `${rule} at ${at} s`)
  const got = result.findings.map(({ rule, at }) => `${rule} at ${at} s`)
  const missing = wanted.filter((it) => !got.includes(it)).map((it) => `finding missing: ${it}`)
  const extra = got.filter((it) => !wanted.includes(it)).map((it) => `finding not expected: ${it}`)
  const isSame = wanted.length === got.length && wanted.every((it, i) => it === got[i])
  if (isSame || missing.length > 0 || extra.length > 0) return [...missing, ...extra]
  return [`findings in another order or number: ${got.join(', ')}`]
}

function exposureFaults(expected: ExpectedExposure, result: Result, isSwept: boolean): readonly string[] {
  const { person, path, at, zone, current } = expected
  const name = `${person}, ${path}, at ${at} s`
  const found = exposuresAt(result, at).filter((it) => it.person === person && it.path === path)
  if (found.length === 0) return isSwept ? [`exposure missing: ${name}`] : []
  const isMet = found.some(
    (it) => it.zone === zone && Math.abs(it.bodyCurrent - current) <= tolerance * Math.abs(current),
  )
  if (isMet) return []
  const got = found.map((it) => `${it.bodyCurrent} A ${it.zone}`).join(' or ')
  return [`exposure of ${name}: ${got}, expected ${current} A ${zone}`]
}

function exposuresAt(result: Result, at: number): readonly Exposure[] {
  const swept = result.sweep.filter((it) => it.at === at).map((it) => it.exposure)
  return result.visible?.at === at ? [...result.visible.exposures, ...swept] : swept
}
