/**
 * What lies below the line is cut off from it after the switches and given back after them: owners are asked and their main
 * switches locked, cabinets opened and locked, fuse carriers taken away and bagged.
 */
import { requireGearType } from '../gear/catalogue'
import { findMain } from '../site/mains'
import { distance } from '../site/place'
import type { ItemId, ThingId } from '../site/scenario'
import { goTo, isHeld, item, kit, person, take } from './ask'
import type { Job } from './job'

/** Sources and premises, feeds in cabinets, transformers: each in order of id. */
interface Below {
  readonly owners: readonly ThingId[]
  readonly cabinets: readonly ThingId[]
  readonly transformers: readonly ThingId[]
}

export function belowOf({ scenario }: Job): Below {
  const { embedded = [], premises = [], transformers = [], lv } = scenario
  const known = embedded.filter((it) => it.onDiagram !== false)
  return {
    owners: [...new Set([...known, ...premises].map(({ id }) => id))].sort(),
    cabinets: lv.wires.flatMap(({ id, lamps, isolator }) => ((lamps ?? isolator) ? [id] : [])).sort(),
    transformers: transformers.map(({ id }) => id).sort(),
  }
}

export const keysOf = (job: Job): readonly ItemId[] =>
  [...new Set(belowOf(job).cabinets.flatMap((id) => findMain(job.scenario, id)?.key ?? []))].sort()

/** As many bags as there are, one for each transformer. */
export function baggedBelow(job: Job): readonly ThingId[] {
  const bags = job.scenario.items.filter((it) => it.type === 'carrier-bag').length
  return belowOf(job).transformers.slice(0, bags)
}

export function isolateLowVoltage(job: Job): void {
  const { owners, cabinets, transformers } = belowOf(job)
  if (owners.length + cabinets.length + transformers.length === 0) return
  goTo(job, 'truck')
  withBareHands(job, () => {
    for (const on of owners) isolateOwner(job, on)
    for (const on of cabinets) isolateCabinet(job, on)
    if (transformers.length > 0) haveStickHanded(job)
    for (const on of transformers) isolateTransformer(job, on)
  })
}

/** What fills the hands stays at the truck; what was taken for the work is put down there again. */
function withBareHands(job: Job, work: () => void): void {
  const { so } = job.crew
  const carried = person(job, so).holds.filter((id) => requireGearType(item(job, id).type).hands > 0)
  for (const on of carried) job.order(so, 'put-down', { on })
  work()
  goTo(job, 'truck')
  for (const on of [kit(job, 'stick'), ...keysOf(job)]) if (isHeld(job, so, on)) job.order(so, 'put-down', { on })
  for (const on of carried) job.order(so, 'take', { on })
}

function isolateOwner(job: Job, on: ThingId): void {
  const { so } = job.crew
  const isPremises = job.scenario.premises?.some(({ id }) => id === on) ?? false
  takeFor(job, on)
  job.order(so, 'walk', { on })
  if (isPremises) for (const act of ['ask-owner', 'search-premises']) job.order(so, act, { on })
  const isLetIn = job.belief().evidence.some((it) => it.of === on && it.says === 'owner.consents')
  if (isPremises && !isLetIn) return
  job.order(so, 'look', { on })
  const seen = job.belief().evidence.findLast((it) => it.of === on && it.by === 'look')
  if (seen?.says === 'see.main-closed') job.order(so, 'open-main', { on })
  secure(job, on)
}

/** Lamps wait for the dark with their switch open; a feed of its own is opened. */
function isolateCabinet(job: Job, on: ThingId): void {
  const { so } = job.crew
  const key = findMain(job.scenario, on)?.key
  if (key !== undefined) take(job, so, kit(job, `key-${key}`))
  takeFor(job, on)
  job.order(so, 'walk', { on })
  if (job.scenario.lv.wires.some((it) => it.id === on && it.isolator)) job.order(so, 'open-main', { on })
  secure(job, on)
}

/** Lock and tag lie at the truck until they are wanted. */
function takeFor(job: Job, on: ThingId): void {
  for (const need of [`lock-${on}`, `tag-${on}`]) if (job.kit.has(need)) take(job, job.crew.so, kit(job, need))
}

function secure(job: Job, on: ThingId): void {
  for (const act of ['lock', 'tag']) {
    const item = job.kit.get(`${act}-${on}`)
    if (item !== undefined) job.order(job.crew.so, act, { on, with: item })
  }
}

function isolateTransformer(job: Job, on: ThingId): void {
  const { so } = job.crew
  const bag = job.kit.get(`bag-${on}`)
  takeFor(job, on)
  if (bag !== undefined) take(job, so, bag)
  job.order(so, 'walk', { on })
  job.order(so, 'take-carriers-out', { on, values: { leave: 'bagged' } })
  if (bag !== undefined) job.order(so, 'bag-carriers', { on, with: bag })
  const tag = job.kit.get(`tag-${on}`)
  if (tag !== undefined) job.order(so, 'tag', { on, with: tag })
}

/** The other way round, once the line is back. */
export function restoreLowVoltage(job: Job): void {
  const { owners, cabinets, transformers } = belowOf(job)
  const { mains, wires } = job.belief()
  const stateOf = (id: ThingId) => mains.find((it) => it.id === id) ?? wires.find((it) => it.id === id)?.main
  const touched = (ids: readonly ThingId[]) => ids.filter((id) => (stateOf(id)?.tag ?? null) !== null)
  if (touched([...owners, ...cabinets, ...transformers]).length === 0) return
  withBareHands(job, () => {
    if (touched(transformers).length > 0) takeStickAgain(job)
    for (const on of touched(transformers)) restoreTransformer(job, on)
    for (const on of touched([...cabinets, ...owners])) restoreMain(job, on)
  })
}

/** It is the pole worker's, who hands it over at the truck. */
function haveStickHanded(job: Job): void {
  const { so, gw } = job.crew
  const stick = kit(job, 'stick')
  goTo(job, 'truck')
  const { place } = person(job, gw)
  const isThere = place.kind === 'ground' && distance(place.at, job.belief().truck) < 2
  if (!isThere) job.order(gw, 'walk', { on: 'truck' })
  job.order(gw, 'take', { on: stick })
  job.wait(so, gw)
  if (so !== gw) job.order(gw, 'give', { on: stick, values: { whom: so } })
  job.wait(gw)
}

/** It was signed in with what came down the pole. */
function takeStickAgain(job: Job): void {
  const stick = kit(job, 'stick')
  if (item(job, stick).bookedIn) {
    job.order(job.crew.gw, 'book-out', { on: stick })
    job.wait()
  }
  haveStickHanded(job)
}

function restoreTransformer(job: Job, on: ThingId): void {
  const { so } = job.crew
  job.order(so, 'walk', { on })
  job.order(so, 'untag', { on })
  if (job.kit.has(`bag-${on}`)) job.order(so, 'unbag-carriers', { on })
  job.order(so, 'put-carriers-in', { on })
}

function restoreMain(job: Job, on: ThingId): void {
  const { so } = job.crew
  const key = findMain(job.scenario, on)?.key
  if (key !== undefined) take(job, so, kit(job, `key-${key}`))
  job.order(so, 'walk', { on })
  job.order(so, 'untag', { on })
  job.order(so, 'unlock', { on })
  if (job.hasDone('open-main', { on })) job.order(so, 'close-main', { on })
}
