/** What keeps a body from metal, and people from the place: pole cover, guards on LV wires, the barrier round the work. */
import type { Vector3 } from 'three'
import { at, box, cylinder, lathe, loft, vector } from '../geometry/shapes'
import { type Built, built, type Part, part, type Wire, wire } from '../ink/part'
import { type Layout, lvHeight, radiusAt, type Support, toScene } from '../site/layout'
import type { GroundPoint } from '../../../engine'

/** The split of the cover faces the climber; its lip overlaps. */
const splitAt = -2.2
const overlap = 0.42

/** Rubber sheet round the pole between two heights: an open C in plan, three buttons down the lip. */
export function coverView(layout: Layout, from: number, to: number): Built {
  const count = 34
  const thick = 0.012
  const ringAt = (height: number): Vector3[] => {
    const outer: Vector3[] = []
    const inner: Vector3[] = []
    for (let i = 0; i <= count; i++) {
      const angle = splitAt + (i / count) * (Math.PI * 2 + overlap)
      const radius = radiusAt(layout, height) + 0.014 + 0.02 * (i / count) + (i === count ? 0.012 : 0)
      outer.push(vector(Math.cos(angle) * (radius + thick), height, Math.sin(angle) * (radius + thick)))
      inner.push(vector(Math.cos(angle) * radius, height, Math.sin(angle) * radius))
    }
    return [...outer, ...inner.reverse()].reverse()
  }
  const rings = [from, from + 0.02, (from + to) / 2, to - 0.02, to].map(ringAt)
  const lip = splitAt + overlap - 0.1
  const buttons = [0.12, 0.5, 0.88].map((share) => {
    const height = from + (to - from) * share
    const radius = radiusAt(layout, height) + 0.05
    const button = at(
      cylinder(0.016, 0.016, 0.014, 10),
      [Math.cos(lip) * radius, height, Math.sin(lip) * radius],
      [0, -lip, Math.PI / 2],
    )
    return part(button, 'rubberDark', 'cover', 0.03)
  })
  return built(
    [part(loft(rings, false), 'rubber', 'cover', 0.12, 40), ...buttons],
    [],
    [{ id: 'cover', segments: [[vector(0, from, 0), vector(0, to, 0)]], radius: radiusAt(layout, from) + 0.05 }],
  )
}

/** Thick hose over an LV wire past the pole: slot underneath, flared lips. */
export function guardView(wireOf: Support, item: string): Built {
  const [start, end] = [-0.95, 0.95]
  const stations = [
    [start, 1.3],
    [start + 0.05, 1.3],
    [start + 0.08, 1],
    [-0.3, 1],
    [0.3, 1],
    [end - 0.08, 1],
    [end - 0.05, 1.3],
    [end, 1.3],
  ] as const
  const hose = loft(
    stations.map(([along, swell]) => hoseSection(wireOf, along, swell)),
    false,
  )
  return built(
    [part(hose, 'rubber', wireOf.id, 0.07, 34)],
    [],
    [
      {
        id: wireOf.id,
        segments: [[vector(wireOf.across, wireOf.height, start), vector(wireOf.across, wireOf.height, end)]],
        radius: 0.04,
      },
      {
        id: item,
        segments: [[vector(wireOf.across, wireOf.height, end - 0.1), vector(wireOf.across, wireOf.height, end)]],
        radius: 0.05,
      },
    ],
  )
}

function hoseSection(wireOf: Support, along: number, swell: number): Vector3[] {
  const radius = 0.036 * swell
  const arc = Math.PI * 1.86
  const count = 18
  const outer: Vector3[] = []
  const inner: Vector3[] = []
  for (let q = 0; q <= count; q++) {
    const angle = -Math.PI / 2 + (Math.PI * 2 - arc) / 2 + (q / count) * arc
    const height = lvHeight(wireOf, along)
    outer.push(vector(wireOf.across + Math.cos(angle) * radius, height + Math.sin(angle) * radius, along))
    inner.push(
      vector(wireOf.across + Math.cos(angle) * (radius - 0.009), height + Math.sin(angle) * (radius - 0.009), along),
    )
  }
  return [...outer, ...inner.reverse()]
}

/** Stakes with two tapes and hanging tags, which read as a barrier from any distance. */
export function barrierView(outline: readonly GroundPoint[]): Built {
  const corners = outline.map((point) => toScene(point))
  const parts: Part[] = []
  const wires: Wire[] = []
  const hits = corners.map((corner, i) => {
    const next = corners[(i + 1) % corners.length]!
    parts.push(...stake(corner), ...tags(corner, next))
    wires.push(...[0.98, 0.55].map((height) => tape(corner, next, height)))
    return { id: 'barrier', segments: [[corner.clone().setY(0.9), next.clone().setY(0.9)] as const], radius: 0.08 }
  })
  return built(parts, wires, hits)
}

function stake({ x, z }: Vector3): readonly Part[] {
  return [
    part(at(cylinder(0.02, 0.02, 1.05, 10), [x, 0.53, z]), 'tape', 'barrier', 0.06),
    part(
      at(
        lathe(
          [
            [0.16, 0],
            [0.16, 0.025],
            [0.05, 0.05],
            [0.028, 0.09],
          ],
          14,
        ),
        [x, 0, z],
      ),
      'rubberDark',
      'barrier',
      0.06,
    ),
    part(at(cylinder(0.026, 0.026, 0.05, 10), [x, 1.04, z]), 'white', 'barrier', 0.05),
  ]
}

const sagOf = (t: number): number => 0.2 * t * (1 - t)

function tape(from: Vector3, to: Vector3, height: number): Wire {
  const points = Array.from({ length: 9 }, (_, k) =>
    from
      .clone()
      .lerp(to, k / 8)
      .setY(height - sagOf(k / 8)),
  )
  return wire(points, 0.011, 'tape', 'barrier', 1.6, 5)
}

function tags(from: Vector3, to: Vector3): readonly Part[] {
  const count = Math.max(2, Math.round(from.distanceTo(to) / 0.9))
  const turn = -Math.atan2(to.z - from.z, to.x - from.x)
  return Array.from({ length: count - 1 }, (_, i) => {
    const place = from.clone().lerp(to, (i + 1) / count)
    const sheet = at(box(0.09, 0.13, 0.004), [place.x, 0.91 - sagOf((i + 1) / count), place.z], [0, turn, 0])
    return part(sheet, i % 2 ? 'white' : 'tape', 'barrier', 0.09)
  })
}
