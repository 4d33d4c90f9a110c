/** Places on the ground to ask for: along a line, or over a rectangle row by row, `step` metres apart, both ends in it. */
import type { GroundPoint } from '../../engine'

export interface Stretch {
  readonly from: GroundPoint
  readonly to: GroundPoint
  readonly step: number
}

export function alongLine({ from, to, step }: Stretch): readonly GroundPoint[] {
  const length = Math.sqrt((to.x - from.x) * (to.x - from.x) + (to.y - from.y) * (to.y - from.y))
  const pieces = Math.max(1, Math.ceil(length / step - 1e-9))
  return Array.from({ length: pieces + 1 }, (_, k) => ({
    x: from.x + ((to.x - from.x) * k) / pieces,
    y: from.y + ((to.y - from.y) * k) / pieces,
  }))
}

export function overRectangle({ from, to, step }: Stretch): readonly GroundPoint[] {
  const left = alongLine({ from, to: { x: from.x, y: to.y }, step })
  return left.flatMap((start) => alongLine({ from: start, to: { x: to.x, y: start.y }, step }))
}
