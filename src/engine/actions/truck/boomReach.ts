/** How far the boom gets, what it cannot go through, and how long it takes. Common practice, no source. */
import { findSectionNeutral } from '../../site/findSectionNeutral'
import { distance } from '../../site/place'
import type { Site } from '../../site/site'
import type { BucketPlace } from '../../site/truckState'

/** Metres from its turret, which stands so far above ground. */
export const boomReach = 12
const turretHeight = 2

/** Half as wide, and as high, as the bucket is, metres. */
const halfWidth = 0.36
const bucketHeight = 1.05

/** Metres a second. */
const speed = 0.4

export function isInBoomReach(site: Site, { at, height }: BucketPlace): boolean {
  const [out, up] = [distance(site.truck, at), height - turretHeight]
  return Math.sqrt(out * out + up * up) <= boomReach
}

/** The pole or a wire would be where the bucket is to come. */
export function findInTheWay({ scenario }: Site, { at, height }: BucketPlace): string | undefined {
  const { pole, conductors, lv } = scenario
  const legs = [{ x: 0, y: 0 }, ...(pole.secondLeg ? [pole.secondLeg.at] : [])]
  const isAtPole = legs.some((leg) => distance(leg, at) < halfWidth + pole.diameter / 2)
  if (isAtPole && height < pole.height) return 'pole'
  const neutral = findSectionNeutral(scenario)
  return [...conductors, ...lv.wires, ...(neutral ? [neutral] : [])].find(
    (wire) => Math.abs(wire.x - at.y) < halfWidth && wire.height > height && wire.height < height + bucketHeight,
  )?.id
}

export function secondsOfBoom(from: BucketPlace, to: BucketPlace): number {
  const [out, up] = [distance(from.at, to.at), to.height - from.height]
  return 20 + Math.ceil(Math.sqrt(out * out + up * up) / speed)
}
