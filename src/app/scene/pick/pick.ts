/** Which thing a pointer means: nearest thick segment on the screen, so that a wire of 9 mm is as easy to hit as a truck. */
import { type PerspectiveCamera, Vector3 } from 'three'
import type { Hit } from '../ink/part'

export interface Screen {
  readonly width: number
  readonly height: number
}

export interface Found {
  readonly id: string
  /** Pixels from the edge of the thing; negative inside it. */
  readonly gap: number
  /** Metres from the eye. */
  readonly depth: number
}

/** Slack round everything, pixels: a finger covers 44. */
export const slack = { mouse: 8, touch: 22 } as const

const start = new Vector3()
const end = new Vector3()

/** Projects as the camera does, view offsets included. */
function project(camera: PerspectiveCamera, screen: Screen) {
  const matrix = camera.projectionMatrix.elements
  const [m0, m5, m8, m9] = [matrix[0]!, matrix[5]!, matrix[8]!, matrix[9]!]
  return {
    x: (point: Vector3): number => (screen.width / 2) * (1 + (m0 * point.x + m8 * point.z) / -point.z),
    y: (point: Vector3): number => (screen.height / 2) * (1 - (m5 * point.y + m9 * point.z) / -point.z),
    perMetre: (m5 * screen.height) / 2,
  }
}

/** @returns the thing under the pointer: the nearest within the slack; what lies nearer to the eye wins a tie */
export function pick(
  hits: readonly Hit[],
  camera: PerspectiveCamera,
  screen: Screen,
  x: number,
  y: number,
  slackPx: number,
): Found | null {
  const on = project(camera, screen)
  let best: Found | null = null
  let bestScore = Number.POSITIVE_INFINITY
  for (const { id, segments, radius } of hits)
    for (const [from, to] of segments) {
      if (!clip(from, to, camera)) continue
      const [ax, ay, bx, by] = [on.x(start), on.y(start), on.x(end), on.y(end)]
      const length2 = (bx - ax) ** 2 + (by - ay) ** 2
      const t = length2 ? Math.min(1, Math.max(0, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / length2)) : 0
      const depth = -(start.z + (end.z - start.z) * t)
      const gap = Math.hypot(ax + (bx - ax) * t - x, ay + (by - ay) * t - y) - (radius * on.perMetre) / depth
      if (gap > slackPx) continue
      const score = Math.max(gap, 0) * 100 + depth + Math.min(gap, 0) * 0.01
      if (score >= bestScore) continue
      bestScore = score
      best = { id, gap, depth }
    }
  return best
}

/** To view space, the part behind the near plane cut off; false when nothing is left. */
function clip(from: Vector3, to: Vector3, camera: PerspectiveCamera): boolean {
  start.copy(from).applyMatrix4(camera.matrixWorldInverse)
  end.copy(to).applyMatrix4(camera.matrixWorldInverse)
  const near = -camera.near
  if (start.z > near && end.z > near) return false
  if (start.z > near) start.lerp(end, (start.z - near) / (start.z - end.z))
  if (end.z > near) end.lerp(start, (end.z - near) / (end.z - start.z))
  return true
}

/**
 * Where a thing can be pressed: a pixel in the picture at which `pick` answers this thing, or undefined.
 * @param isFree false where something lies over the picture
 */
export function findPixel(
  hits: readonly Hit[],
  id: string,
  camera: PerspectiveCamera,
  screen: Screen,
  slackPx: number,
  isFree: (x: number, y: number) => boolean = () => true,
): { x: number; y: number } | undefined {
  const on = project(camera, screen)
  for (const hit of hits) {
    if (hit.id !== id) continue
    for (const [from, to] of hit.segments)
      for (const share of [0.5, 0.25, 0.75, 0.1, 0.9, 0, 1]) {
        if (!clip(from, to, camera)) continue
        const point = start.clone().lerp(end, share)
        const [x, y] = [on.x(point), on.y(point)]
        if (x < 4 || y < 4 || x > screen.width - 4 || y > screen.height - 4 || !isFree(x, y)) continue
        if (pick(hits, camera, screen, x, y, slackPx)?.id === id) return { x, y }
      }
  }
  return undefined
}

/** Where the plate of a thing is joined: the middle of it that lies in the picture, pixels. */
export function anchorIn(
  hits: readonly Hit[],
  id: string,
  camera: PerspectiveCamera,
  screen: Screen,
): { x: number; y: number } | null {
  const on = project(camera, screen)
  let best: { x: number; y: number } | null = null
  let bestDistance = Number.POSITIVE_INFINITY
  for (const hit of hits) {
    if (hit.id !== id) continue
    for (const [from, to] of hit.segments) {
      if (!clip(from, to, camera)) continue
      const point = start.clone().lerp(end, 0.5)
      const [x, y] = [on.x(point), on.y(point)]
      if (x < 0 || y < 0 || x > screen.width || y > screen.height) continue
      const distance = Math.hypot(x - screen.width / 2, y - screen.height / 2)
      if (distance >= bestDistance) continue
      best = { x, y }
      bestDistance = distance
    }
  }
  return best
}
