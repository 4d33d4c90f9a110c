/**
 * Choosing from the truck: by what is printed large on a thing for whoever takes it off the rack (size, owner, length,
 * section, class, band). The date of the last test is small print, read when the thing is turned over; its condition
 * nobody knows before looking.
 */
import { requireGearType } from '../gear/catalogue'
import type { ItemId } from '../site/scenario'
import type { Job } from './job'
import type { Need, Printed } from './need'

const smallPrint = 'due'

function printedOn(job: Job, id: ItemId): Printed {
  const item = job.scenario.items.find((it) => it.id === id)
  if (!item) return {}
  const label = Object.entries(item.label).filter(([name]) => name !== smallPrint)
  return { ...requireGearType(item.type).parameters, ...Object.fromEntries(label) }
}

/** Something is printed on it beside its number. */
export function hasLabel(job: Job, id: ItemId): boolean {
  return Object.keys(job.scenario.items.find((it) => it.id === id)?.label ?? {}).length > 1
}

/** What would serve, best first: not set aside, not taken for something else. */
export function candidates(job: Job, need: Need): readonly ItemId[] {
  const taken = [...job.kit.values()]
  const { reachesFor = [] } = job.conduct
  const there = job
    .belief()
    .items.filter((it) => need.isType(it.type) && it.verdict !== 'quarantine' && !taken.includes(it.id))
    .map(({ id }) => id)
    .filter((id) => need.suits?.(printedOn(job, id), id) ?? true)
  const rank = (id: ItemId): number => (reachesFor.includes(id) ? -1 : (need.rank?.(printedOn(job, id)) ?? 0))
  return [...there].sort((a, b) => rank(a) - rank(b))
}

/** The one that is meant to be used; the plan is written before anything is looked at. */
export function intended(job: Job, need: Need): ItemId | undefined {
  return candidates(job, need)[0]
}
