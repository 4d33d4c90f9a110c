/** The sweep of a run in short pieces, so that the worker hears a new question while it is at it. */
import { type OpenTimeline, type createSweepCache, sweepSteps } from '../../engine'

/** Milliseconds without listening. */
const longest = 50

export interface Course {
  /** False ends it: somebody has asked something else. */
  readonly isWanted: () => boolean
  readonly onProgress: (step: { readonly done: number; readonly total: number }) => void
}

/** Everything that it solves is in the cache then. @returns false when it was ended before it was through */
export async function sweepInSteps(
  run: OpenTimeline,
  cache: ReturnType<typeof createSweepCache>,
  course: Course,
): Promise<boolean> {
  let heard = performance.now()
  for (const step of sweepSteps(run, cache)) {
    course.onProgress(step)
    if (performance.now() - heard < longest) continue
    await new Promise((resume) => setTimeout(resume))
    if (!course.isWanted()) return false
    heard = performance.now()
  }
  return true
}
