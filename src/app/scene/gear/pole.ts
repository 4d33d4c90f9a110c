/** What is bolted to a pole: step bolts, number plate, arms with braces, pin and strain insulators. */
import { at, bar, box, cylinder, lathe, ring, strut, type Triple, vector } from '../geometry/shapes'
import { type Part, part } from '../ink/part'
import { type Layout, radiusAt } from '../site/layout'

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

interface Arm {
  readonly height: number
  readonly length: number
  readonly along: number
  /** How far down its braces reach. */
  readonly drop?: number
  readonly made?: 'wood' | 'steel'
  readonly across?: number
}

/** Galvanised channel, or a wooden beam, across the pole with two flat braces and a through bolt. */
export function crossarm(
  { height, length, along, drop = 0.55, made = 'steel', across = 0 }: Arm,
  id: string,
): readonly Part[] {
  const outward = Math.sign(along) || 1
  const braceAt = along - outward * 0.05
  const brace = (side: number): Part =>
    part(
      bar(
        vector(across + side * length * 0.3, height - 0.03, braceAt),
        vector(across + side * 0.07, height - drop, braceAt),
        0.012,
        0.045,
      ),
      'steel',
      id,
      0.05,
    )
  const bolt = at(cylinder(0.018, 0.018, 0.4, 6), [across, height, along - outward * 0.14], [Math.PI / 2, 0, 0])
  return [
    ...(made === 'wood' ? beam(height, length, along, across, id) : channel(height, length, along, across, id)),
    ...(length > 0.8 ? [brace(1), brace(-1)] : []),
    part(bolt, 'steel', id, 0.03),
  ]
}

function channel(height: number, length: number, along: number, across: number, id: string): readonly Part[] {
  const web = along - (Math.sign(along) || 1) * 0.025
  return [
    part(at(box(length, 0.1, 0.012), [across, height, web]), 'steel', id, 0.1),
    part(at(box(length, 0.012, 0.055), [across, height + 0.044, along]), 'steel', id, 0.06),
    part(at(box(length, 0.012, 0.055), [across, height - 0.044, along]), 'steel', id, 0.06),
  ]
}

/** Ends are bound with wire against splitting. */
function beam(height: number, length: number, along: number, across: number, id: string): readonly Part[] {
  const bound = (side: number): Part =>
    part(at(box(0.02, 0.106, 0.096), [across + side * (length / 2 - 0.06), height, along]), 'steel', id, 0.04)
  return [part(at(box(length, 0.1, 0.09), [across, height, along]), 'wood', id, 0.1), bound(1), bound(-1)]
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
  const glaze = part(at(lathe(shape, near ? (wide <= 0.5 ? 9 : 15) : 7), foot), 'glaze', id, 0.05 * wide, 50)
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

/** A string of two cap-and-pin discs from the arm toward the span; the wire is gripped at its far end. Metres. */
export const strainLength = 0.52

/** @param toward +1 or -1: the way along the line that the wire leaves */
export function strainString([x, y, z]: Triple, toward: 1 | -1, id: string): readonly Part[] {
  const on = (metres: number): Triple => [x, y, z + toward * metres]
  const disc = (metres: number): Part =>
    part(at(lathe(discProfile, 16), on(metres), [(toward * Math.PI) / 2, 0, 0]), 'glaze', id, 0.05, 50)
  const rod = (from: number, to: number, radius: number, slot: 'steel' | 'aluminium'): Part =>
    part(strut(vector(...on(from)), vector(...on(to)), radius, radius, 8), slot, id, 0.03)
  return [
    rod(-0.03, 0.1, 0.012, 'steel'),
    disc(0.1),
    rod(0.13, 0.24, 0.016, 'steel'),
    disc(0.24),
    rod(0.27, 0.36, 0.014, 'steel'),
    rod(0.36, strainLength, 0.026, 'aluminium'),
  ]
}

const discProfile = [
  [0.02, 0],
  [0.045, 0.012],
  [0.098, 0.03],
  [0.104, 0.042],
  [0.06, 0.05],
  [0.03, 0.075],
  [0.03, 0.1],
  [0, 0.102],
] as const
