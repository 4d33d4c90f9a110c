/**
 * The ways in which a lead can be laid from the tarp's side to the pole and up, drawn in pencil to choose between. Where
 * exactly it runs is the picture's; the order says only which way.
 */
import { type PerspectiveCamera, Vector3 } from 'three'
import { soften } from '../geometry/curves'
import { vector } from '../geometry/shapes'
import type { Layout } from '../site/layout'

export interface Way {
  readonly choice: string
  readonly name: string
  readonly points: readonly Vector3[]
}

interface Offered {
  readonly choice: string
  readonly name: string
}

/** Far enough to mean it, pixels. */
const reach = 60

export function waysOf(layout: Layout, offered: readonly Offered[]): readonly Way[] {
  return offered.map((it) => ({ ...it, points: soften(wayOf(layout, it.choice), 2) }))
}

function wayOf({ arm, lvArm, conductors }: Layout, choice: string): Vector3[] {
  const start = vector(1.5, 0.03, -2.2)
  const top = arm.height - 0.3
  const out = Math.max(...conductors.map(({ across }) => Math.abs(across)))
  if (choice === 'coiled')
    return [
      start,
      ...Array.from({ length: 22 }, (_, i) =>
        vector(0.9 + 0.45 * Math.cos(i * 0.6), 0.03 + i * 0.004, -1.1 + 0.45 * Math.sin(i * 0.6)),
      ),
      vector(0.25, 0.4, -0.2),
      vector(0.2, top, -0.2),
    ]
  if (choice === 'over-lv')
    return [
      start,
      vector(1.1, 0.05, -1.3),
      vector(0.75, lvArm.height * 0.6, -0.6),
      vector(lvArm.length / 2 + 0.1, lvArm.height + 0.35, -0.4),
      vector(0.4, lvArm.height + 0.4, -0.3),
      vector(0.25, top, -0.2),
    ]
  return [
    start,
    vector(-0.6, 0.03, -1.8),
    vector(-out - 0.3, 0.4, -0.6),
    vector(-out - 0.25, lvArm.height * 0.6, -0.3),
    vector(-out * 0.8, top - 0.6, -0.2),
    vector(-0.3, top, -0.15),
  ]
}

/** The one that the pointer is on; undefined when it is on none. */
export function nearestWay(
  ways: readonly Way[],
  camera: PerspectiveCamera,
  screen: { readonly width: number; readonly height: number },
  pixel: { readonly x: number; readonly y: number },
): Way | undefined {
  const point = new Vector3()
  let best: Way | undefined
  let bestGap = reach
  // Near their common beginning nothing is chosen yet.
  for (const way of ways)
    for (const each of way.points.slice(Math.floor(way.points.length * 0.3))) {
      point.copy(each).project(camera)
      const gap = Math.hypot(
        ((point.x + 1) / 2) * screen.width - pixel.x,
        ((1 - point.y) / 2) * screen.height - pixel.y,
      )
      if (gap >= bestGap) continue
      bestGap = gap
      best = way
    }
  return best
}
