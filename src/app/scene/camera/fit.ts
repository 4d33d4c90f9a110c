/**
 * A view moved so that everything that must be seen is in what the panels leave free: looked at from the same side, from
 * no nearer than it says. The nearest distance is found by halving; the aim is the middle of what is then still free.
 */
import { Vector3 } from 'three'
import type { CameraView, FreeShare } from './presets'

/** Of the free part, at each side, for labels and air. */
const air = 0.06
const farthest = 90

interface Seen {
  readonly right: number
  readonly up: number
  /** Behind the aim, away from the eye. */
  readonly depth: number
}

/** @param aspect of the whole picture, width over height */
export function fitted(view: CameraView, points: readonly Vector3[], aspect: number, free: FreeShare): CameraView {
  const ahead = new Vector3().subVectors(view.target, view.eye)
  const least = ahead.length()
  ahead.normalize()
  const right = new Vector3().crossVectors(ahead, northUp(ahead)).normalize()
  const up = new Vector3().crossVectors(right, ahead)
  const seen = points.map((point): Seen => {
    const from = point.clone().sub(view.target)
    return { right: from.dot(right), up: from.dot(up), depth: from.dot(ahead) }
  })
  const half = Math.tan((view.fov * Math.PI) / 360) * (1 - 2 * air)
  const [high, wide] = [half * free.high, half * aspect * free.wide]
  const aimed = (distance: number) => {
    const [x, y] = [middle(seen, 'right', wide, distance), middle(seen, 'up', high, distance)]
    return x && y && x.room >= 0 && y.room >= 0 ? { x, y } : undefined
  }
  let [near, far] = [least, farthest]
  if (aimed(near)) far = near
  // What does not fit from the farthest is seen from there, its middle in the middle.
  else if (!aimed(far)) near = far
  for (let step = 0; step < 24 && far - near > 0.01; step++) {
    const between = (near + far) / 2
    if (aimed(between)) far = between
    else near = between
  }
  const [x, y] = [middle(seen, 'right', wide, far), middle(seen, 'up', high, far)]
  const target = view.target
    .clone()
    .addScaledVector(right, x?.at ?? 0)
    .addScaledVector(up, y?.at ?? 0)
  return { ...view, target, eye: target.clone().addScaledVector(ahead, -far) }
}

/** Straight down, north is up in the picture. */
const northUp = (ahead: Vector3): Vector3 => (Math.abs(ahead.y) > 0.999 ? new Vector3(1, 0, 0) : new Vector3(0, 1, 0))

/** The middle of where the aim may lie so that each point is inside. */
function middle(seen: readonly Seen[], side: 'right' | 'up', tangent: number, distance: number) {
  let [low, high] = [-Infinity, Infinity]
  for (const point of seen) {
    const reach = (distance + point.depth) * tangent
    if (reach <= 0) return undefined
    low = Math.max(low, point[side] - reach)
    high = Math.min(high, point[side] + reach)
  }
  return { at: (low + high) / 2, room: high - low }
}
