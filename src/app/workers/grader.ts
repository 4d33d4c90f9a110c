/**
 * The engine off the main thread: grades a run, draws a livening, tries what would have been without a thing. What has
 * been solved is kept from one question to the next; a new question ends the one before.
 */
import {
  type OpenTimeline,
  believe,
  createSweepCache,
  engineDigest,
  exposuresUntil,
  feel,
  fittedThings,
  groundHazard,
  groundVoltages,
  handholds,
  isUnsolvable,
  judgeRun,
  liven,
  solveInstant,
  withoutEach,
  withoutThing,
  worstInstant,
} from '../../engine'
import { requirePack } from '../storage/library'
import { replayJob } from '../storage/replayJob'
import { circuitOf } from './circuitOf'
import type {
  Answer,
  DrawnLivening,
  Graded,
  Numbered,
  Question,
  StretchPicture,
  Supposed,
  Supposition,
  WorstCase,
} from './grading'
import { type FoundCase, caseOfWorst, findCase, findStruck } from './shownCase'
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
    const timeline = replayOnce(data)
    if (data.ask === 'grade') {
      const isSwept = await sweepInSteps(timeline, cache, {
        isWanted: () => latest === data.number,
        onProgress: (step) => answer({ tell: 'progress', ...step }),
      })
      if (isSwept) answer({ tell: 'graded', graded: grade(timeline, data.head.pack) })
    } else if (data.ask === 'draw') answer({ tell: 'drawn', drawn: drawVisible(timeline) })
    else if (data.ask === 'circuit') answer({ tell: 'circuit', circuit: circuitOf(timeline, data.choice, cache) })
    else if (data.ask === 'second') answer(atSecond(findCase(timeline, data.of), data))
    else if (data.ask === 'feel') {
      const { moment, livening, corner } = findCase(timeline, data.of)
      const exposure = feel(moment, livening, corner, data.feelers, cache)
      if (isUnsolvable(exposure)) answer({ tell: 'failed', reason: exposure.reason })
      else answer({ tell: 'felt', feelers: data.feelers, exposure })
    } else answer({ tell: 'supposed', supposed: suppose(findCase(timeline, data.of), data.supposition) })
  } catch (error) {
    answer({ tell: 'failed', reason: error instanceof Error ? error.message : String(error) })
  }
}

/** What struck is drawn, where it has a number; else the worst that could have, in the corner in which it was worst. */
function grade(timeline: OpenTimeline, packId: string): Graded {
  const result = judgeRun(timeline, requirePack(packId), { sweep: true, cache })
  const worst = worstOf(timeline, result)
  const shown = (result.told ? undefined : findStruck(timeline)) ?? worst?.of
  const found = shown && findCase(timeline, shown)
  return {
    result,
    worst,
    drawn: found ? draw(timeline, found) : null,
    without: found ? withoutEach(found.moment, found.livening, found.corner, cache) : [],
    fitted: found ? fittedThings(found.moment.site) : [],
    engine: engineDigest,
  }
}

function worstOf(timeline: OpenTimeline, { sweep }: Graded['result']): WorstCase | null {
  const worst = worstInstant(timeline, sweep, cache)
  if (worst === undefined) return null
  const { person, path, layers } = worst.whom
  const story = liven(worst.moment, worst.whom.livening, worst.corner, cache)
  const met =
    story.kind === 'story' ? story.exposures.find((it) => it.person === person && it.path === path) : undefined
  if (met === undefined) return null
  const exposure = layers === 'fail' && met.ifItFails ? { ...met, ...met.ifItFails } : met
  return { of: caseOfWorst(timeline, worst), exposure, layers }
}

let replayed: { readonly of: string; readonly timeline: OpenTimeline } | undefined

/** The same job is asked about many times in a row: a scrub, a question to the feelers. */
function replayOnce({ head, orders }: Work): OpenTimeline {
  const of = JSON.stringify([head, orders])
  if (replayed?.of !== of) replayed = { of, timeline: replayJob(head, orders) }
  return replayed.timeline
}

function drawVisible(timeline: OpenTimeline): DrawnLivening | null {
  const struck = findStruck(timeline)
  return struck ? draw(timeline, findCase(timeline, struck)) : null
}

function draw(timeline: OpenTimeline, found: FoundCase): DrawnLivening | null {
  const { moment } = found
  const picture = pictureAt(found, 0)
  if (picture === null) return null
  const { siteRise, liveCurrent, duration, clearedBy, exposures } = picture.instant.story
  return {
    ...found.shown,
    belief: believe(moment.site),
    doing: moment.busy.flatMap((index) => {
      const order = timeline.entries[index]?.order
      return order ? [{ who: order.who, act: order.do, thing: order.on ?? null, item: order.with ?? null }] : []
    }),
    ...picture,
    siteRise,
    liveCurrent,
    duration,
    clearedBy,
    exposures,
    handholds: handholds(moment.site),
  }
}

function pictureAt({ moment, livening, corner }: FoundCase, second: number): StretchPicture | null {
  const instant = solveInstant(moment, livening, corner, { second, cache })
  const volts = groundVoltages(moment, livening, corner, grid, cache, second)
  const ground = groundHazard(moment, livening, corner, { second, cache })
  if (isUnsolvable(instant) || isUnsolvable(volts) || isUnsolvable(ground)) return null
  return { instant, grid, volts: Array.from(volts), ground }
}

type SecondAsked = Extract<Question, { ask: 'second' }>

function atSecond(found: FoundCase, { second, index, hasPicture }: SecondAsked): Answer {
  const soFar = exposuresUntil(found.moment, found.livening, found.corner, second, cache)
  if (isUnsolvable(soFar)) return { tell: 'failed', reason: soFar.reason }
  return { tell: 'second', second, index, soFar, picture: hasPicture ? null : pictureAt(found, second) }
}

function suppose({ moment, livening, corner }: FoundCase, { away, soil, relay }: Supposition): Supposed | null {
  const { scenario } = moment.site
  const feeders = scenario.feeders.map((feeder) => ({
    ...feeder,
    earthFault: { ...feeder.earthFault, multiplier: feeder.earthFault.multiplier * relay },
  }))
  const changed = { bodies: moment.bodies, site: { ...moment.site, scenario: { ...scenario, feeders } } }
  const supposed = { ...corner, id: `${corner.id}, soil ${soil}`, soil: corner.soil * soil }
  const story = liven(away.reduce(withoutThing, changed), livening, supposed)
  if (story.kind !== 'story') return null
  const { exposures, siteRise, liveCurrent, duration, clearedBy } = story
  return { exposures, siteRise, liveCurrent, duration, clearedBy }
}
