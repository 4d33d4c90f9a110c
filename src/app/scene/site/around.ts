/** What else a place can have: circuits beside the section, fences, pipes and earths in the ground, somebody's source, a lamp's cabinet. */
import { span } from '../geometry/curves'
import { at, box, cylinder, lathe, vector } from '../geometry/shapes'
import { crossarm, pinInsulator } from '../gear/pole'
import { type Built, built, hitAlong, join, type Part, part, wire } from '../ink/part'
import { type Layout, sagIn, toScene } from './layout'

export const aroundView = (layout: Layout): Built =>
  join(
    ...layout.place.parallels.map((it) => parallelView(it, layout.poles)),
    ...layout.place.grounds.map((it) => groundViews[it.kind](it)),
    ...layout.place.sources.map((it) => cabinet(it.id, toScene(it.at), it.kind === 'inverter' ? 'plate' : 'polymer')),
  )

type Parallel = Layout['place']['parallels'][number]

/** On poles of its own when it is farther off than an arm reaches, else on those of the section. */
function parallelView({ id, from, to, conductors }: Parallel, poles: readonly number[]): Built {
  const middle = conductors.reduce((sum, { x }) => sum + x, 0) / conductors.length
  const height = Math.min(...conductors.map((it) => it.height))
  const spread = Math.max(...conductors.map(({ x }) => Math.abs(x - middle)))
  const isOwn = Math.abs(middle) > 3
  const row = poles.filter((along) => along >= from && along <= to)
  const parts = row.flatMap((along): readonly Part[] => [
    ...(isOwn
      ? [part(at(cylinder(0.1, 0.17, height + 0.1, 12), [middle, height / 2 - 0.05, along]), 'wood', id, 0.3)]
      : []),
    ...crossarm(
      { height: height - 0.2, length: 2 * spread + 0.5, along: along + 0.14, across: middle, made: 'wood' },
      id,
    ),
    ...conductors.flatMap((it) =>
      pinInsulator([it.x, height - 0.15, along + 0.14], '', 1, (it.height - height + 0.15) / 0.3, false),
    ),
  ])
  const ends = row.slice(1).map((end, k) => [row[k]!, end] as const)
  const strung = conductors.flatMap((it) =>
    ends.map(([a, b]) => span(vector(it.x, it.height, a), vector(it.x, it.height, b), sagIn(b - a, 'hv'), 18)),
  )
  return built(
    parts,
    strung.map((points) => wire(points, 0.0075, 'aluminium', id, 1.3, 4)),
    strung.map((points) => hitAlong(id, points, 0.03, 2)),
  )
}

type Ground = Layout['place']['grounds'][number]

const groundViews: Readonly<Record<Ground['kind'], (it: Ground) => Built>> = {
  fence: ({ id, points }) => {
    const posts = points.map((point) => toScene(point))
    const wires = [0.45, 0.85, 1.2].flatMap((height) =>
      posts
        .slice(1)
        .map((post, k) =>
          wire(span(posts[k]!.clone().setY(height), post.clone().setY(height), 0.03, 4), 0.002, 'steel', id, 0.9, 4),
        ),
    )
    const between = posts.slice(1).map((post, k) => [posts[k]!.clone().setY(0.85), post.clone().setY(0.85)] as const)
    return built(
      posts.flatMap(({ x, z }) => [
        part(at(box(0.05, 1.35, 0.05), [x, 0.66, z]), 'steel', id, 0.1),
        part(at(box(0.07, 0.02, 0.07), [x, 1.34, z]), 'steel', id, 0.05),
      ]),
      wires,
      [{ id, segments: between, radius: 0.35 }],
    )
  },
  /** A standpipe with its tap at each point where it can be touched. */
  pipe: ({ id, points }) => {
    const stand = points.map((point) => toScene(point))
    return built(
      stand.flatMap(({ x, z }) => [
        part(at(cylinder(0.025, 0.025, 0.95, 10), [x, 0.47, z]), 'steel', id, 0.06),
        part(at(cylinder(0.018, 0.018, 0.16, 8), [x + 0.07, 0.86, z], [0, 0, Math.PI / 2]), 'copper', id, 0.04),
        part(at(box(0.1, 0.015, 0.02), [x + 0.06, 0.92, z]), 'copper', id, 0.03),
        part(at(box(0.34, 0.04, 0.34), [x, 0.02, z]), 'concrete', id, 0.1),
      ]),
      [],
      stand.map((foot) => ({ id, segments: [[foot, foot.clone().setY(0.95)] as const], radius: 0.06 })),
    )
  },
  /** The lid of an earth pit and the marker beside it. */
  earth: ({ id, points }) => {
    const { x, z } = toScene(points[0]!)
    const foot = vector(x, 0, z)
    return built(
      [
        part(at(lathe(lidProfile, 16), [x, 0, z]), 'steel', id, 0.08),
        part(at(box(0.07, 0.6, 0.03), [x + 0.26, 0.3, z]), 'plate', id, 0.1),
        part(at(box(0.074, 0.1, 0.034), [x + 0.26, 0.5, z]), 'copper', id, 0.06),
      ],
      [],
      [{ id, segments: [[foot, foot.clone().setY(0.2)]], radius: 0.16 }],
    )
  },
}

const lidProfile = [
  [0.17, 0],
  [0.17, 0.025],
  [0.15, 0.03],
  [0, 0.034],
] as const

/** A metal cabinet on its plinth with its door toward the line. */
function cabinet(id: string, foot: ReturnType<typeof toScene>, slot: 'plate' | 'polymer'): Built {
  const { x, z } = foot
  const door = Math.sign(x) > 0 ? -0.265 : 0.265
  return built(
    [
      part(at(box(0.56, 0.12, 0.66), [x, 0.06, z]), 'concrete', id, 0.1),
      part(at(box(0.5, 1.05, 0.6), [x, 0.64, z]), slot, id, 0.25),
      part(at(box(0.56, 0.05, 0.66), [x, 1.19, z]), slot, id, 0.1),
      part(at(box(0.02, 0.9, 0.5), [x + door, 0.64, z]), slot, id, 0.2),
      part(at(box(0.05, 0.12, 0.025), [x + door * 1.06, 0.66, z + 0.19]), 'steel', id, 0.04),
    ],
    [],
    [{ id, segments: [[foot.clone().setY(0.2), foot.clone().setY(1.1)]], radius: 0.3 }],
  )
}
