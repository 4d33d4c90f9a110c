/**
 * What a hand or a stick gets to from where a person stands. Shoulder 1.4 m above the feet, arm 0.75 m, lean in the
 * strap 0.35 m (common practice, no source).
 */
import { gearOf, groundPointOf, numberOf, requirePerson, requireItem } from '../site/questions'
import type { ItemId, PersonId, ThingId } from '../site/scenario'
import { isOnNextPole, nearestPole, poleFoot, withoutPole, type PoleName } from '../site/nextPole'
import { distance } from '../site/place'
import { findSectionNeutral } from '../site/findSectionNeutral'
import { conductorOf, isFarEnd } from '../site/gaps'
import { bucketPlace } from '../site/truckState'
import type { Site } from '../site/site'
import { feetAt } from '../site/stations'

const shoulderAboveFeet = 1.4
const armAndLean = 1.1

/** From one end of a conductor that is opened at the pole to the other, metres (common practice, no source). */
const acrossPole = 0.6

interface SpacePoint {
  readonly x: number
  readonly y: number
  readonly z: number
}

/** Where a thing of the pole top is; undefined for what is not one point. */
export function findPointOf(site: Site, thing: ThingId): SpacePoint | undefined {
  const { conductors, lv, pole } = site.scenario
  const neutral = findSectionNeutral(site.scenario)
  const wire = [...conductors, ...lv.wires, ...(neutral ? [neutral] : [])].find((it) => it.id === conductorOf(thing))
  const { x } = poleFoot(site.scenario, isOnNextPole(thing) ? 'next' : undefined)
  if (wire) return { x: isFarEnd(thing) ? acrossPole : x, y: wire.x, z: wire.height }
  if (withoutPole(thing) === 'arm') return { x, y: 0, z: pole.armHeight }
  if (thing === 'terminal' && pole.kind === 'concrete' && pole.integralEarth) {
    return { x: 0, y: 0, z: pole.integralEarth.height }
  }
  if (thing === 'truck') return { x: site.truck.x, y: site.truck.y, z: 1 }
  if (thing === 'pole-earth' && neutral) return { ...neutral.poleEarth.at, z: 0 }
  const piece = site.scenario.metalwork?.find((it) => it.id === thing)
  if (piece) return { x: 0, y: 0, z: piece.height }
  const rod = site.rods.find((it) => `rod/${it.item}` === thing)
  return rod && { x: rod.at.x, y: rod.at.y, z: 0 }
}

export function separation(a: SpacePoint, b: SpacePoint): number {
  const [x, y, z] = [a.x - b.x, a.y - b.y, a.z - b.z]
  return Math.sqrt(x * x + y * y + z * z)
}

/** The shoulder of somebody up the pole or in the bucket; undefined on the ground. */
function findShoulder(site: Site, who: PersonId): SpacePoint | undefined {
  const { place } = requirePerson(site, who)
  if (place.kind === 'bucket') {
    const { at, height } = bucketPlace(site)
    return { x: at.x, y: at.y, z: height + shoulderAboveFeet }
  }
  if (place.kind !== 'pole' || place.station === 'foot') return undefined
  const { x } = poleFoot(site.scenario, place.pole)
  return { x, y: 0, z: feetAt(site.scenario.pole, place.station) + shoulderAboveFeet }
}

export function isInReachOfHand(site: Site, who: PersonId, thing: ThingId): boolean {
  return isWithin(site, who, thing, armAndLean)
}

export function isInReachOfStick(site: Site, who: PersonId, stick: ItemId, thing: ThingId): boolean {
  return isWithin(site, who, thing, armAndLean + numberOf(gearOf(site, stick).is, 'reach'))
}

/** From the shoulder down over the rim of the bucket, metres (common practice, no source). */
const overRim = 0.6

/** Heights on the pole that both arms get to, metres: squatting to the feet, stretched above the shoulder. */
export function findReachOnPole(
  site: Site,
  who: PersonId,
): { readonly low: number; readonly high: number } | undefined {
  const shoulder = findShoulder(site, who)
  if (shoulder === undefined) return undefined
  const foot = poleFoot(site.scenario, nearestPole(site.scenario, shoulder))
  const away = distance(foot, shoulder)
  if (away > armAndLean) return undefined
  const isInBucket = requirePerson(site, who).place.kind === 'bucket'
  return { low: shoulder.z - (isInBucket ? overRim : shoulderAboveFeet), high: shoulder.z + armAndLean - away }
}

function isWithin(site: Site, who: PersonId, thing: ThingId, reach: number): boolean {
  const [from, to] = [findShoulder(site, who), findPointOf(site, thing)]
  return from !== undefined && to !== undefined && separation(from, to) <= reach
}

/** The stick in the hands, or else the first that hangs within reach. */
export function findStick(site: Site, who: PersonId): ItemId | undefined {
  const { holds } = requirePerson(site, who)
  const held = holds.find((id) => requireItem(site, id).type === 'operating-stick')
  return (
    held ??
    Object.keys(site.items).find((id) => isHangingStick(site, id, nearestPole(site.scenario, groundPointOf(site, who))))
  )
}

function isHangingStick(site: Site, id: ItemId, pole: PoleName | undefined): boolean {
  const item = requireItem(site, id)
  return item.type === 'operating-stick' && item.where.kind === 'aloft' && item.where.at === pole
}

export { shoulderAboveFeet }
