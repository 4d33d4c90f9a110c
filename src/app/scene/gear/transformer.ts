/**
 * A distribution transformer on its pole: finned tank with bushings, on a bracket or on the platform between two legs;
 * cut-outs above it with their carriers in, hung or taken out, as they were last seen.
 */
import type { Vector3 } from 'three'
import { at, bar, box, cylinder, lathe, ring, strut, vector } from '../geometry/shapes'
import { type Built, built, type Part, part, type Wire, wire } from '../ink/part'
import { soften } from '../geometry/curves'
import { type Layout, radiusAt, type Support } from '../site/layout'
import { crossarm } from './pole'

export type Carriers = 'in' | 'hung' | 'out' | 'not-looked'

/** Heights of the bracket's tank and of the platform between two legs, metres; common practice, no source. */
const tankFoot = { bracket: 4.75, platform: 4.1 } as const
const tank = { height: 0.95, radius: 0.32 } as const
/** Below the HV arm. */
const cutOutDrop = 1.05

/** @param second the other leg from the first; the platform lies between them */
export function transformerView(
  layout: Layout,
  it: { readonly id: string; readonly along: number; readonly phases: readonly string[]; readonly hasFuses: boolean },
  second: Vector3 | null,
  carriers: Carriers,
): Built {
  const wires = layout.conductors.filter(({ letter }) => it.phases.includes(letter))
  const at0 = it.along
  const middle = second
    ? vector(second.x / 2, 0, at0 + second.z / 2)
    : vector(0, 0, at0 + radiusAt(layout, tankFoot.bracket) + tank.radius + 0.08)
  const foot = second ? tankFoot.platform : tankFoot.bracket
  const cutOutHeight = layout.arm.height - cutOutDrop
  const side = at0 + 0.2
  const shown = it.hasFuses ? wires : []
  const drops = wires.map((support, k) => dropper(layout, support, at0, middle, foot, k, wires.length, it.hasFuses))
  const hit = [vector(middle.x, foot + 0.1, middle.z), vector(middle.x, foot + tank.height, middle.z)] as const
  return built(
    [
      ...tankParts(middle, foot, wires.length, it.id),
      ...(second ? platform(layout, second, at0, foot, it.id) : bracket(layout, at0, foot, middle, it.id)),
      ...(shown.length > 0
        ? crossarm({ height: cutOutHeight, length: layout.arm.length, along: side, drop: 0.4 }, it.id)
        : []),
      ...shown.flatMap(({ across }) => cutOut(vector(across, cutOutHeight, side + 0.12), carriers, it.id)),
    ],
    drops,
    [{ id: it.id, segments: [hit], radius: tank.radius }],
  )
}

/** From the line to the cut-out, and on to the bushing. */
function dropper(
  layout: Layout,
  support: Support,
  along: number,
  middle: Vector3,
  foot: number,
  k: number,
  count: number,
  hasFuses: boolean,
): Wire {
  const bushing = vector(middle.x + (k - (count - 1) / 2) * 0.22, foot + tank.height + 0.32, middle.z)
  const cut = vector(support.across, layout.arm.height - cutOutDrop, along + 0.42)
  const top = vector(support.across, support.height - 0.01, along + 0.38)
  const via = hasFuses
    ? [cut.clone().setY(cut.y + 0.25), cut.clone().setY(cut.y - 0.25)]
    : [
        top
          .clone()
          .lerp(bushing, 0.5)
          .setZ(along + 0.5),
      ]
  return wire(soften([top, ...via, bushing], 2), 0.006, 'aluminium', '', 1, 5)
}

function tankParts(middle: Vector3, foot: number, bushings: number, id: string): readonly Part[] {
  const { x, z } = middle
  const y = foot + tank.height / 2
  const fins = Array.from({ length: 12 }, (_, k) => {
    const angle = (k / 12) * Math.PI * 2
    const out = tank.radius + 0.045
    return part(
      at(
        box(0.09, tank.height * 0.62, 0.014),
        [x + Math.cos(angle) * out, y - 0.03, z + Math.sin(angle) * out],
        [0, -angle, 0],
      ),
      'polymer',
      id,
      0.08,
    )
  })
  const tops = Array.from({ length: bushings }, (_, k) => {
    const aside = (k - (bushings - 1) / 2) * 0.22
    return part(at(lathe(bushingProfile, 12), [x + aside, foot + tank.height + 0.03, z]), 'glaze', id, 0.05, 50)
  })
  const low = [-0.16, -0.05, 0.06, 0.17].map((aside) =>
    part(
      at(
        cylinder(0.028, 0.028, 0.1, 8),
        [x + aside, foot + tank.height * 0.8, z + tank.radius + 0.05],
        [Math.PI / 2, 0, 0],
      ),
      'glaze',
      id,
      0.04,
    ),
  )
  return [
    part(at(cylinder(tank.radius, tank.radius, tank.height, 22), [x, y, z]), 'polymer', id, 0.25),
    part(
      at(cylinder(tank.radius + 0.025, tank.radius + 0.025, 0.05, 22), [x, foot + tank.height + 0.01, z]),
      'polymer',
      id,
      0.08,
    ),
    part(at(box(0.2, 0.14, 0.01), [x, y + 0.1, z - tank.radius - 0.09]), 'plate', id, 0.08),
    ...fins,
    ...tops,
    ...low,
  ]
}

