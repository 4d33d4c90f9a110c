/** Plane geometry of the site: the barrier's outline, and what lets current into the ground. */
import { distance, isInside, type GroundPoint } from '../../site/place'
import type { Site } from '../../site/site'
import { polesInUse } from './workedPole'

/** Rods in the ground and the poles in use; the stay anchor only where its insulator is missing is for the hazard engine to say. */
export function electrodePoints(site: Site): readonly GroundPoint[] {
  return [...polesInUse(site), ...site.rods.map((rod) => rod.at)]
}

/** Where buried services were looked for. */
export function locatedPoints(site: Site): readonly GroundPoint[] {
  return site.evidence
    .filter(({ of, by }) => of === 'ground' && by === 'test')
    .map(({ values }) => ({ x: Number(values['x']), y: Number(values['y']) }))
}

export function clearanceOfPoint(at: GroundPoint, points: readonly GroundPoint[]): number {
  return points.reduce((least, point) => Math.min(least, distance(at, point)), Infinity)
}

/** Metres from a point to the nearest side of the outline; negative when the point lies outside it. */
export function clearanceInside(outline: readonly GroundPoint[], at: GroundPoint): number {
  const toSides = outline.reduce(
    (least, a, i) => Math.min(least, distanceToSide(at, a, outline[(i + 1) % outline.length] ?? a)),
    Infinity,
  )
  return isInside(outline, at) ? toSides : -toSides
}

function distanceToSide(at: GroundPoint, a: GroundPoint, b: GroundPoint): number {
  const along = { x: b.x - a.x, y: b.y - a.y }
  const length2 = along.x * along.x + along.y * along.y
  const share = length2 === 0 ? 0 : ((at.x - a.x) * along.x + (at.y - a.y) * along.y) / length2
  const t = Math.min(1, Math.max(0, share))
  return distance(at, { x: a.x + t * along.x, y: a.y + t * along.y })
}
