/** What stands and lies about the pole, as the scenario says: each can be pointed at, and marked at the briefing. */
import type { BufferGeometry, Vector3 } from 'three'
import { span } from '../geometry/curves'
import { at, ball, box, cylinder, prism, strut, vector } from '../geometry/shapes'
import { type Built, built, hitAlong, join, type Part, part, wire } from '../ink/part'
import type { Layout, Surrounding } from './layout'

/** @param tree a tree of that height at a point */
export function surroundingsView(
  layout: Layout,
  tree: (x: number, z: number, height: number) => readonly Part[],
): Built {
  return join(
    ...layout.surroundings.map((it) =>
      it.looks === 'trees' ? grove(it, tree) : (views[it.looks]?.(it, layout) ?? built([])),
    ),
    ...(layout.road ? [markers(layout.road)] : []),
  )
}

type View = (it: Surrounding, layout: Layout) => Built

const standing = (id: string, { x, z }: Vector3, height: number, radius: number) => [
  { id, segments: [[vector(x, 0.1, z), vector(x, height, z)]] as const, radius },
]

/** A road is the ground's own; a hit along it. */
const views: Readonly<Partial<Record<Surrounding['looks'], View>>> = {
  path: ({ id, at: { x, z } }) =>
    built(
      [-60, -30, 0, 30, 60].map((along) => part(at(box(1.6, 0.012, 29.9), [x, 0.006, z + along]), 'concrete', id, 0.6)),
    ),
  fence: ({ id, at: { x } }) => fence(id, x),
  gate: ({ id, at: foot }) => {
    const { x, z } = foot
    const post = (side: number): Part =>
      part(at(cylinder(0.09, 0.1, 1.4, 10), [x, 0.7, z + side * 1.6]), 'wood', id, 0.15)
    const rails = [0.25, 0.55, 0.85, 1.12].map((y) => part(at(box(0.05, 0.09, 3.1), [x, y, z]), 'wood', id, 0.1))
    const brace = part(strut(vector(x, 0.25, z - 1.5), vector(x, 1.12, z + 1.5), 0.035, 0.035, 6), 'wood', id, 0.1)
    return built([post(-1), post(1), ...rails, brace], [], standing(id, foot, 1.1, 0.9))
  },
  building: (it, layout) => house(it, offRoad(it.at, layout, 3.6)),
  hut: (it, layout) => {
    const foot = offRoad(it.at, layout, 1.2)
    const { x, z } = foot
    return built(
      [
        part(at(box(1.9, 2.2, 2.2), [x, 1.1, z]), 'wall', it.id, 0.5),
        part(at(box(2.3, 0.1, 2.6), [x, 2.25, z], [0, 0, 0.08]), 'roof', it.id, 0.4),
        part(at(box(0.04, 1, 1.3), [x - 0.96 * (Math.sign(x) || 1), 1.35, z]), 'glass', it.id, 0.3),
      ],
      [],
      standing(it.id, foot, 2.1, 0.9),
    )
  },
  water: ({ id, at: foot }) => {
    const { x, z } = foot
    const shore = Array.from({ length: 14 }, (_, k) => {
      const angle = (k / 14) * Math.PI * 2
      const far = 2.4 + 0.5 * Math.sin(angle * 3 + x)
      return [x + far * Math.cos(angle), z + 1.6 * far * Math.sin(angle)] as const
    })
    return built(
      [part(flat(shore), 'glass', id, 0.6)],
      [],
      [{ id, segments: [[foot, foot.clone().setY(0.1)]], radius: 1.8 }],
    )
  },
  animals: ({ id, at: foot }) => {
    const herd = [
      [0, 0, 0.4],
      [2.6, 1.7, 2.1],
      [-1.6, 2.9, 1.2],
    ] as const
    return join(...herd.map(([dx, dz, turn]) => cow(id, foot.x + dx, foot.z + dz, turn)))
  },
  sign: ({ id, at: foot }) =>
    built(
      [
        part(at(cylinder(0.04, 0.04, 2.4, 8), [foot.x, 1.2, foot.z]), 'steel', id, 0.1),
        part(at(box(0.04, 0.5, 0.8), [foot.x, 2.1, foot.z]), 'plate', id, 0.15),
      ],
      [],
      standing(id, foot, 2.2, 0.2),
    ),
  post: ({ id, at: foot }) =>
    built(
      [part(at(cylinder(0.11, 0.13, 1.7, 10), [foot.x, 0.85, foot.z]), 'wood', id, 0.2)],
      [],
      standing(id, foot, 1.7, 0.15),
    ),
  box: ({ id, at: foot }) =>
    built(
      [
        part(at(box(0.08, 1.05, 0.08), [foot.x, 0.52, foot.z]), 'wood', id, 0.1),
        part(at(box(0.3, 0.26, 0.46), [foot.x, 1.15, foot.z]), 'tape', id, 0.15),
      ],
      [],
      standing(id, foot, 1.2, 0.16),
    ),
  stone: ({ id, at: foot }) =>
    built(
      [part(at(box(0.2, 0.6, 0.3), [foot.x, 0.3, foot.z], [0, 0.3, 0]), 'concrete', id, 0.15)],
      [],
      standing(id, foot, 0.6, 0.16),
    ),
  heap: ({ id, at: foot }) => {
    const lumps = [
      [0, 0.25, 0, 0.55],
      [0.6, 0.18, 0.3, 0.4],
      [-0.5, 0.18, -0.35, 0.42],
      [0.1, 0.62, 0.05, 0.36],
      [-0.2, 0.16, 0.6, 0.36],
    ] as const
    const pieces = lumps.map(([dx, y, dz, size]) =>
      part(
        at(ball(size, 9), [foot.x + dx, y, foot.z + dz], [0.4 * dx, dz, 0.3], [1.1, 0.72, 1]),
        'concrete',
        id,
        0.3,
        60,
      ),
    )
    return built(pieces, [], standing(id, foot, 0.9, 0.7))
  },
  bench: ({ id, at: foot }) => {
    const { x, z } = foot
    return built(
      [
        part(at(box(0.42, 0.06, 1.6), [x, 0.45, z]), 'wood', id, 0.12),
        part(at(box(0.05, 0.4, 1.6), [x + 0.22 * (Math.sign(x) || 1), 0.72, z]), 'wood', id, 0.12),
        ...[-0.6, 0.6].map((end) => part(at(box(0.4, 0.44, 0.08), [x, 0.22, z + end]), 'concrete', id, 0.12)),
      ],
      [],
      standing(id, foot, 0.9, 0.6),
    )
  },
  block: ({ id, at: foot }) =>
    built(
      [
        part(at(box(0.7, 0.55, 1.3), [foot.x, 0.28, foot.z]), 'concrete', id, 0.2),
        part(at(box(0.56, 0.06, 1.16), [foot.x, 0.55, foot.z]), 'tyre', id, 0.15),
      ],
      [],
      standing(id, foot, 0.6, 0.6),
    ),
  'service-span': service,
}

