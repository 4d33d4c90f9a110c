/** Results as a table for people: a row per run, widths by what stands in the columns. */
import type { Result, WorstExposure } from '../engine'
import type { Speaker } from '../text'
import { exposureWords } from './exposureWords'
import { shortName } from './load'
import type { Judged } from './judge'
import { wordFor } from './words'

/** @param shown of each: the trainee was shown some of it, and has no outcome */
export function gradeTable(judged: readonly Judged[], shown: readonly boolean[], speaker: Speaker): readonly string[] {
  const head = ['run', 'outcome', 'critical', 'major', 'minor', 'above', 'marginal', 'worst exposure']
  const rows = judged.map(({ place, result }, i) => [
    shortName(place),
    shown[i] ? 'shown' : result.outcome,
    ...countsOf(result),
    worstOf(result, speaker),
  ])
  return columns([head, ...rows])
}

function countsOf(result: Result): readonly string[] {
  const standing = result.findings.filter((it) => !it.recovered)
  const count = (severity: string): string => String(standing.filter((it) => it.severity === severity).length)
  const { above, marginal } = result.gates
  return [count('critical'), count('major'), count('minor'), String(above), String(marginal)]
}

/** The one that comes nearest to its limit, or lies farthest above it. */
function worstOf(result: Result, speaker: Speaker): string {
  const ratio = (it: WorstExposure): number => Math.max(...Object.values(it.ratios))
  const worst = [...result.sweep].sort((a, b) => ratio(b) - ratio(a))[0]
  if (worst === undefined) return result.swept.states === 0 ? 'not swept' : 'none'
  return `${exposureWords(worst.exposure, speaker)}, at ${worst.at} s, ${wordFor(speaker, 'livening', worst.livening)}`
}

function columns(rows: readonly (readonly string[])[]): readonly string[] {
  const widths = (rows[0] ?? []).map((_, i) => Math.max(...rows.map((row) => (row[i] ?? '').length)))
  return rows.map((row) =>
    row
      .map((cell, i) => cell.padEnd(widths[i] ?? 0))
      .join('  ')
      .trimEnd(),
  )
}
