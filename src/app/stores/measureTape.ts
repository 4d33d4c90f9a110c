/**
 * What a tape reads between two things: between the two nearest points of them. Nearest points of two straight pieces by
 * clamping both parameters in turn (vector algebra; the distance is a convex function of the two).
 */
import type { Belief } from '../../engine'
import { type Piece, type Place, shapeOf } from './shapeOf'
import type { TapeEnd } from './tapeStore'

export interface Measured {
  readonly from: Place
  readonly to: Place
  /** Metres over the ground, up (down is negative), and straight. */
  readonly over: number
  readonly up: number
  readonly straight: number
}

/** Undefined while an end is missing, or where the crew knows no place for it. */
export function measureTape(belief: Belief, ends: readonly TapeEnd[]): Measured | undefined {
  const [a, b] = ends
  const from = a && shapeOf(belief, a)
  const to = b && shapeOf(belief, b)
  if (!from || !to) return undefined
  let best: Measured | undefined
  for (const one of from)
    for (const other of to) {
      const found = between(...nearestPoints(one, other))
      if (!best || found.straight < best.straight) best = found
    }
  return best
}

function between(from: Place, to: Place): Measured {
  const over = Math.hypot(to.x - from.x, to.y - from.y)
  const up = to.z - from.z
  return { from, to, over, up, straight: Math.hypot(over, up) }
}

const minus = (a: Place, b: Place): Place => ({ x: a.x - b.x, y: a.y - b.y, z: a.z - b.z })
const dot = (a: Place, b: Place): number => a.x * b.x + a.y * b.y + a.z * b.z
const share = (t: number): number => (Number.isFinite(t) ? Math.min(1, Math.max(0, t)) : 0)
const along = ([a, b]: Piece, t: number): Place => {
  const d = minus(b, a)
  return { x: a.x + d.x * t, y: a.y + d.y * t, z: a.z + d.z * t }
}

/** Exported for its test. */
export function nearestPoints(one: Piece, other: Piece): readonly [Place, Place] {
  const [u, v, w] = [minus(one[1], one[0]), minus(other[1], other[0]), minus(one[0], other[0])]
  const [uu, uv, vv, uw, vw] = [dot(u, u), dot(u, v), dot(v, v), dot(u, w), dot(v, w)]
  // Parallel pieces have no single answer: the one that is nearest to the beginning of the first.
  let s = share((uv * vw - vv * uw) / (uu * vv - uv * uv))
  const t = share((uv * s + vw) / vv)
  s = share((uv * t - uw) / uu)
  return [along(one, s), along(other, t)]
}
