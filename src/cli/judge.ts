/** One run, from its file to its result: the same steps in the main thread and in a worker. */
import {
  drawScenario,
  engineDigest,
  engineVersion,
  judgeRun,
  openingAt,
  runTimeline,
  type Result,
  type Timeline,
} from '../engine'
import { writeResult } from '../files/result/write'
import type { LoadedPack, LoadedRun, LoadedScenario } from './load'

export interface Job {
  readonly scenario: LoadedScenario
  readonly pack: LoadedPack
  readonly run: LoadedRun
  /** Orders of the clean run; needed only when the run does not start at the beginning. */
  readonly clean: LoadedRun | undefined
  readonly sweep: boolean
}

export interface Judged {
  readonly place: string
  readonly result: Result
  /** `earths-on/result`, one line. */
  readonly file: string
}

/** Undefined: the clean run never prepares the part at which this one starts. */
export function timelineOf({ scenario, run, clean }: Pick<Job, 'scenario' | 'run' | 'clean'>): Timeline | undefined {
  const { seed, purpose, startsAt, orders } = run.run
  const drawn = drawScenario(scenario.base, seed, purpose)
  const opening = startsAt === 'beginning' ? undefined : openingAt(drawn, clean?.run.orders ?? [], startsAt)
  if (startsAt !== 'beginning' && opening === undefined) return undefined
  return runTimeline(drawn, orders, opening?.site, opening?.prepared)
}

export function judge(job: Job): Judged | undefined {
  const timeline = timelineOf(job)
  if (timeline === undefined) return undefined
  const result = judgeRun(timeline, job.pack.pack, { sweep: job.sweep })
  const head = {
    run: job.scenario.base.id,
    runDigest: job.run.digest,
    scenarioDigest: job.scenario.digest,
    packDigest: job.pack.digest,
    engine: engineVersion,
    engineDigest,
  }
  return { place: job.run.place, result, file: writeResult(head, result) }
}
