/**
 * Lengths of the place as drafting dimensions, when they are asked for: pole, arm, spacings of the wires, low voltage under
 * them, cover, stay, rods, sides of the barrier. All of it as the crew knows it. Pure.
 */
import type { Vector3 } from 'three'
import { metres } from '../../../text'
import { vector } from '../geometry/shapes'
import { type Built, built, type Wire, wire } from '../ink/part'
import type { Label } from '../labels/label'
import { type Layout, radiusAt, toScene } from './layout'
import type { SitePicture } from './sitePicture'

/** Between two points of the site; the line is drawn so far beside them, with a stroke from each. */
export interface Dimension {
  readonly key: string
  readonly ends: readonly [Vector3, Vector3]
  readonly beside: Vector3
}

const upright = (key: string, low: number, high: number, x: number, beside: Vector3, z = 0): Dimension => ({
  key,
  ends: [vector(x, low, z), vector(x, high, z)],
  beside,
})

export function dimensionsOf(layout: Layout, picture: SitePicture): readonly Dimension[] {
  const { pole, arm, conductors, lv, stay } = layout
  const across = [...conductors].sort((a, b) => a.across - b.across)
  const [south, north] = [arm.across - arm.length / 2, arm.across + arm.length / 2]
  const highest = Math.max(...conductors.map(({ height }) => height))
  const lowVoltage = Math.max(...lv.map(({ height }) => height))
  const ground = (key: string, from: Vector3, to: Vector3): Dimension => ({
    key,
    ends: [from.setY(0.03), to.setY(0.03)],
    beside: vector(0, 0, 0),
  })
  return [
    upright('pole', 0, pole.top, -radiusAt(layout, 1), vector(-1.5, 0, 0)),
    ...(arm.length > 0.8
      ? [
          {
            key: 'arm',
            ends: [vector(south, arm.height, arm.along), vector(north, arm.height, arm.along)] as const,
            beside: vector(0, highest - arm.height + 0.75, 0),
          },
        ]
      : []),
    ...across.slice(1).map((to, i): Dimension => {
      const from = across[i]!
      const ends = [from, to].map((it) => vector(it.across, highest, 0)) as [Vector3, Vector3]
      return { key: `wires-${i}`, ends, beside: vector(0, 0.4, 0) }
    }),
    ...(lv.length > 0
      ? [
          upright('low-voltage', lowVoltage, highest, south, vector(-0.5, 0, 0)),
          upright('low-voltage-height', 0, lowVoltage, south, vector(-0.5, 0, 0)),
        ]
      : [upright('wires-height', 0, highest, south, vector(-0.5, 0, 0))]),
    ...(picture.cover
      ? [upright('cover', picture.cover.from, picture.cover.to, radiusAt(layout, 7), vector(0.55, 0, 0))]
      : []),
    ...(stay ? [ground('stay', vector(0, 0, 0), stay.anchor.clone())] : []),
    ...(picture.barrier ?? []).map((corner, i, all) =>
      ground(`side-${i}`, toScene(corner), toScene(all[(i + 1) % all.length]!)),
    ),
  ]
}

const line = (points: readonly Vector3[], minPx = 1.2): Wire => wire(points, 0.002, 'pencil', '', minPx, 4)

export function dimensionsView(dimensions: readonly Dimension[]): Built {
  return built(
    [],
    dimensions.flatMap(({ ends, beside }) => {
      const [from, to] = ends.map((end) => end.clone().add(beside)) as [Vector3, Vector3]
      const strokes =
        beside.length() > 0.05 ? ends.map((end) => line([end, end.clone().addScaledVector(beside, 1.1)], 0.8)) : []
      // A slanting stroke at each end, as a draughtsman sets it.
      const slant = vector(0.08, 0.08, 0.08)
      const ticks = [from, to].map((end) => line([end.clone().sub(slant), end.clone().add(slant)], 1.6))
      return [line([from, to]), ...strokes, ...ticks]
    }),
  )
}

export const dimensionLabels = (dimensions: readonly Dimension[]): readonly Label[] =>
  dimensions.map(({ key, ends: [from, to], beside }) => ({
    key: `dimension-${key}`,
    at: [0.5, 0.35, 0.65, 0.2, 0.8].map((share) => from.clone().lerp(to, share).add(beside)),
    text: metres(from.distanceTo(to)),
    kind: 'tape',
    rank: 4.5,
  }))
