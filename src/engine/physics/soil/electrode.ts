/**
 * What carries current into the soil. Metre, ohm metre, depth down from the surface. An electrode is at one potential all
 * over; several shapes that metal joins (the pads of one vehicle, the posts of one fence) are one `joined` electrode.
 *
 * Stay anchors: the rod is a slanted `wire`; a plate at its end is a `disc` of the same area at the plate's depth (Dwight
 * 1936 gives square and round plates of one area the same resistance within 1 %; a tilt changes only the term of the
 * image, which is small where the plate is deeper than it is wide). A rod half driven is a `rod` of the length that is in.
 */
import type { GroundPoint } from './soil'

export type Electrode = Rod | Disc | Encased | Wire | Joined

export interface Rod {
  readonly id: string
  readonly kind: 'rod'
  readonly at: GroundPoint
  /** Depth of its upper end. */
  readonly top: number
  /** In the soil: of a rod that stands out, what has been driven. */
  readonly length: number
  readonly radius: number
}

/** Horizontal, one potential over its whole area: a foot, a wheel, an outrigger pad; with a depth, a buried plate. */
export interface Disc {
  readonly id: string
  readonly kind: 'disc'
  readonly at: GroundPoint
  readonly radius: number
  /** On the surface when not given. */
  readonly depth?: number
}

/** Reinforcement in concrete: a rod of `radius` in the soil, and the shell of concrete around the core in series. */
export interface Encased {
  readonly id: string
  readonly kind: 'encased'
  readonly at: GroundPoint
  readonly top: number
  readonly length: number
  readonly radius: number
  readonly coreRadius: number
  readonly encasementResistivity: number
}

export interface DeepPoint extends GroundPoint {
  readonly depth: number
}

/** A bare conductor laid straight from point to point: counterpoise, slanted anchor rod; a ring is a closed polygon. */
export interface Wire {
  readonly id: string
  readonly kind: 'wire'
  readonly points: readonly DeepPoint[]
  /** From the last point back to the first as well. */
  readonly isClosed?: boolean
  readonly radius: number
}

export type Part = Omit<Rod, 'id'> | Omit<Disc, 'id'> | Omit<Wire, 'id'>

export interface Joined {
  readonly id: string
  readonly kind: 'joined'
  readonly parts: readonly Part[]
}

/** A shape of one kind by itself: what an electrode is made of. */
export type Shape = Part | Omit<Encased, 'id'>

export function shapesOf(electrode: Electrode): readonly Shape[] {
  return electrode.kind === 'joined' ? electrode.parts : [electrode]
}

/** Straight pieces of a wire, from and to. */
export function sidesOf(wire: Omit<Wire, 'id'>): readonly (readonly [DeepPoint, DeepPoint])[] {
  const { points, isClosed = false } = wire
  return points
    .map((from, i) => [from, points[(i + 1) % points.length]!] as const)
    .slice(0, isClosed ? points.length : points.length - 1)
}
