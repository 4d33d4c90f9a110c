/** The plain "without it" of everything fitted, at the visible livening or else at the worst state of the sweep. */
import { declaredCorner } from '../hazard/corner'
import type { Exposure, WorstExposure } from '../hazard/exposure'
import { liven } from '../hazard/liven'
import type { SweepCache } from '../hazard/sweepCache'
import { withoutEach, type FittedThing } from '../hazard/without'
import type { Moment, Timeline } from '../timeline/timeline'
import type { Result } from './result'

export function withoutThings(
  timeline: Timeline,
  worst: readonly WorstExposure[],
  cache: SweepCache,
): Result['without'] {
  const shown = findShown(timeline, worst, cache)
  if (shown === undefined) return []
  return withoutEach(shown.moment, shown.livening, declaredCorner, cache).map(({ thing, persons }) => ({
    item: nameOf(thing),
    persons: persons.map(({ person, withIt, withoutIt }) => ({
      person,
      withIt: judgedOf(withIt),
      withoutIt: judgedOf(withoutIt),
    })),
  }))
}

function findShown(
  { struck, moments }: Timeline,
  worst: readonly WorstExposure[],
  cache: SweepCache,
): { readonly moment: Moment; readonly livening: string } | undefined {
  const at = struck === null ? undefined : moments[struck.moment]
  if (struck !== null && at !== undefined) return { moment: at, livening: struck.livening }
  const [first] = [...worst].sort((a, b) => largest(b) - largest(a))
  const moment = first === undefined ? undefined : moments.find(({ from }) => from === first.at)
  if (first === undefined || moment === undefined) return undefined
  // a joint that was being made: in the state that was the worse for whom it was worst
  const states = [moment, ...(moment.also ?? []).map((site) => ({ ...moment, site }))]
  const reached = (it: Moment): number => {
    const story = liven(it, first.livening, declaredCorner, cache)
    const found = story.kind === 'story' ? story.exposures : []
    return found.find(({ person, path }) => person === first.person && path === first.path)?.judged ?? 0
  }
  const shown = states.reduce((best, it) => (reached(it) > reached(best) ? it : best))
  return { moment: shown, livening: first.livening }
}

function largest({ ratios }: WorstExposure): number {
  return Math.max(...Object.values(ratios))
}

/** The value that the limit is set to; nothing flowed: zero is then an answer, not a failed one. */
function judgedOf(exposure: Exposure | null): number {
  return exposure === null ? 0 : exposure.judged
}

/** `E-07`, one clamp of it `E-07/1`, `barrier`. */
function nameOf(thing: FittedThing): string {
  if (thing.kind === 'clamp') return `${thing.item}/${thing.end}`
  return thing.item ?? thing.kind
}
