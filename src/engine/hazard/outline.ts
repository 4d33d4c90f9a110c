/** A closed outline on the ground: points along it, and whether a point is inside. Corners in order, either way round. */
import { distance, type GroundPoint } from '../site/place'

/** Points along the outline, at most `step` metres apart, corners included. */
export function outlinePoints(outline: readonly GroundPoint[], step: number): readonly GroundPoint[] {
  return outline.flatMap((from, i) => {
    const to = outline[(i + 1) % outline.length]!
    const count = Math.max(1, Math.ceil(distance(from, to) / step))
    return Array.from({ length: count }, (_, k) => ({
      x: from.x + ((to.x - from.x) * k) / count,
      y: from.y + ((to.y - from.y) * k) / count,
    }))
  })
}

/** Even-odd rule; a point on the outline may be either. */
export function isInside(outline: readonly GroundPoint[], point: GroundPoint): boolean {
  let inside = false
  outline.forEach((a, i) => {
    const b = outline[(i + 1) % outline.length]!
    const straddles = a.y > point.y !== b.y > point.y
    if (straddles && point.x < a.x + ((point.y - a.y) * (b.x - a.x)) / (b.y - a.y)) inside = !inside
  })
  return inside
}