/** A house or a hut stands beyond the road, not on it. */
function offRoad(foot: Vector3, { road }: Layout, half: number): Vector3 {
  if (!road || foot.x + half < road.from || foot.x - half > road.to) return foot
  return foot.clone().setX(road.from < 0 ? road.from - half - 1 : road.to + half + 1)
}

/** Its gable to the side, its door to the line. */
function house({ id }: { readonly id: string }, { x, z }: Vector3): Built {
  const side = x < 0 ? -1 : 1
  const [width, depth, eaves, ridge] = [3, 4.5, 2.7, 4.3]
  const slope = (to: number): Part =>
    part(
      at(box(3.7, 0.12, depth * 2 + 0.6), [x + to * 1.55, (eaves + ridge) / 2 + 0.08, z], [0, 0, -to * 0.49]),
      'roof',
      id,
      0.6,
    )
  const gable = prism(
    [
      [-width, ridge - eaves],
      [0, 0],
      [width, ridge - eaves],
    ],
    -depth,
    depth,
  )
  const front = x - side * (width + 0.02)
  const parts = [
    part(at(box(width * 2, eaves, depth * 2), [x, eaves / 2, z]), 'wall', id, 1),
    part(at(gable, [x, ridge, z], [Math.PI / 2, 0, 0]), 'wall', id, 1),
    slope(1),
    slope(-1),
    part(at(box(0.06, 2.05, 0.95), [front, 1.03, z + 1.2]), 'wood', id, 0.6),
    part(at(box(0.06, 1, 1.2), [front, 1.5, z - 1.6]), 'glass', id, 0.4),
    part(at(box(0.5, 1.3, 0.5), [x + 0.9, ridge - 0.1, z - 2.4]), 'roof', id, 0.4),
  ]
  return built(
    parts,
    [],
    id === '' ? [] : [{ id, segments: [[vector(x, 1.4, z - 3), vector(x, 1.4, z + 3)]], radius: 2 }],
  )
}