const bushingProfile = [
  [0.035, 0],
  [0.03, 0.05],
  [0.062, 0.07],
  [0.03, 0.1],
  [0.06, 0.13],
  [0.03, 0.16],
  [0.056, 0.19],
  [0.026, 0.22],
  [0.02, 0.3],
  [0, 0.3],
] as const

function bracket(layout: Layout, along: number, foot: number, middle: Vector3, id: string): readonly Part[] {
  const inner = along + radiusAt(layout, foot) - 0.02
  return [-0.16, 0.16].flatMap((x) => [
    part(
      bar(vector(x, foot - 0.04, inner), vector(x, foot - 0.04, middle.z + 0.3), 0.06, 0.08, vector(0, 1, 0)),
      'steel',
      id,
      0.06,
    ),
    part(
      bar(vector(x, foot - 0.55, inner), vector(x, foot - 0.08, middle.z + 0.22), 0.04, 0.05, vector(1, 0, 0)),
      'steel',
      id,
      0.06,
    ),
  ])
}

/** Two channels bolted on both sides of the legs, planks across, a rail round it. */
function platform(layout: Layout, second: Vector3, along: number, foot: number, id: string): readonly Part[] {
  const a = vector(0, foot - 0.09, along)
  const b = vector(second.x, foot - 0.09, along + second.z)
  const way = b.clone().sub(a).normalize()
  const out = vector(-way.z, 0, way.x)
  const radius = radiusAt(layout, foot) + 0.03
  const ends = [a.clone().addScaledVector(way, -0.45), b.clone().addScaledVector(way, 0.45)] as const
  const beams = [-radius, radius].map((aside) =>
    part(
      bar(
        ends[0].clone().addScaledVector(out, aside),
        ends[1].clone().addScaledVector(out, aside),
        0.06,
        0.14,
        vector(0, 1, 0),
      ),
      'steel',
      id,
      0.08,
    ),
  )
  const length = ends[0].distanceTo(ends[1])
  const turn = -Math.atan2(way.z, way.x)
  const planks = Array.from({ length: Math.max(3, Math.round(length / 0.24)) }, (_, k) => {
    const place = ends[0].clone().addScaledVector(way, 0.14 + k * 0.24)
    return part(at(box(0.2, 0.04, 1.1), [place.x, foot - 0.02, place.z], [0, turn, 0]), 'wood', id, 0.1)
  })
  const tie = at(ring(radiusAt(layout, foot) + 0.012, 0.01, 14), [0, foot - 0.3, along], [Math.PI / 2, 0, 0])
  return [...beams, ...planks, part(tie, 'steel', id, 0.04)]
}

/** Insulator on the arm with a carrier between its contacts: upright when in, hanging from the lower hinge when it fell. */
function cutOut(place: Vector3, carriers: Carriers, id: string): readonly Part[] {
  const { x, y, z } = place
  const upper = vector(x, y + 0.24, z + 0.16)
  const lower = vector(x, y - 0.2, z + 0.16)
  const tip = carriers === 'hung' ? lower.clone().add(vector(0, -0.4, 0.1)) : upper
  return [
    part(at(lathe(cutOutProfile, 12), [x, y - 0.2, z + 0.03]), 'glaze', id, 0.05, 50),
    part(strut(vector(x, y + 0.22, z + 0.03), upper, 0.014, 0.014, 8), 'copper', id, 0.03),
    part(strut(vector(x, y - 0.18, z + 0.03), lower, 0.014, 0.014, 8), 'copper', id, 0.03),
    ...(carriers === 'out' ? [] : [part(strut(lower, tip, 0.02, 0.017, 10), 'fibreglass', id, 0.05)]),
    ...(carriers === 'not-looked' ? [part(at(box(0.012, 0.62, 0.3), [x, y, z + 0.2]), 'plate', id, 0.2)] : []),
  ]
}

const cutOutProfile = [
  [0.02, 0],
  [0.034, 0.03],
  [0.06, 0.06],
  [0.034, 0.1],
  [0.06, 0.15],
  [0.04, 0.2],
  [0.06, 0.26],
  [0.034, 0.32],
  [0.06, 0.36],
  [0.034, 0.4],
  [0, 0.42],
] as const
