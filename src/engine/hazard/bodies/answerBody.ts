/**
 * What a whole story does to people, alone or together (passage.ts). A layer between use and proof voltage is taken both
 * ways. A current that changes within a shot is judged level by level: each for as long as at least that much flowed.
 */
import { lineB, shockZone } from '../../physics/body'
import { isUnsolvable, type Unsolvable } from '../../physics/network'
import type { Scenario } from '../../site/scenario'
import { exposureShots, type Exposure, type ExposureShots } from '../exposure'
import { limitOf } from '../limits'
import type { LineStory } from '../lineStory'
import type { BodyAnswer } from './bodyAnswer'
import { throughStory, type Passage, type SolvedBody } from './passage'
import { shareCurrent, type SharedCurrent } from './shareCurrent'
import { largestDifference } from './solveBody'
import { largestCurrent } from './solveTogether'
import type { TouchingBody } from './touch'

/** Below this nothing is reported, ampere. */
const leastCurrent = 1e-6

export function answerBody(scenario: Scenario, line: LineStory, body: TouchingBody): BodyAnswer | Unsolvable {
  const answers = answerTogether(scenario, line, [body])
  return isUnsolvable(answers) ? answers : answers[0]!
}

/** By body, each with all the others in the circuit. */
export function answerTogether(
  scenario: Scenario,
  line: LineStory,
  bodies: readonly TouchingBody[],
): readonly BodyAnswer[] | Unsolvable {
  const phases = line.phases.filter((it) => it.isLive || line.clearedBy === 'not-live')
  const held = throughStory(scenario, phases, bodies, false)
  if (isUnsolvable(held)) return held
  const gone = held.some((it) => it.mayFail) ? throughStory(scenario, phases, bodies, true) : held
  if (isUnsolvable(gone)) return gone
  return bodies.map((body, b) => answerOf(scenario, line, body, held[b]!, gone[b]!))
}

/** A layer that may fail is told of even where next to nothing flows while it holds. */
function answerOf(scenario: Scenario, line: LineStory, body: TouchingBody, held: Passage, gone: Passage): BodyAnswer {
  const common = {
    kind: 'body' as const,
    failedItems: itemsOf(held.failed),
    failures: held.failures,
    largestCurrent: Math.max(0, ...[...held.states, ...gone.states].map((it) => largestCurrent(it.solution))),
  }
  // somebody's layer that may fail is, for the others in the circuit, a current that may come
  const isBothWays = gone !== held
  const exposure = worstOf(scenario, line, body, held, isBothWays ? 0 : leastCurrent)
  if (exposure === undefined) return { ...common, exposure: null }
  if (!isBothWays) return { ...common, exposure: { ...exposure, layer: held.layer } }
  const ifItFails = worstOf(scenario, line, body, gone, leastCurrent)
  const isConcerned = held.mayFail || (ifItFails !== undefined && ifItFails.judged > exposure.judged)
  if (!isConcerned) {
    return { ...common, exposure: exposure.bodyCurrent < leastCurrent ? null : { ...exposure, layer: held.layer } }
  }
  return { ...common, exposure: { ...exposure, layer: held.layer, ifItFails: ifItFails ?? exposure } }
}

function itemsOf(failed: ReadonlySet<string>): readonly string[] {
  return [...new Set([...failed].map((name) => name.slice(0, name.lastIndexOf(' '))))].sort()
}

interface Level {
  readonly state: SolvedBody
  readonly shared: SharedCurrent
}

function worstOf(
  scenario: Scenario,
  line: LineStory,
  body: TouchingBody,
  passage: Passage,
  least: number,
): Omit<Exposure, 'layer' | 'ifItFails'> | undefined {
  const levels = passage.states.flatMap((state): Level[] => {
    const shared = shareCurrent(
      state.ports.ported.map((it) => it.touch),
      state.solution.currents,
    )
    return shared !== undefined && shared.bodyCurrent >= least ? [{ state, shared }] : []
  })
  let worst: { level: Level; duration: number; ratio: number } | undefined
  for (const level of levels) {
    const duration = levels.reduce((sum, it) => {
      const isSame = it.state.phase.shot === level.state.phase.shot && it.shared.bodyCurrent >= level.shared.bodyCurrent
      return isSame ? sum + it.state.phase.to - it.state.phase.from : sum
    }, 0)
    const ratio = level.shared.bodyCurrent / lineB(duration)
    if (worst === undefined || ratio > worst.ratio) worst = { level, duration, ratio }
  }
  const shots = exposureShots(levels.map((it) => it.state.phase))
  return worst && exposureAt(scenario, line, body, worst.level, worst.duration, shots)
}

function exposureAt(
  scenario: Scenario,
  line: LineStory,
  body: TouchingBody,
  { state, shared }: Level,
  duration: number,
  shots: ExposureShots,
): Omit<Exposure, 'layer' | 'ifItFails'> {
  const { bodyCurrent, heartEquivalent, path, shockPath } = shared
  const { limit, beyondRange } = limitOf(path.limit, scenario, duration)
  return {
    person: body.person,
    path: path.id,
    shockPath,
    prospectiveVoltage: largestDifference(state.ports.open),
    bodyVoltage: state.solution.bodyVoltage,
    bodyCurrent,
    heartEquivalent,
    duration,
    cleared: line.cleared,
    shots,
    zone: shockZone(bodyCurrent, heartEquivalent, duration),
    limit,
    judged: bodyCurrent,
    beyondRange,
  }
}
