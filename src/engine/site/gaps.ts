/**
 * Conductors that can be opened at the worked pole, by a jumper that is undone there: each then has two ends. What lies
 * towards the crossing is the far one, `conductor-b/far`; while the jumper is closed both are one.
 */
import { withoutPole } from './nextPole'
import type { ThingId } from './scenario'
import type { Site } from './site'

const suffix = '/far'

export const farEnd = (conductor: ThingId): ThingId => `${conductor}${suffix}`

export const isFarEnd = (thing: ThingId): boolean => thing.endsWith(suffix)

/** The conductor of either end, of any pole. */
export const conductorOf = (thing: ThingId): ThingId =>
  isFarEnd(thing) ? thing.slice(0, -suffix.length) : withoutPole(thing)

export function isOpened(site: Pick<Site, 'opened'>, conductor: ThingId): boolean {
  return site.opened?.includes(conductor) ?? false
}
