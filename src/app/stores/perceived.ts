/** What the views may know of the truth at this second. */
import { believe } from '../../engine'
import { type Held, siteNow } from './held'
import type { Job } from './jobStore'

export function perceived(held: Held): Pick<Job, 'belief' | 'now' | 'busy' | 'ordered' | 'withdrawn'> {
  const { timeline, now } = held
  return {
    belief: believe(siteNow(held)),
    now,
    busy: timeline.entries
      .filter((entry) => entry.outcome !== 'withdrawn' && entry.start <= now && entry.end > now)
      .map(({ index, order, start, end }) => ({
        index,
        who: order.who,
        act: order.do,
        thing: order.on ?? null,
        item: order.with ?? null,
        start,
        end,
      })),
    ordered: timeline.entries.length,
    withdrawn: timeline.entries.filter((entry) => entry.order.do === 'withdraw').length,
  }
}
