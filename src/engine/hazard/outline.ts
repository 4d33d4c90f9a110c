/** Points along a closed outline on the ground; corners in order, either way round. */
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
