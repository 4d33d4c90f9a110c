/**
 * The engine off the main thread: grades a run, draws a livening, tries what would have been without a thing. What has
 * been solved is kept from one question to the next; a new question ends the one before.
 */
import {
  type Moment,
  type OpenTimeline,
  believe,
  createSweepCache,
  declaredCorner,
  engineDigest,
  feel,
  fittedThings,
  groundVoltages,
  isUnsolvable,
  judgeRun,
  liven,
  solveInstant,
  withoutEach,
  withoutThing,
} from '../../engine'
import { requirePack } from '../storage/library'
import { replayJob } from '../storage/replayJob'
import { circuitOf } from './circuitOf'
import type { Answer, DrawnLivening, Graded, Numbered, Question, Supposed, Supposition } from './grading'
import { sweepInSteps } from './sweepInSteps'

const cache = createSweepCache()

/** Metres around the pole that are drawn, and how fine. */
const grid = { from: { x: -20, y: -18 }, step: 0.25, columns: 161, rows: 145 }

/** Of the question that is being worked on: a later one ends it. */
let latest = -1

self.onmessage = ({ data }: MessageEvent<Numbered<Question>>) => {
  latest = data.number
  if (data.ask !== 'stop') void work(data)
}

type Work = Numbered<Exclude<Question, { ask: 'stop' }>>

async function work(data: Work): Promise<void> {
  const answer = (it: Answer): void => self.postMessage({ ...it, number: data.number } satisfies Numbered<Answer>)
  try {
    const timeline = replayJob(data.head, data.orders)
    if (data.ask === 'grade') {
      const isSwept = await sweepInSteps(timeline, cache, {
        isWanted: () => latest === data.number,
        onProgress: (step) => answer({ tell: 'progress', ...step }),
      })
      if (isSwept) answer({ tell: 'graded', graded: grade(timeline, data.head.pack) })
    } else if (data.ask === 'draw') answer({ tell: 'drawn', drawn: drawVisible(timeline) })
    else if (data.ask === 'circuit') answer({ tell: 'circuit', circuit: circuitOf(timeline, data.choice, cache) })
    else if (data.ask === 'feel') {
      const exposure = feel(momentAt(timeline, data.at), data.livening, declaredCorner, data.feelers, cache)
      if (isUnsolvable(exposure)) answer({ tell: 'failed', reason: exposure.reason })
      else answer({ tell: 'felt', feelers: data.feelers, exposure })
    } else answer({ tell: 'supposed', supposed: suppose(momentAt(timeline, data.at), data.livening, data.supposition) })
  } catch (error) {
    answer({ tell: 'failed', reason: error instanceof Error ? error.message : String(error) })
  }
}

function grade(timeline: OpenTimeline, packId: string): Graded {
  const result = judgeRun(timeline, requirePack(packId), { sweep: true, cache })
  const worst = [...result.sweep].sort(
    (a, b) => b.exposure.judged / b.exposure.limit - a.exposure.judged / a.exposure.limit,
  )[0]
  const shown = timeline.struck
    ? { moment: timeline.moments[timeline.struck.moment], livening: timeline.struck.livening }
    : worst && { moment: momentAt(timeline, worst.at), livening: worst.livening }
  const moment = shown?.moment
  return {
    result,
    drawn: moment && shown ? draw(timeline, moment, shown.livening) : null,
    without: moment && shown ? withoutEach(moment, shown.livening, declaredCorner, cache) : [],
    fitted: moment ? fittedThings(moment.site) : [],
    engine: engineDigest,
  }
}

const momentAt = (timeline: OpenTimeline, second: number): Moment =>
  timeline.moments.findLast((it) => it.from <= second) ?? timeline.moments[0]!

function drawVisible(timeline: OpenTimeline): DrawnLivening | null {
  const { struck, moments } = timeline
  const moment = struck && moments[struck.moment]
  return moment ? draw(timeline, moment, struck.livening) : null
}

function draw(timeline: OpenTimeline, moment: Moment, livening: string): DrawnLivening | null {
  const instant = solveInstant(moment, livening, declaredCorner, { cache })
  const volts = groundVoltages(moment, livening, declaredCorner, grid, cache)
  if (isUnsolvable(instant) || isUnsolvable(volts)) return null
  const { siteRise, liveCurrent, duration, clearedBy } = instant.story
  return {
    livening,
    at: moment.from,
    belief: believe(moment.site),
    doing: moment.busy.flatMap((index) => {
      const order = timeline.entries[index]?.order
      return order ? [{ who: order.who, act: order.do, thing: order.on ?? null, item: order.with ?? null }] : []
    }),
    instant,
    siteRise,
    liveCurrent,
    duration,
    clearedBy,
    exposures: instant.exposures,
    grid,
    volts: Array.from(volts),
  }
}

function suppose(moment: Moment, livening: string, { away, soil, relay }: Supposition): Supposed | null {
  const { scenario } = moment.site
  const feeders = scenario.feeders.map((feeder) => ({
    ...feeder,
    earthFault: { ...feeder.earthFault, multiplier: feeder.earthFault.multiplier * relay },
  }))
  const changed = { bodies: moment.bodies, site: { ...moment.site, scenario: { ...scenario, feeders } } }
  const story = liven(away.reduce(withoutThing, changed), livening, { ...declaredCorner, id: `soil ${soil}`, soil })
  if (story.kind !== 'story') return null
  const { exposures, siteRise, liveCurrent, duration, clearedBy } = story
  return { exposures, siteRise, liveCurrent, duration, clearedBy }
}
