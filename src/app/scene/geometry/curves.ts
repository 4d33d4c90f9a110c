/** Curves of wires and leads. */
import { Vector3 } from 'three'

/**
 * Parameter a of the catenary y = a·cosh(x/a) that hangs `sag` below its ends in the middle of a level span: Newton from
 * the parabola, which at such sags is within millimetres already. Metres.
 */
function catenaryOf(length: number, sag: number): number {
  let a = (length * length) / (8 * sag)
  for (let round = 0; round < 4; round++) {
    const half = length / (2 * a)
    a -= (a * (Math.cosh(half) - 1) - sag) / (Math.cosh(half) - 1 - half * Math.sinh(half))
  }
  return a
}

/** How far the wire lies under the chord, at the share t of its span. */
export function dropIn(length: number, sag: number, t: number): number {
  if (sag <= 0) return 0
  const a = catenaryOf(length, sag)
  return sag - a * (Math.cosh(((t - 0.5) * length) / a) - 1)
}

/** Conductor between supports as the catenary with this sag in its middle. */
export function span(a: Vector3, b: Vector3, sag: number, pieces = 24): Vector3[] {
  const length = a.distanceTo(b)
  return Array.from({ length: pieces + 1 }, (_, i) => {
    const point = a.clone().lerp(b, i / pieces)
    point.y -= dropIn(length, sag, i / pieces)
    return point
  })
}

/** Rounds a polyline's corners (Chaikin), keeps both ends. */
export function soften(points: readonly Vector3[], passes = 2): Vector3[] {
  let curve = points.map((point) => point.clone())
  for (let pass = 0; pass < passes; pass++) {
    const next = [curve[0]!]
    for (let i = 0; i < curve.length - 1; i++)
      next.push(curve[i]!.clone().lerp(curve[i + 1]!, 0.25), curve[i]!.clone().lerp(curve[i + 1]!, 0.75))
    next.push(curve[curve.length - 1]!)
    curve = next
  }
  return curve
}

/** An upright post that a lead lies against. */
export interface Post {
  readonly x: number
  readonly z: number
  readonly radius: number
  readonly from: number
  readonly to: number
}

export interface LeadOptions {
  readonly pieces?: number
  /** Where it is led before it is let go. */
  readonly via?: readonly Vector3[]
  readonly posts?: readonly Post[]
  readonly radius?: number
}

const steps = 200
const relaxations = 24

/**
 * A flexible lead of given length between two fixed ends, by points that fall and keep their distances. Computed once
 * when a lead is fitted or moved; counts are fixed, so the same site gives the same curve.
 */
export function hangLead(a: Vector3, b: Vector3, length: number, options: LeadOptions = {}): Vector3[] {
  const pieces = options.pieces ?? 36
  const rest = Math.max(length, a.distanceTo(b) * 1.01) / pieces
  const guide = [a, ...(options.via ?? []), b]
  const points = alongGuide(guide, pieces)
  const before = points.map((point) => point.clone())
  for (let step = 0; step < steps; step++) {
    fall(points, before)
    for (let round = 0; round < relaxations; round++) keepLengths(points, rest, round % 2 === 1)
    keepOutside(points, before, options.posts ?? [], options.radius ?? 0.012)
  }
  return points
}

/** Evenly spaced on the guide, by its length. */
function alongGuide(guide: readonly Vector3[], pieces: number): Vector3[] {
  const reached = [0]
  for (let k = 1; k < guide.length; k++) reached.push(reached[k - 1]! + guide[k]!.distanceTo(guide[k - 1]!))
  const total = reached[reached.length - 1]! || 1
  return Array.from({ length: pieces + 1 }, (_, i) => {
    const at = (i / pieces) * total
    let k = 0
    while (k + 2 < guide.length && reached[k + 1]! < at) k++
    return guide[k]!.clone().lerp(guide[k + 1]!, (at - reached[k]!) / (reached[k + 1]! - reached[k]! || 1))
  })
}

const move = new Vector3()

function fall(points: Vector3[], before: Vector3[]): void {
  for (let i = 1; i < points.length - 1; i++) {
    move.subVectors(points[i]!, before[i]!).multiplyScalar(0.94)
    before[i]!.copy(points[i]!)
    points[i]!.add(move)
    points[i]!.y -= 0.0016
  }
}

function keepLengths(points: Vector3[], rest: number, isBackward: boolean): void {
  const pieces = points.length - 1
  for (let k = 0; k < pieces; k++) {
    const i = isBackward ? pieces - 1 - k : k
    const [start, end] = [points[i]!, points[i + 1]!]
    move.subVectors(end, start)
    const length = move.length() || 1e-6
    const excess = (length - rest) / length
    const share = i === 0 ? 0 : i + 1 === pieces ? 1 : 0.5
    if (i > 0) start.addScaledVector(move, excess * share)
    if (i + 1 < pieces) end.addScaledVector(move, -excess * (i === 0 ? 1 : 0.5))
  }
}

/** Above the ground, where friction holds it, and outside the posts. */
function keepOutside(points: Vector3[], before: Vector3[], posts: readonly Post[], radius: number): void {
  for (let i = 1; i < points.length - 1; i++) {
    const point = points[i]!
    if (point.y < radius) {
      const last = before[i]!
      point.y = radius
      last.set(last.x + (point.x - last.x) * 0.6, radius, last.z + (point.z - last.z) * 0.6)
    }
    for (const post of posts) {
      if (point.y < post.from || point.y > post.to) continue
      const [dx, dz] = [point.x - post.x, point.z - post.z]
      const distance = Math.hypot(dx, dz) || 1e-6
      const least = post.radius + radius
      if (distance >= least) continue
      point.x = post.x + (dx / distance) * least
      point.z = post.z + (dz / distance) * least
    }
  }
}
