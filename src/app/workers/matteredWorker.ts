/** Shares out what reached a person, or else the worst that could have, among what was fitted and worn; then what chance makes of it. */
import {
  type Exposure,
  type Timeline,
  chanceOf,
  createSweepCache,
  declaredCorner,
  sharesOf,
  worstInstant,
} from '../../engine'
import { replayJob } from '../storage/replayJob'
import type { MatteredAnswer, MatteredQuestion, Weighed } from './mattered'

/** Two seconds or so; none in as many is under 2 %. */
const draws = 200

const answer = (it: MatteredAnswer): void => self.postMessage(it)

self.onmessage = ({ data }: MessageEvent<MatteredQuestion>) => {
  try {
    weigh(data)
  } catch (error) {
    answer({ tell: 'failed', reason: error instanceof Error ? error.message : String(error) })
  }
}

function weigh({ head, orders, ...weighed }: MatteredQuestion): void {
  const cache = createSweepCache()
  const found = findInstant(replayJob(head, orders), weighed, cache)
  answer({ tell: 'worst', worst: found ? { at: found.at, whom: found.whom, didHappen: found.didHappen } : null })
  if (found === undefined) return
  answer({ tell: 'shares', shares: sharesOf(found.moment, found.whom, found.corner, cache) })
  const onProgress = (done: number, total: number) => answer({ tell: 'progress', done, total })
  answer({ tell: 'chance', chance: chanceOf(found.moment, found.whom, draws, onProgress) })
}

/** A livening that struck is the one that the crew asks about: a worse one that did not teaches something else. */
function findInstant(
  timeline: Timeline,
  { happened, worst }: Weighed,
  cache: ReturnType<typeof createSweepCache>,
): (NonNullable<ReturnType<typeof worstInstant>> & { readonly didHappen: boolean }) | undefined {
  const { struck } = timeline
  const moment = struck === null ? undefined : timeline.moments[struck.moment]
  const [most] = [...happened].sort((a, b) => overLimit(b) - overLimit(a))
  if (struck !== null && moment !== undefined && most !== undefined) {
    const { person, path, ifItFails } = most
    const whom = { person, path, livening: struck.livening, layers: ifItFails ? 'fail' : 'hold' } as const
    return { at: struck.at, moment, whom, corner: declaredCorner, didHappen: true }
  }
  const found = worstInstant(timeline, worst, cache)
  return found && { ...found, didHappen: false }
}

/** With a layer that may fail counted as failed. */
function overLimit(it: Exposure): number {
  const { judged, limit } = it.ifItFails ?? it
  return judged / limit
}
