/**
 * The one instant of a run at which the exposure was worst: above before marginal before below, then by the value judged
 * over its limit; with the person, the corner and the way of its layers that made it so.
 */
import { cornersOf, declaredCorner, type Corner } from '../hazard/corner'
import type { LimitVerdict, WorstExposure } from '../hazard/exposure'
import type { LiveMoment } from '../hazard/liven'
import { judgedOf, type JudgedPerson } from '../hazard/share'
import { createSweepCache, type SweepCache } from '../hazard/sweepCache'
import { isUnsolvable } from '../physics/network'
import type { Timeline } from '../timeline/timeline'

export interface WorstInstant {
  /** Job second at which the state begins. */
  readonly at: number
  readonly moment: LiveMoment
  readonly whom: JudgedPerson
  readonly corner: Corner
}

/** Undefined where nothing reached anybody. */
export function worstInstant(
  timeline: Timeline,
  worst: readonly WorstExposure[],
  cache: SweepCache = createSweepCache(),
): WorstInstant | undefined {
  const [first] = [...worst].sort((a, b) => rank[b.verdict] - rank[a.verdict] || largest(b)[1] - largest(a)[1])
  const moment = first && timeline.moments.find(({ from }) => from === first.at)
  if (first === undefined || moment === undefined) return undefined
  const [name] = largest(first)
  const isFailing = name.endsWith(failing)
  const id = isFailing ? name.slice(0, -failing.length) : name
  const corner = cornersOf(timeline.scenario).find((it) => it.id === id) ?? declaredCorner
  const { person, path, livening } = first
  const whom: JudgedPerson = { person, path, livening, layers: isFailing ? 'fail' : 'hold' }
  // a joint that was being made: the state that was the worse for that person
  const states: readonly LiveMoment[] = [
    moment,
    ...(moment.also ?? []).map((site) => ({ site, bodies: moment.bodies })),
  ]
  const reached = (it: LiveMoment): number => {
    const judged = judgedOf(it, whom, corner, cache)
    return isUnsolvable(judged) ? 0 : judged
  }
  return { at: first.at, moment: states.reduce((best, it) => (reached(it) > reached(best) ? it : best)), whom, corner }
}

const rank: Readonly<Record<LimitVerdict, number>> = { below: 0, marginal: 1, above: 2 }

/** As the sweep names the ratio of a corner in which a layer that may fail does. */
const failing = ' fails'

function largest({ ratios }: WorstExposure): readonly [string, number] {
  return Object.entries(ratios).reduce((most, it) => (it[1] > most[1] ? it : most))
}
