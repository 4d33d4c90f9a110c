/**
 * Clear distance between two electrode shapes, metre, negative where they overlap. Upright shapes and surface discs are
 * compared in plan, whatever their depths; with a wire or a buried plate the distance in space counts, a plate as a ball.
 */
import type { DeepPoint, Shape } from './electrode'
import { sidesOf } from './electrode'
import type { GroundPoint } from './soil'
import { distanceBetween } from './soil'

type Side = readonly [DeepPoint, DeepPoint]

export function gapBetween(a: Shape, b: Shape): number {
  const radii = a.radius + b.radius
  if (isUprightOrFlat(a) && isUprightOrFlat(b)) return distanceBetween(a.at, b.at) - radii
  const gaps = axesOf(a).flatMap((one) => axesOf(b).map((other) => distanceOfSides(one, other)))
  return Math.min(...gaps) - radii
}

function isUprightOrFlat(shape: Shape): shape is Exclude<Shape, { kind: 'wire' }> {
  return shape.kind !== 'wire' && !(shape.kind === 'disc' && (shape.depth ?? 0) > 0)
}

function axesOf(shape: Shape): readonly Side[] {
  if (shape.kind === 'wire') return sidesOf(shape)
  const { x, y } = shape.at
  if (shape.kind === 'disc') {
    const point = { x, y, depth: shape.depth ?? 0 }
    return [[point, point]]
  }
  return [
    [
      { x, y, depth: shape.top },
      { x, y, depth: shape.top + shape.length },
    ],
  ]
}

/** Nearest approach of two straight pieces: alternating projection onto each, which for two segments ends in the least. */
function distanceOfSides(a: Side, b: Side): number {
  const starts = [b[0], b[1], between(b, 0.5)]
  return Math.min(
    ...starts.map((start) => {
      let onB = start
      let onA = nearestOn(a, onB)
      for (let k = 0; k < 200; k++) {
        onB = nearestOn(b, onA)
        onA = nearestOn(a, onB)
      }
      return distanceInSpace(onA, onB)
    }),
  )
}

function nearestOn(side: Side, to: DeepPoint): DeepPoint {
  const [from, end] = side
  const dx = end.x - from.x
  const dy = end.y - from.y
  const dz = end.depth - from.depth
  const square = dx * dx + dy * dy + dz * dz
  if (square === 0) return from
  const share = ((to.x - from.x) * dx + (to.y - from.y) * dy + (to.depth - from.depth) * dz) / square
  return between(side, Math.min(1, Math.max(0, share)))
}

function between([from, to]: Side, share: number): DeepPoint {
  return {
    x: from.x + (to.x - from.x) * share,
    y: from.y + (to.y - from.y) * share,
    depth: from.depth + (to.depth - from.depth) * share,
  }
}

function distanceInSpace(a: DeepPoint, b: DeepPoint): number {
  const apart = distanceBetween(a, b)
  return Math.sqrt(apart * apart + (a.depth - b.depth) * (a.depth - b.depth))
}

/** Distance over the ground from a place to the nearest of a shape's surface; negative on or above it. */
export function distanceInPlan(shape: Shape, at: GroundPoint): number {
  if (shape.kind !== 'wire') return distanceBetween(shape.at, at) - shape.radius
  const point = { ...at, depth: 0 }
  const flat = axesOf(shape).map(
    ([from, to]): Side => [
      { ...from, depth: 0 },
      { ...to, depth: 0 },
    ],
  )
  return Math.min(...flat.map((side) => distanceBetween(nearestOn(side, point), at))) - shape.radius
}
