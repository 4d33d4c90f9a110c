/**
 * Where a run may start: on the site that the beginning of a recorded clean run has prepared. What that run used is
 * sound on such a site: whoever starts there had no chance to inspect it.
 */
import type { Order } from '../actions/action'
import type { Scenario } from '../site/scenario'
import type { Site } from '../site/site'
import { startSite } from '../site/startSite'
import { runTimeline } from './fold'
import type { Entry, Timeline } from './timeline'

export const parts = ['beginning', 'gear', 'isolated', 'below-lv', 'earths-on', 'work-done'] as const
export type Part = (typeof parts)[number]

/** The entry after which (for `gear`: before which) the part begins. */
const isMarker: Readonly<Record<Exclude<Part, 'beginning'>, (entry: Entry) => boolean>> = {
  gear: ({ order }) => order.do === 'book-out',
  isolated: ({ order, after }) => order.do === 'take-permit' && after.paper.permit === 'held',
  'below-lv': ({ order }) => order.do === 'climb' && order.values.to === 'below-lv',
  'earths-on': ({ order }) => order.do === 'report-earths',
  'work-done': ({ order }) => order.do === 'confirm-complete',
}

export interface Opening {
  readonly site: Site
  /** The run that led to it; none at the beginning of the job. */
  readonly prepared?: Timeline
}

/** @returns undefined when the clean run never gets there */
export function openingAt(scenario: Scenario, cleanOrders: readonly Order[], part: Part): Opening | undefined {
  if (part === 'beginning') return { site: startSite(scenario) }
  const quiet = { ...scenario, visible: null }
  const sound = { ...quiet, items: quiet.items.map((item) => ({ ...item, defects: [] })) }
  const count = findOpening(runTimeline(sound, cleanOrders), part)
  if (count === undefined) return undefined
  const prepared = runTimeline(sound, cleanOrders.slice(0, count))
  const items = Object.fromEntries(
    Object.entries(prepared.end.items).map(([id, item]) => {
      const defects = scenario.items.find((it) => it.id === id)?.defects ?? []
      return [id, item.bookedOut ? item : { ...item, defects }] as const
    }),
  )
  return { site: { ...prepared.end, scenario, items }, prepared }
}

/** How many orders of a run come before a part; undefined when it never gets there. */
export function findOpening({ entries }: Timeline, part: Part): number | undefined {
  if (part === 'beginning') return 0
  const marker = entries.findIndex((entry) => entry.outcome === 'done' && isMarker[part](entry))
  if (marker < 0) return undefined
  return part === 'gear' ? marker : marker + 1
}
