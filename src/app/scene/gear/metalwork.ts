/** Metal on the pole beside arm and stay: bands, bolts, braces, a cable's sheath, the bracket of a lamp, a tank; each picked by its id. */
import { at, bar, box, cylinder, ring, strut, vector } from '../geometry/shapes'
import { soften } from '../geometry/curves'
import { type Built, built, join, type Part, part, wire } from '../ink/part'
import { type Layout, radiusAt } from '../site/layout'

type Piece = Layout['place']['metalwork'][number]

export function metalworkView(layout: Layout): Built {
  return join(...layout.place.metalwork.map((piece) => views[piece.kind](layout, piece)))
}

const views: Readonly<Record<Piece['kind'], (layout: Layout, piece: Piece) => Built>> = {
  band: (layout, { id, height }) => {
    const radius = radiusAt(layout, height) + 0.006
    const lug = vector(radius + 0.03, height, -radius * 0.5)
    return built(
      [
        part(at(cylinder(radius, radius, 0.05, 20), [0, height, 0]), 'steel', id, 0.05),
        part(at(box(0.08, 0.06, 0.03), [lug.x, lug.y, lug.z]), 'steel', id, 0.04),
        part(at(cylinder(0.01, 0.01, 0.07, 6), [lug.x + 0.01, height, lug.z], [Math.PI / 2, 0, 0]), 'steel', id, 0.03),
      ],
      [],
      [{ id, segments: [[vector(-radius, height, -radius), vector(radius, height, -radius)]], radius: 0.05 }],
    )
  },
  bolt: (layout, { id, height }) => {
    const reach = radiusAt(layout, height) + 0.06
    const ends = [vector(0, height, -reach), vector(0, height, reach)] as const
    const nut = (z: number): Part =>
      part(at(cylinder(0.024, 0.024, 0.03, 6), [0, height, z], [Math.PI / 2, 0, 0]), 'steel', id, 0.03)
    return built(
      [part(strut(...ends, 0.012, 0.012, 8), 'steel', id, 0.03), nut(-reach + 0.03), nut(reach - 0.03)],
      [],
      [{ id, segments: [[ends[0], vector(0, height, -reach + 0.05)]], radius: 0.05 }],
    )
  },
  brace: (layout, { id, height }) => {
    const a = vector(-0.03, height - 0.35, -radiusAt(layout, height) - 0.02)
    const b = vector(-layout.arm.length * 0.36, layout.arm.height - 0.04, layout.arm.along - 0.09)
    return built([part(bar(a, b, 0.014, 0.05), 'steel', id, 0.05)], [], [{ id, segments: [[a, b]], radius: 0.04 }])
  },
  'cable-sheath': (layout, { id, height }) => {
    const aside = (y: number) => vector(0.06, y, radiusAt(layout, y) + 0.035)
    const points = soften(
      [aside(height).add(vector(0.24, 0.18, 0.1)), aside(height), aside(height - 0.6), aside(2.4), aside(0.02)],
      1,
    )
    const guard = strut(aside(2.4), aside(-0.05), 0.055, 0.055, 10)
    return built(
      [
        part(
          strut(aside(height - 0.05), aside(height).add(vector(0.2, 0.16, 0.08)), 0.045, 0.075, 12),
          'glaze',
          id,
          0.06,
        ),
        part(guard, 'steel', id, 0.1),
        ...[1.1, 3.2, 4.6].map((y) =>
          part(at(ring(radiusAt(layout, y) + 0.04, 0.006, 18), [0, y, 0.02], [Math.PI / 2, 0, 0]), 'steel', id, 0.03),
        ),
      ],
      [wire(points, 0.032, 'rubberDark', id, 2)],
      [{ id, segments: [[aside(height), aside(height - 1)]], radius: 0.07 }],
    )
  },
  'lamp-bracket': (layout, { id, height }) => lampView(layout, id, height, 0),
  tank: (layout, { id, height }) => {
    const z = radiusAt(layout, height) + 0.34
    return built(
      [
        part(at(cylinder(0.26, 0.26, 0.7, 18), [0, height, z]), 'polymer', id, 0.2),
        part(at(box(0.2, 0.06, 0.4), [0, height - 0.3, z - 0.22]), 'steel', id, 0.06),
      ],
      [],
      [{ id, segments: [[vector(0, height - 0.3, z), vector(0, height + 0.3, z)]], radius: 0.26 }],
    )
  },
}

/** A street lamp: arm out over the road's side, lantern with its glass below. */
export function lampView(layout: Layout, id: string, height: number, along: number): Built {
  const foot = vector(radiusAt(layout, height), height - 0.5, along - 0.05)
  const head = vector(1.55, height + 0.12, along - 0.05)
  const tube = soften([foot, vector(0.5, height - 0.02, along - 0.05), head], 2)
  return built(
    [
      part(at(box(0.5, 0.09, 0.2), [head.x + 0.2, head.y, head.z]), 'steel', id, 0.1),
      part(
        at(cylinder(0.16, 0.1, 0.06, 12), [head.x + 0.22, head.y - 0.07, head.z], [0, 0, 0], [1.3, 1, 0.55]),
        'glass',
        id,
        0.06,
      ),
      part(at(box(0.05, 0.3, 0.1), [foot.x, foot.y + 0.05, foot.z]), 'steel', id, 0.05),
    ],
    [wire(tube, 0.024, 'steel', id, 1.4)],
    [{ id, segments: [[foot, head]], radius: 0.06 }],
  )
}
