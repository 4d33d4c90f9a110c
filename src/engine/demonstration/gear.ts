/** The tarp: everything is signed out, turned over, read, tested and judged by whoever will use it, one after the other. */
import { requireGearType } from '../gear/catalogue'
import type { GearType } from '../gear/gearType'
import type { ItemId } from '../site/scenario'
import { BrokenOff } from './brokenOff'
import type { Job } from './job'
import type { Need, Printed } from './need'
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
  const type = requireGearType(typeOf(job, id))
  const { defects } = type
  const due = item?.label?.['due']
  if (typeof due === 'string' && due < job.scenario.date) return true
  if (item?.label && isPrintedWrong(type, item.label)) return true
  return (item?.evidence ?? []).some(({ says, by }) => {
    if (says === 'gear.look.burnt') return true
    return by !== 'label' && defects.some((it) => it.evidence === says && Object.keys(it.changes).length > 0)
  })
}

/** Chosen on the rack by what the place asks: the same print is right in one place and wrong in another. */
const chosenByPlace: readonly string[] = ['bandLow', 'bandHigh', 'class']

/** What is printed is nearer to what the trade knows for wrong than to what is usual. */
function isPrintedWrong({ defects, parameters }: GearType, label: Printed): boolean {
  return defects
    .filter(({ foundBy }) => foundBy === 'label')
    .flatMap(({ changes }) => Object.entries(changes))
    .filter(([name]) => !chosenByPlace.includes(name))
    .some(([name, wrong]) => {
      const [printed, usual] = [label[name], parameters[name]]
      if (typeof printed !== 'number' || typeof wrong !== 'number' || typeof usual !== 'number')
        return printed === wrong
      return Math.abs(printed - wrong) < Math.abs(printed - usual)
    })
}
