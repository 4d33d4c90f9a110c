/** Screw clamp of an earthing lead, real size 0.2 m: hook over the conductor, eye screw below, lug with the cable beside it. */
import { Matrix4, type Vector3 } from 'three'
import { soften } from '../geometry/curves'
import { at, box, cylinder, extrude, prism, ring, vector } from '../geometry/shapes'
import { type Part, part } from '../ink/part'

const hook = [
  [-0.03, 0.052],
  [-0.032, -0.002],
  [-0.026, -0.022],
  [-0.008, -0.034],
  [0.014, -0.03],
  [0.03, -0.014],
  [0.032, 0.006],
  [0.022, 0.01],
  [0.016, -0.002],
  [0.006, -0.012],
  [-0.006, -0.012],
  [-0.012, -0.002],
  [-0.012, 0.052],
] as const

function roundedHook(): [number, number][] {
  const corners = hook.map(([x, down]) => vector(x, down, 0))
  return soften([...corners, corners[0]!], 1)
    .slice(0, -1)
    .map((point) => [point.x, point.y])
}

/** Where the cable leaves the clamp, from its seat. */
const tail = vector(-0.05, -0.143, 0)

/**
 * @param seat where the wire lies in its jaw; the conductor runs along z
 * @param turns of the eye screw: a clamp of few turns hangs askew and its jaw stands open
 */
export function screwClamp(seat: Vector3, id: string, turns: number): readonly Part[] {
  const gap = Math.max(0, 5 - turns) * 0.003
  const detail = 0.05
  const jaw = prism(
    [
      [0.016, -0.015],
      [0.016, 0.015],
      [-0.011, 0.015],
      [-0.011, -0.015],
    ],
    -0.026 - gap,
    -0.01 - gap,
  )
  const pieces: Part[] = [
    part(extrude(roundedHook(), 0.03), 'aluminium', id, detail, 24),
    part(at(box(0.062, 0.026, 0.036), [-0.002, -0.062, 0]), 'aluminium', id, detail),
    part(at(cylinder(0.013, 0.013, 0.028, 6), [0, -0.086 - gap, 0]), 'steel', id, detail),
    part(at(cylinder(0.0075, 0.0075, 0.14, 10), [0, -0.1 - gap, 0]), 'steel', id, detail * 0.6),
    part(jaw, 'copper', id, detail),
    part(at(cylinder(0.011, 0.011, 0.012, 10), [0, -0.172 - gap, 0]), 'steel', id, detail),
    part(at(ring(0.021, 0.0055, 12), [0, -0.2 - gap, 0]), 'steel', id, detail),
    part(at(cylinder(0.008, 0.008, 0.04, 6), [-0.044, -0.062, 0], [0, 0, Math.PI / 2]), 'steel', id, detail),
    part(at(box(0.006, 0.045, 0.024), [-0.05, -0.076, 0]), 'copper', id, detail),
    part(at(cylinder(0.011, 0.011, 0.05, 10), [-0.05, -0.118, 0]), 'copper', id, detail),
  ]
  const place = new Matrix4().makeTranslation(seat.x, seat.y, seat.z).multiply(new Matrix4().makeRotationZ(tilt(turns)))
  return pieces.map((piece) => ({ ...piece, geometry: piece.geometry.applyMatrix4(place) }))
}

const tilt = (turns: number): number => (turns < 4 ? 0.06 * (4 - turns) : 0)

/** Where the cable leaves it. */
export const clampTail = (seat: Vector3): Vector3 => seat.clone().add(tail)
