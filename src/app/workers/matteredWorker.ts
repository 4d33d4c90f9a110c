/** Shares out the worst exposure of a run among what was fitted and worn; then what chance makes of it. */
import { chanceOf, createSweepCache, sharesOf, worstInstant } from '../../engine'
import { replayJob } from '../storage/replayJob'
import type { MatteredAnswer, MatteredQuestion } from './mattered'

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

function weigh({ head, orders, worst }: MatteredQuestion): void {
  const cache = createSweepCache()
  const found = worstInstant(replayJob(head, orders), worst, cache)
  answer({ tell: 'worst', worst: found ? { at: found.at, whom: found.whom } : null })
  if (found === undefined) return
  answer({ tell: 'shares', shares: sharesOf(found.moment, found.whom, found.corner, cache) })
  const onProgress = (done: number, total: number) => answer({ tell: 'progress', done, total })
  answer({ tell: 'chance', chance: chanceOf(found.moment, found.whom, draws, onProgress) })
}
