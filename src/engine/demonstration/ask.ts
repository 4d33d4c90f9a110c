/** Small questions about what the crew knows, and moving about. */
import { isAloft } from '../site/questions'
import { distance, type GroundPoint } from '../site/place'
import type { ItemBelief, PersonBelief } from '../site/belief'
import type { ItemId, PersonId, ThingId } from '../site/scenario'
import { invariant } from '../units/invariant'
import type { Job } from './job'

export function person(job: Job, id: PersonId): PersonBelief {
  const found = job.belief().persons.find((it) => it.id === id)
  invariant(found, 'a person of the crew', id)
  return found
}

export function item(job: Job, id: ItemId): ItemBelief {
  const found = job.belief().items.find((it) => it.id === id)
  invariant(found, 'an item of the register', id)
  return found
}

/** What was passed for a need. */
export function kit(job: Job, need: string): ItemId {
  const id = job.kit.get(need)
  invariant(id !== undefined, 'gear that was taken out', need)
  return id
}

export const isWorn = (job: Job, who: PersonId, id: ItemId): boolean => person(job, who).wears.includes(id)

export const isHeld = (job: Job, who: PersonId, id: ItemId): boolean => person(job, who).holds.includes(id)

/** Up the pole, or hanging there ready to be clamped. */
export const isUp = (job: Job, id: ItemId): boolean =>
  item(job, id).where.kind === 'aloft' || job.belief().hauled.includes(id)

export const isPoleWorkerUp = (job: Job): boolean => isAloft(person(job, job.crew.pw))

export const clampedOn = (job: Job, on: ThingId, lead?: ItemId): boolean =>
  job.belief().clamps.some((it) => it.on === on && (lead === undefined || it.lead === lead))

export function wear(job: Job, who: PersonId, id: ItemId): void {
  if (!isWorn(job, who, id)) job.order(who, 'wear', { on: id })
}

export function takeOff(job: Job, who: PersonId, id: ItemId): void {
  if (isWorn(job, who, id)) job.order(who, 'take-off', { on: id })
}

export function take(job: Job, who: PersonId, id: ItemId): void {
  if (!isHeld(job, who, id) && !isWorn(job, who, id)) job.order(who, 'take', { on: id })
}

export function walkTo(job: Job, who: PersonId, to: GroundPoint): void {
  const { place } = person(job, who)
  if (place.kind === 'ground' && distance(place.at, to) < 0.01) return
  job.order(who, 'walk', { values: { to } })
}

/** What is used again after the line came alive is looked at first. */
export function lookAgain(job: Job, on: string): void {
  const { livening, evidence } = job.belief()
  const isSeen = livening === null || evidence.some((it) => it.of === on && it.by === 'look' && it.at > livening.at)
  if (!isSeen) job.order(job.crew.pw, 'look', { on })
}

/** Well off the pole, and out of the barrier where the truck stands inside it. */
export function walkOut(job: Job, who: PersonId): void {
  const { isBoomNear, lookout } = job.layout
  if (!isBoomNear) job.order(who, 'walk', { on: 'clear' })
  else walkTo(job, who, { x: lookout.x + Math.sign(lookout.x), y: lookout.y })
}

/** The operator, to a switch, a main switch or the truck. */
export function goTo(job: Job, place: string): void {
  const { so } = job.crew
  const { place: at } = person(job, so)
  const isThere =
    at.kind === 'switch' ? at.id === place : place === 'truck' && at.kind === 'ground' && isAtTruck(job, at.at)
  if (!isThere) job.order(so, 'walk', { on: place })
}

const isAtTruck = (job: Job, { x, y }: { readonly x: number; readonly y: number }): boolean =>
  job.belief().truck.x === x && job.belief().truck.y === y
