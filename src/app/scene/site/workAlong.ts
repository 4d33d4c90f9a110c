/** At which pole the crew works: the first, or the next one of the section once rod, lead or climber are there. */
import type { LeadPicture, SitePicture } from './sitePicture'
import type { Layout } from './layout'

const isNearer = (along: number, next: number): boolean => Math.abs(along - next) < Math.abs(along)

/** Metres along the line from the first pole. */
export function workAlong({ place: { nextPole } }: Layout, { rods, people }: SitePicture): number {
  if (!nextPole) return 0
  const next = nextPole.along
  if (rods.length > 0) return rods.some(({ at }) => isNearer(at.x, next)) ? next : 0
  return people.some(({ place }) => place.kind === 'pole' && place.pole === 'next') ? next : 0
}

/** Of a lead: where its ends are, or, while all of them hang free, where the work is. */
export function leadAlong(layout: Layout, picture: SitePicture, { ends }: LeadPicture): number {
  const next = layout.place.nextPole?.along ?? 0
  if (next === 0) return 0
  const on = ends.flatMap((end) => end.on ?? [])
  if (on.some((it) => it.endsWith('@next'))) return next
  const rod = picture.rods.find(({ item }) => on.includes(`rod/${item}`))
  if (rod) return isNearer(rod.at.x, next) ? next : 0
  return on.length > 0 ? 0 : workAlong(layout, picture)
}

/** The nearer of the two poles, metres along the line. */
export const poleBeside = ({ place: { nextPole } }: Layout, along: number): number =>
  nextPole && isNearer(along, nextPole.along) ? nextPole.along : 0
