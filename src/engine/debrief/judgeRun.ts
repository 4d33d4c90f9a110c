/**
 * A run under a pack: findings, exposures, the two gates, marks. Data only. The pack never reaches the current and the
 * current never reaches a finding: the same run under another pack has the same exposures to the bit.
 */
import { isUnsolvable } from '../physics/network'
import { declaredCorner } from '../hazard/corner'
import { liven } from '../hazard/liven'
import { sweep, type Sweep } from '../hazard/sweep'
import { createSweepCache, type SweepCache } from '../hazard/sweepCache'
import { findFindings } from '../rules/findFindings'
import type { Finding, Pack } from '../rules/finding'
import type { Timeline } from '../timeline/timeline'
import { markRun } from './marks'
import { decideOutcome, weigh } from './outcome'
import type { Result } from './result'
import { withoutThings } from './withoutThings'

export interface JudgeOptions {
  /** False: only what happened is looked at, not what could have; then nothing can pass. */
  readonly sweep: boolean
  readonly cache?: SweepCache
  readonly onProgress?: (done: number, total: number) => void
}

const nothingSwept: Sweep = { worst: [], asSet: [], unsolved: [], states: 0, livenings: 0, corners: 0 }

export function judgeRun(timeline: Timeline, pack: Pack, options: JudgeOptions): Result {
  const cache = options.cache ?? createSweepCache()
  const swept = options.sweep ? sweep(timeline, cache, options.onProgress) : nothingSwept
  const found = findFindings(timeline, pack)
  const findings = options.sweep ? found.map((it) => withoutLuck(it, timeline, cache)) : found
  const { visible, unsolved, ...inWords } = seeVisible(timeline, cache)
  const exposed = {
    above: swept.worst.filter(({ verdict }) => verdict === 'above').length,
    marginal: swept.worst.filter(({ verdict }) => verdict === 'marginal').length,
    unsolved: swept.unsolved.length + unsolved.length,
    isSwept: options.sweep,
  }
  const marking = markRun(timeline, pack, findings)
  return {
    outcome: decideOutcome(findings, exposed, marking),
    findings,
    visible,
    ...inWords,
    sweep: swept.worst,
    unsolved: [...unsolved, ...swept.unsolved],
    without: withoutThings(timeline, swept.worst, cache),
    gates: { criticals: weigh(findings).criticals, above: exposed.above, marginal: exposed.marginal },
    marks: marking.marks,
    minorsKept: marking.minorsKept,
    swept: { states: swept.states, livenings: swept.livenings, corners: swept.corners },
    notJudged: listNotJudged(exposed),
  }
}

/** Put right in time is what nothing could have overtaken: a livening that did not come is no credit to anybody. */
function withoutLuck(finding: Finding, timeline: Timeline, cache: SweepCache): Finding {
  const { recovered, at, putRightAt } = finding
  if (!recovered || putRightAt === undefined) return finding
  const moments = timeline.moments.filter(({ from, to }) => to > at && from < putRightAt)
  const isSafe = sweep({ scenario: timeline.scenario, moments }, cache).worst.every(
    ({ verdict }) => verdict === 'below',
  )
  return isSafe ? finding : { ...finding, recovered: false }
}

/** What the livening that really struck did, in the declared corner. */
function seeVisible(timeline: Timeline, cache: SweepCache): Pick<Result, 'visible' | 'told' | 'unsolved'> {
  const { struck } = timeline
  const moment = struck === null ? undefined : timeline.moments[struck.moment]
  if (struck === null || moment === undefined) return { visible: null, unsolved: [] }
  const story = liven(moment, struck.livening, declaredCorner, cache)
  if (isUnsolvable(story) && story.reason === 'not-computed') {
    return { visible: null, told: { livening: struck.livening, at: struck.at }, unsolved: [] }
  }
  if (isUnsolvable(story)) return { visible: null, unsolved: [{ ...story, at: struck.at }] }
  const { livening, exposures, duration, siteRise, liveCurrent, clearedBy } = story
  return { visible: { livening, at: struck.at, exposures, duration, siteRise, liveCurrent, clearedBy }, unsolved: [] }
}

/** What only a person on the spot can see; then what this grading had to leave open. */
function listNotJudged(exposed: {
  readonly marginal: number
  readonly unsolved: number
  readonly isSwept: boolean
}): readonly string[] {
  return [
    ...['climbing', 'stick-feel', 'strength', 'communication', 'knowledge', 'situational-judgement', 'field'],
    ...(exposed.isSwept ? [] : ['exposure-not-swept']),
    ...(exposed.marginal > 0 ? ['exposure-marginal'] : []),
    ...(exposed.unsolved > 0 ? ['circuit-unsolved'] : []),
  ]
}
