/** Poles and what is bolted to them: shaft, step bolts, number plate, arms with braces, pin insulators. */
import { at, bar, box, cylinder, lathe, ring, type Triple, vector } from '../geometry/shapes'
import { type Part, part } from '../ink/part'
import { type Layout, radiusAt } from '../site/layout'

/** @param along where it stands on the line; `id` empty for the neighbours, which are scenery */
export function poleShaft(layout: Layout, along: number, id: string): readonly Part[] {
  const { top } = layout.pole
  const shaft = at(cylinder(radiusAt(layout, top), radiusAt(layout, -0.1), top + 0.1, 22), [0, (top - 0.1) / 2, along])
  const band = (height: number): Part => {
    const radius = radiusAt(layout, height) + 0.003
    return part(at(cylinder(radius, radius, 0.012, 22), [0, height, along]), 'steel', id, 0.05)
  }
  const holes = [0.55, 1.1, 1.9, 2.4].map((below) => {
    const height = top - below
    const through = cylinder(0.011, 0.011, 2 * radiusAt(layout, height) + 0.008, 8)
    return part(at(through, [0, height, along], [Math.PI / 2, 0, 0]), 'ink', id, 0.03)
  })
  return [part(shaft, 'concrete', id, 0.3), ...(id ? [band(1.2), ...holes] : [])]
}

/** Where the number hangs: the side one drives up to. */
export const plateCentre = (layout: Layout): Triple => [0, 2.1, -(radiusAt(layout, 2.1) + 0.004)]

export function polePlate(layout: Layout): readonly Part[] {
  return [part(at(box(0.17, 0.1, 0.006), plateCentre(layout)), 'plate', 'pole', 0.1)]
}

/** Bolts through the concrete with a turned-up end; the climber's feet stand on two of them. */
export function stepBolts(layout: Layout): readonly Part[] {
  return layout.stepBolts.flatMap(({ across, height }) => {
    const side = Math.sign(across)
    const inner = side * (radiusAt(layout, height) - 0.02)
    const outer = side * 0.25
    const shank = at(
      cylinder(0.011, 0.011, Math.abs(outer - inner), 8),
      [(inner + outer) / 2, height, 0],
      [0, 0, Math.PI / 2],
    )
    const lip = at(cylinder(0.011, 0.011, 0.05, 8), [outer, height + 0.02, 0])
    return [part(shank, 'steel', 'pole', 0.04), part(lip, 'steel', 'pole', 0.03)]
  })
}

/** Galvanised channel across the pole with two flat braces and a through bolt. */
export function crossarm(height: number, length: number, along: number, id: string, drop = 0.55): readonly Part[] {
  const outward = Math.sign(along) || 1
  const braceAt = along - outward * 0.05
  const brace = (side: number): Part =>
    part(
      bar(
        vector(side * length * 0.3, height - 0.03, braceAt),
        vector(side * 0.07, height - drop, braceAt),
        0.012,
        0.045,
      ),
      'steel',
      id,
      0.05,
    )
  return [
    part(at(box(length, 0.1, 0.012), [0, height, along - outward * 0.025]), 'steel', id, 0.1),
    part(at(box(length, 0.012, 0.055), [0, height + 0.044, along]), 'steel', id, 0.06),
    part(at(box(length, 0.012, 0.055), [0, height - 0.044, along]), 'steel', id, 0.06),
    brace(1),
    brace(-1),
    part(
      at(cylinder(0.018, 0.018, 0.4, 6), [0, height, along - outward * 0.14], [Math.PI / 2, 0, 0]),
      'steel',
      id,
      0.03,
    ),
  ]
}

const glazeProfile = [
  [0.03, 0.1],
  [0.062, 0.09],
  [0.082, 0.075],
  [0.088, 0.085],
  [0.07, 0.13],
  [0.045, 0.155],
  [0.06, 0.16],
  [0.088, 0.152],
  [0.092, 0.163],
  [0.07, 0.205],
  [0.045, 0.235],
  [0.038, 0.25],
  [0.034, 0.262],
  [0.04, 0.276],
  [0.046, 0.288],
  [0.042, 0.308],
  [0.022, 0.32],
  [0, 0.322],
] as const
const farProfile = [
  [0.014, -0.1],
  [0.014, 0.09],
  [0.09, 0.09],
  [0.06, 0.15],
  [0.092, 0.16],
  [0.04, 0.25],
  [0.044, 0.3],
  [0, 0.32],
] as const

/** How far above its foot a pin insulator carries the wire. */
export const seatAbove = 0.3

/**
 * Pin insulator with two petticoats; its foot stands on the arm, the wire lies in the top groove `seatAbove × tall` higher.
 * @param wide, tall scale across and upward @param near false: one lathe of seven sides
 */
export function pinInsulator(foot: Triple, id: string, wide: number, tall: number, near: boolean): readonly Part[] {
  const shape = (near ? glazeProfile : farProfile).map(([r, y]) => [r * wide, y * tall] as const)
  const glaze = part(at(lathe(shape, near ? (wide < 0.5 ? 10 : 18) : 7), foot), 'glaze', id, 0.05 * wide, 50)
  if (!near) return [glaze]
  const [x, y, z] = foot
  return [
    glaze,
    part(at(cylinder(0.012 * wide, 0.014 * wide, 0.26 * tall, 8), [x, y + 0.02 * tall, z]), 'steel', id, 0.03),
    part(at(cylinder(0.026 * wide, 0.026 * wide, 0.02, 6), [x, y + 0.012, z]), 'steel', id, 0.03),
    part(at(cylinder(0.024 * wide, 0.024 * wide, 0.024, 6), [x, y - 0.11, z]), 'steel', id, 0.03),
    part(at(ring(0.046 * wide, 0.006, 16), [x, y + 0.272 * tall, z], [Math.PI / 2, 0, 0]), 'aluminium', id, 0.03),
  ]
}
