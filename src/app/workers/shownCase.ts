/** What of a run is looked at: a moment, a livening, a corner. Named in plain data by the page, found again by the worker. */
import { type Corner, type Moment, type OpenTimeline, type worstInstant, cornersOf } from '../../engine'

type WorstInstant = NonNullable<ReturnType<typeof worstInstant>>

export interface ShownCase {
  /** Job second of the moment. */
  readonly at: number
  readonly livening: string
  /** Id of the corner. */
  readonly corner: string
  /** 0: as it is while a joint is being made or broken; above it, with the first, second … change of it done. */
  readonly joint: number
}

export interface FoundCase {
  readonly shown: ShownCase
  readonly moment: Moment
  readonly livening: string
  readonly corner: Corner
}

export function findCase(timeline: OpenTimeline, shown: ShownCase): FoundCase {
  const { moments, scenario } = timeline
  const moment = moments.findLast((it) => it.from <= shown.at) ?? moments[0]!
  const site = moment.also?.[shown.joint - 1] ?? moment.site
  const corners = cornersOf(scenario)
  const corner = corners.find((it) => it.id === shown.corner) ?? corners[0]!
  return { shown, moment: { ...moment, site }, livening: shown.livening, corner }
}

/** As the visible livening struck, values as stated; undefined where none did. */
export function findStruck({ struck, moments }: OpenTimeline): ShownCase | undefined {
  const moment = struck && moments[struck.moment]
  return moment ? { at: moment.from, livening: struck.livening, corner: 'declared', joint: 0 } : undefined
}

/** The state, the livening and the corner that were worst for anybody. */
export function caseOfWorst({ moments }: OpenTimeline, { at, moment, whom, corner }: WorstInstant): ShownCase {
  const also = moments.find((it) => it.from === at)?.also ?? []
  return { at, livening: whom.livening, corner: corner.id, joint: also.indexOf(moment.site) + 1 }
}
