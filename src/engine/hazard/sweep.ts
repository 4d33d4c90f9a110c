/**
 * Everything that could have happened: at every distinct state of the run (site plus all contacts in force) first the
 * supply as it is set, then every livening whose cause stands, in every corner. The worst is kept per person and path.
 * The answer does not depend on the order in which states were solved, nor on what the cache held.
 */
import { isUnsolvable, type Unsolvable } from '../physics/network'
import type { Body } from '../site/contact'
import { feedersOf } from '../site/liveningTraits'
import type { Scenario } from '../site/scenario'
import type { Site } from '../site/site'
import { isComputed } from './circuit/livening'
import { cornersOf, type Corner } from './corner'
import type { LimitVerdict, WorstExposure } from './exposure'
import { joinCorners, type CornerAnswer } from './joinCorners'
import { answersOf, fittedOnce, isStanding, lineOf } from './liven'
import type { StateAnswer } from './stateAnswer'
import { createSweepCache, type SweepCache } from './sweepCache'

export interface SweptMoment {
  readonly from: number
  readonly site: Site
  readonly bodies: readonly Body[]
  /** The site with joints in progress changed already: the same bodies are in all of them. */
  readonly also?: readonly Site[]
}

export interface SweptRun {
  readonly scenario: Scenario
  readonly moments: readonly SweptMoment[]
}

export type UnsolvedState = Unsolvable & { readonly at: number; readonly livening: string; readonly corner: string }

export interface Sweep {
  /** Per person and path, persons and paths in order of id. */
  readonly worst: readonly WorstExposure[]
  /** The same with no event at all: the supply as it is set, low voltage included. */
  readonly asSet: readonly WorstExposure[]
  readonly unsolved: readonly UnsolvedState[]
  /** Distinct states, livenings tried (the supply as set counts as one) and corners. */
  readonly states: number
  readonly livenings: number
  readonly corners: number
}

export interface SweepStep {
  readonly done: number
  readonly total: number
}

/**
 * @param corners declared first; fewer than all for a quick look that grades nothing (a tenth of the time)
 */
export function sweep(
  run: SweptRun,
  cache: SweepCache = createSweepCache(),
  onProgress?: (done: number, total: number) => void,
  corners: readonly Corner[] = cornersOf(run.scenario),
): Sweep {
  const steps = sweepSteps(run, cache, corners)
  let step = steps.next()
  for (; !step.done; step = steps.next()) onProgress?.(step.value.done, step.value.total)
  return step.value
}

/**
 * The same a state at a time: whoever drives it can stop between two of them, and loses nothing, because what was solved
 * is in the cache.
 */
export function* sweepSteps(
  run: SweptRun,
  cache: SweepCache,
  corners: readonly Corner[] = cornersOf(run.scenario),
): Generator<SweepStep, Sweep> {
  const tried = cache.shortName(JSON.stringify(corners))
  const firstMoments = new Map<string, SweptMoment>()
  for (const moment of [...run.moments].sort((a, b) => a.from - b.from).flatMap(statesOf)) {
    const key = stateKey(moment, cache)
    if (!firstMoments.has(key)) firstMoments.set(key, moment)
  }
  const worst = new Map<string, WorstExposure>()
  const asSet = new Map<string, WorstExposure>()
  const unsolved: UnsolvedState[] = []
  let done = 0
  for (const [key, moment] of firstMoments) {
    const answer = answerState(`${key} ${tried}`, moment, corners, cache)
    for (const it of answer.exposures) {
      const found = { ...it, at: moment.from }
      keepWorse(worst, found)
      if (it.livening === 'none') keepWorse(asSet, found)
    }
    for (const it of answer.unsolved) unsolved.push({ ...it, at: moment.from })
    yield { done: ++done, total: firstMoments.size }
  }
  return {
    worst: inOrder(worst),
    asSet: inOrder(asSet),
    unsolved,
    states: firstMoments.size,
    livenings: run.scenario.livenings.filter(isComputed).length + 1,
    corners: corners.length,
  }
}

/** A moment in which a joint is made is solved without it and with it. */
function statesOf(moment: SweptMoment): readonly SweptMoment[] {
  return [moment, ...(moment.also ?? []).map((site) => ({ from: moment.from, site, bodies: moment.bodies }))]
}

function inOrder(worst: ReadonlyMap<string, WorstExposure>): readonly WorstExposure[] {
  return [...worst.keys()].sort().map((name) => worst.get(name)!)
}

/** Everything that decides what a state answers. */
function stateKey(moment: SweptMoment, cache: SweepCache): string {
  const { site } = moment
  const { scenario } = site
  const bodies = [...moment.bodies]
    .sort((a, b) => (a.person < b.person ? -1 : 1))
    .map((body) => cache.touching(site, scenario, body).name)
  const state = [fittedOnce(site), livenings(site), site.barrier, bodies]
  return `${cache.scenarioName(scenario)} ${cache.shortName(JSON.stringify(state))}`
}

/** `none`, then in order of id whatever has its cause here and can be computed: what is told in words alone stays in the words. */
function livenings(site: Site): readonly string[] {
  const { feedersOut } = fittedOnce(site)
  const standing = site.scenario.livenings.filter((it) => {
    return (
      isComputed(it) &&
      isStanding(site, it) &&
      feedersOf(site.scenario, it).every((feeder) => !feedersOut.includes(feeder))
    )
  })
  return ['none', ...standing.map((it) => it.id).sort()]
}

function answerState(key: string, moment: SweptMoment, corners: readonly Corner[], cache: SweepCache): StateAnswer {
  const known = cache.states.get(key)
  if (known !== undefined) return known
  const answers = livenings(moment.site).map((livening) => answerLivening(moment, livening, corners, cache))
  const answer = {
    exposures: answers.flatMap((it) => it.exposures),
    unsolved: answers.flatMap((it) => it.unsolved),
  }
  cache.states.set(key, answer)
  return answer
}

function answerLivening(
  moment: SweptMoment,
  livening: string,
  corners: readonly Corner[],
  cache: SweepCache,
): StateAnswer {
  const solved: CornerAnswer[] = []
  const unsolved: StateAnswer['unsolved'][number][] = []
  const open = new Set<string>()
  for (const corner of corners) {
    const line = lineOf(moment.site, livening, corner, cache)
    const answers = isUnsolvable(line) ? [] : answersOf(moment, line, corner, cache)
    if (isUnsolvable(line)) unsolved.push({ ...line, livening, corner: corner.id })
    const exposures = answers.flatMap(({ person, answer }) => {
      if (!isUnsolvable(answer)) return answer.exposure === null ? [] : [answer.exposure]
      unsolved.push({ ...answer, livening, corner: corner.id })
      open.add(person)
      return []
    })
    solved.push({ corner: corner.id, isSolved: !isUnsolvable(line), exposures })
  }
  return { exposures: joinCorners(livening, solved, open), unsolved }
}

const rank: Readonly<Record<LimitVerdict, number>> = { below: 0, marginal: 1, above: 2 }

/** Verdict first, then the largest ratio of any corner; of equals the earliest stays. */
function keepWorse(worst: Map<string, WorstExposure>, found: WorstExposure): void {
  const name = `${found.person} ${found.path}`
  const before = worst.get(name)
  const isWorse =
    before === undefined ||
    rank[found.verdict] > rank[before.verdict] ||
    (found.verdict === before.verdict && largest(found) > largest(before))
  if (isWorse) worst.set(name, found)
}

function largest(exposure: WorstExposure): number {
  return Math.max(...Object.values(exposure.ratios))
}
