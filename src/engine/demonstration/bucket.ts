/**
 * Up in the bucket instead of on the pole: where the truck has a boom that was found sound, it stands near enough, and the
 * pack has rules for it. The truck is on its pads and bonded to the earth at the pole before anybody goes up, and nobody on
 * the ground touches it meanwhile.
 */
import { findReachOnPole, isInReachOfHand, isInReachOfStick } from '../actions/reach'
import { findInTheWay, isInBoomReach } from '../actions/truck/boomReach'
import { feetAt } from '../site/stations'
import type { PoleStation } from '../site/place'
import type { Site } from '../site/site'
import type { BucketPlace } from '../site/truckState'
import { invariant } from '../units/invariant'
import { item, kit, person, walkTo } from './ask'
import { coverEdges } from './fits'
import { seatTurns, standBack } from './ground'
import type { Job } from './job'
import { conductorsOf, guardedWires, isCovering, isEarthedByNeutral, workOf } from './things'

type Aloft = Exclude<PoleStation, 'foot'>

/** What it takes lies ready and the truck stands where the boom gets to the pole. */
export function isFromBucket(job: Job): boolean {
  return job.layout.isBoomNear && job.at.pole === undefined && job.kit.has('boom') && job.kit.has('truck-bond')
}

const isInBucket = (job: Job): boolean => person(job, job.crew.pw).place.kind === 'bucket'

/** Where the bucket hangs; undefined while it rests on the truck, or nobody of the crew is in it. */
function findBucket(job: Job): BucketPlace | undefined {
  return isInBucket(job) ? (job.belief().truckState?.bucket ?? undefined) : undefined
}

/** In the bucket on the truck, about to go up or just come down. */
export const isInRestingBucket = (job: Job): boolean => isInBucket(job) && findBucket(job) === undefined

/** At which of the heights of the pole the bucket hangs. */
export function findBucketStation(job: Job): Aloft | undefined {
  const now = findBucket(job)
  if (now === undefined) return undefined
  return now.height < requirePlace(job, 'above-lv').height ? 'below-lv' : 'above-lv'
}

/** Onto its pads before the ground is earthed there, controls tried while it stands. */
export function setUpTruck(job: Job): void {
  const { gw } = job.crew
  if (!isFromBucket(job) || job.belief().truckState?.outriggers === 'down') return
  walkTo(job, gw, job.belief().truck)
  job.order(gw, 'set-outriggers', { on: 'truck' })
  if (!job.hasDone('try-lower-controls')) job.order(gw, 'try-lower-controls', { on: 'bucket' })
  job.wait(gw)
}

/** Into the bucket and strapped there; then the truck gets its earth, and the ground worker goes. */
export function boardBucket(job: Job): void {
  const { pw } = job.crew
  if (!isInBucket(job)) {
    walkTo(job, pw, job.belief().truck)
    job.order(pw, 'enter-bucket', { on: 'bucket' })
  }
  if (!person(job, pw).strapped) job.order(pw, 'strap-on')
  job.wait()
  bondTruck(job)
  standBack(job)
  job.wait()
}

/** On the earth at the pole, also on a fresh one. */
export function bondTruck(job: Job): void {
  const { gw } = job.crew
  if (!isInBucket(job) || isTruckBonded(job)) return
  walkTo(job, gw, job.layout.rod)
  job.order(gw, 'bond-truck', { with: kit(job, 'truck-bond'), on: earthAtPole(job), values: { turns: seatTurns } })
  standBack(job)
  job.wait()
}

export function unbondTruck(job: Job): void {
  const { gw } = job.crew
  if (!job.kit.has('truck-bond') || !isTruckBonded(job)) return
  walkTo(job, gw, job.layout.rod)
  job.order(gw, 'unbond-truck', { with: kit(job, 'truck-bond'), on: earthAtPole(job) })
  standBack(job)
  job.wait()
}

const isTruckBonded = (job: Job): boolean => item(job, kit(job, 'truck-bond')).where.kind === 'fitted'

const earthAtPole = (job: Job): string => (isEarthedByNeutral(job) ? 'pole-earth' : `rod/${kit(job, 'rod')}`)

export function moveBucketTo(job: Job, station: Aloft): void {
  const { at, height } = requirePlace(job, station)
  job.order(job.crew.pw, 'move-bucket', { on: 'bucket', values: { at, height } })
}

/** Down on the truck, with whoever is in it. */
export function bringBucketHome(job: Job): void {
  if (findBucket(job)) job.order(job.crew.pw, 'stow-bucket', { on: 'bucket' })
  job.wait()
}

/** Down on the truck; its earth comes off before anybody steps out. */
export function leaveBucket(job: Job): void {
  const { pw } = job.crew
  bringBucketHome(job)
  unbondTruck(job)
  if (person(job, pw).strapped) job.order(pw, 'unstrap')
  job.order(pw, 'leave-bucket', { on: 'bucket' })
  job.wait()
}

/** Off its pads once the earths are out of the ground. */
export function packUpTruck(job: Job): void {
  const { gw } = job.crew
  if (job.belief().truckState?.outriggers !== 'down') return
  walkTo(job, gw, job.belief().truck)
  job.order(gw, 'lift-outriggers', { on: 'truck' })
}

/** Beside the pole and between the wires, from the heights of the pole's own stations up (own choice), metres. */
const beside = [0.6, 0.7, 0.8]
const across = [-0.45, 0.45, 0, -0.6, 0.6, -0.3, 0.3]
const higher = [0, 0.2, 0.4, 0.6, 0.8, 1, 1.2, 1.4]

function requirePlace(job: Job, station: Aloft): BucketPlace {
  const side = Math.sign(job.belief().truck.x) || 1
  const places = higher.flatMap((up) =>
    beside.flatMap((x) =>
      across.map((y) => ({ at: { x: side * x, y }, height: feetAt(job.scenario.pole, station) + up })),
    ),
  )
  const found = places.find((place) => isServed(job, place, station))
  invariant(found, 'a place of the bucket from which everything is reached', job.scenario.id, station)
  return found
}

/** The bucket goes there, and all that is done from there is in reach. */
function isServed(job: Job, bucket: BucketPlace, station: Aloft): boolean {
  const { pw } = job.crew
  const site = inBucketAt(job, bucket)
  if (!isInBoomReach(site, bucket) || findInTheWay(site, bucket) !== undefined) return false
  const isReached = (thing: string): boolean => isInReachOfHand(site, pw, thing)
  const hasStick = conductorsOf(job).every((on) => isInReachOfStick(site, pw, kit(job, 'stick'), on))
  if (station === 'below-lv') return hasStick && guardedWires(job).every(isReached)
  return hasStick && isReached('arm') && isReached(workOf(job).conductor) && isCoverReached(job, site)
}

function isCoverReached(job: Job, site: Site): boolean {
  if (!isCovering(job)) return true
  const reach = findReachOnPole(site, job.crew.pw)
  const { from, to } = coverEdges(job)
  return reach !== undefined && reach.low <= from && reach.high >= to
}

function inBucketAt(job: Job, bucket: BucketPlace): Site {
  const site = job.site()
  const { pw } = job.crew
  const inside = { ...site.persons[pw]!, place: { kind: 'bucket' } as const }
  return { ...site, persons: { ...site.persons, [pw]: inside }, truckState: { outriggers: 'down', bucket } }
}
