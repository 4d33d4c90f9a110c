/** The tarp: everything is signed out, turned over, read, tested and judged by whoever will use it, one after the other. */
import { requireGearType } from '../gear/catalogue'
import type { ItemId } from '../site/scenario'
import { BrokenOff } from './brokenOff'
import type { Job } from './job'
import type { Need } from './need'
import { needsOf } from './needs'
import { candidates, hasLabel } from './rack'

export function takeOutGear(job: Job): void {
  for (const need of needsOf(job)) if (!job.kit.has(need.name)) takeOut(job, need)
  job.wait()
}

/** The first that is found sound; every other that was looked at is set aside. */
export function takeOut(job: Job, need: Need): void {
  for (const id of candidates(job, need)) {
    if (!isSignedOut(job, id)) {
      job.order(job.crew.gw, 'book-out', { on: id })
      job.wait(job.crew.gw)
    }
    if (inspect(job, need.who, id)) {
      job.kit.set(need.name, id)
      return
    }
  }
  if (need.isOptional !== true) throw new BrokenOff('no-sound-gear', need.name)
}

const isSignedOut = (job: Job, id: ItemId): boolean =>
  job.belief().items.some((it) => it.id === id && it.bookedOut && !it.bookedIn)

/** @returns it is fit for use, as far as can be told */
function inspect(job: Job, who: string, id: ItemId): boolean {
  if (hasLabel(job, id)) job.order(who, 'read-label', { on: id })
  job.order(who, 'look', { on: id })
  if (requireGearType(typeOf(job, id)).test !== undefined) job.order(who, 'test-item', { on: id })
  const isFit = !isFoundWanting(job, id) || !job.heeds('defect', id)
  job.order(who, 'judge', { on: id, values: { verdict: isFit ? 'pass' : 'quarantine' } })
  job.wait(who)
  return isFit
}

const typeOf = (job: Job, id: ItemId): string => job.scenario.items.find((it) => it.id === id)?.type ?? ''

/**
 * Overdue by its label, or showing what a trained eye knows for a fault: a mark that does no harm is none. Only what was
 * perceived counts.
 */
function isFoundWanting(job: Job, id: ItemId): boolean {
  const item = job.belief().items.find((it) => it.id === id)
  const { defects } = requireGearType(typeOf(job, id))
  const due = item?.label?.['due']
  if (typeof due === 'string' && due < job.scenario.date) return true
  return (item?.evidence ?? []).some(({ says, by }) => {
    if (says === 'gear.look.burnt') return true
    return by !== 'label' && defects.some((it) => it.evidence === says && Object.keys(it.changes).length > 0)
  })
}
