/** At which pole the work is, where a place has a next one to go on to. */
import { isOnNextPole, onNextPole, poleFoot, type PoleName } from '../../site/nextPole'
import type { GroundPoint } from '../../site/place'
import { requirePerson } from '../../site/questions'
import type { PersonId, ThingId } from '../../site/scenario'
import type { Site } from '../../site/site'

/** The next one as soon as it has been looked over, somebody is up there, or anything hangs there. */
export function workedPole(site: Site): PoleName | undefined {
  if (site.scenario.nextPole === undefined) return undefined
  const isThere =
    site.marks['next-pole-assessed'] !== undefined ||
    site.clamps.some(({ on }) => isOnNextPole(on)) ||
    site.cover?.pole === 'next' ||
    Object.values(site.persons).some(({ place }) => place.kind === 'pole' && place.pole === 'next')
  return isThere ? 'next' : undefined
}

/** The pole that somebody is up; of whoever is on the ground the one at which the work is. */
export function poleOf(site: Site, person: PersonId | undefined): PoleName | undefined {
  const place = person === undefined ? undefined : requirePerson(site, person).place
  if (place?.kind === 'pole') return place.pole
  return place?.kind === 'bucket' ? undefined : workedPole(site)
}

/** The thing of that name there. */
export const thingAt = (thing: ThingId, pole: PoleName | undefined): ThingId =>
  pole === 'next' ? onNextPole(thing) : thing

/** Feet of the poles that something could come down: the one at which the work is, and the first as long as a clamp is up there. */
export function polesInUse(site: Site): readonly GroundPoint[] {
  const at = poleFoot(site.scenario, workedPole(site))
  const isLeftBehind =
    workedPole(site) === 'next' && site.clamps.some(({ end, on }) => end !== 'earth' && !isOnNextPole(on))
  return isLeftBehind ? [poleFoot(site.scenario, undefined), at] : [at]
}