function fence(id: string, across: number): Built {
  const posts: Part[] = []
  for (let z = -64; z <= 64; z += 4)
    posts.push(
      part(
        at(box(0.1, 1.25, 0.1), [across + 0.15 * Math.sin(z), 0.62, z], [0, z * 0.3, 0.03 * Math.sin(z * 1.7)]),
        'wood',
        id,
        0.14,
      ),
    )
  const wires = [0.35, 0.62, 0.88, 1.14].map((height) =>
    wire(
      Array.from({ length: 65 }, (_, k) => {
        const z = -64 + k * 2
        return vector(across + (k % 2 ? 0 : 0.15 * Math.sin(z)), height - (k % 2 ? 0.02 : 0), z)
      }),
      0.0025,
      'steel',
      id,
      0.8,
      4,
    ),
  )
  return built(posts, wires, [{ id, segments: [[vector(across, 0.7, -60), vector(across, 0.7, 60)]], radius: 0.5 }])
}

/** Barrel, neck and head, four legs. */
function cow(id: string, x: number, z: number, turn: number): Built {
  const [ahead, aside] = [vector(Math.cos(turn), 0, Math.sin(turn)), vector(-Math.sin(turn), 0, Math.cos(turn))]
  const spot = (along: number, y: number, out: number) =>
    vector(x, y, z).addScaledVector(ahead, along).addScaledVector(aside, out)
  const legs = [-0.62, 0.62].flatMap((along) =>
    [-0.2, 0.2].map((out) => part(strut(spot(along, 0, out), spot(along, 0.8, out), 0.06, 0.09, 8), 'wall', id, 0.15)),
  )
  return built(
    [
      part(strut(spot(-0.75, 1.05, 0), spot(0.72, 1.08, 0), 0.36, 0.34, 12), 'wall', id, 0.3),
      part(strut(spot(0.7, 1.2, 0), spot(1.05, 1.3, 0), 0.18, 0.14, 10), 'wall', id, 0.2),
      part(strut(spot(1, 1.36, 0), spot(1.36, 1.1, 0), 0.15, 0.09, 10), 'wood', id, 0.2),
      ...legs,
    ],
    [],
    [{ id, segments: [[spot(-0.7, 1.05, 0), spot(0.9, 1.1, 0)]], radius: 0.36 }],
  )
}

function grove({ id, at: foot }: Surrounding, tree: (x: number, z: number, height: number) => readonly Part[]): Built {
  const parts = tree(foot.x, foot.z, 4.6).map((it) => ({ ...it, id }))
  return built(parts, [], standing(id, foot, 3.6, 0.9))
}

/** Low-voltage wires twisted to one span, past its place to a house. */
function service({ id, at: past }: Surrounding, layout: Layout): Built {
  if (layout.lv.length === 0) return built([])
  const side = Math.sign(past.x) || 1
  const away = past.clone().setY(0).normalize().multiplyScalar(31)
  const home = offRoad(away, layout, 3.6)
  const start = layout.lvArm.height
  const points = span(vector(side * 0.5, start + 0.1, 0.3), vector(home.x - side * 3.05, 2.9, home.z - 2.6), 0.6, 20)
  return join(
    built(
      [part(at(box(0.05, 0.12, 0.12), [side * 0.48, start + 0.06, 0.28]), 'steel', '', 0.05)],
      [wire(points, 0.013, 'ink', id, 1.5, 6)],
      [hitAlong(id, points.slice(4), 0.02, 2)],
    ),
    house({ id: '' }, home),
  )
}

/** Posts beside the road. */
function markers(road: NonNullable<Layout['road']>): Built {
  const x = road.from < 0 ? road.to + 0.8 : road.from - 0.8
  return built(
    [-34, -10, 14, 38].flatMap((z) => [
      part(at(box(0.12, 1, 0.06), [x, 0.5, z]), 'white', '', 0.15),
      part(at(box(0.125, 0.14, 0.065), [x, 0.82, z]), 'strap', '', 0.1),
    ]),
  )
}

/** A level outline a finger above the ground. */
function flat(outline: readonly (readonly [number, number])[]): BufferGeometry {
  return prism(outline, 0, 0.015)
}
