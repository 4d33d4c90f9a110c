/**
 * Potential at the surface, and its slope outwards, per ampere leaked by one segment: the images of layeredKernel seen
 * from depth 0, where each pair of mirror images falls together.
 */
import { PI } from '../../math/portable'
import { addLine, meanToDisc, slopeToDisc } from './meanInverse'
import type { Segment } from './segments'
import type { LayeredSoil } from './soil'

/**
 * Writes ohm at horizontal distance `apart` into `into[0]` and its change per metre outwards into `into[1]`, for a
 * segment of an upright electrode, or, with length 0, for a point.
 */
export function surfaceOfSegment(soil: LayeredSoil, segment: Segment, apart: number, into: Float64Array): void {
  const { shift, strength } = soil.images
  const { depth, length, isLower } = segment
  into[0] = 0
  into[1] = 0
  addLine(into, 1, apart, depth, length)
  for (let k = 0; k < shift.length; k++) {
    addLine(into, strength[k]!, apart, shift[k]! + depth, length)
    if (!isLower) addLine(into, strength[k]!, apart, shift[k]! - depth, length)
  }
  const factor = (isLower ? soil.upper * (1 + soil.reflection) : soil.upper) / (2 * PI)
  into[0] *= factor
  into[1] *= factor
}

/** Where a disc lies: its radius, depth, and in which layer. */
export type DiscPlace = Pick<Segment, 'radius' | 'depth' | 'isLower'>

/** Ohm at distance `apart` from the axis of an equipotential disc. */
export function discOhm(soil: LayeredSoil, disc: DiscPlace, apart: number): number {
  return overImages(soil, disc, (height) => meanToDisc(disc.radius, apart, height))
}

/** Ohm per metre outwards of a disc, of one on the surface outside its rim. */
export function discSlope(soil: LayeredSoil, disc: DiscPlace, apart: number): number {
  return overImages(soil, disc, (height) => slopeToDisc(disc.radius, apart, height))
}

function overImages(soil: LayeredSoil, { depth, isLower }: DiscPlace, at: (height: number) => number): number {
  const { shift, strength } = soil.images
  let sum = at(depth)
  for (let k = 0; k < shift.length; k++) {
    const far = shift[k]!
    sum += strength[k]! * (isLower ? at(far + depth) : at(far + depth) + at(far - depth))
  }
  return ((isLower ? soil.upper * (1 + soil.reflection) : soil.upper) / (2 * PI)) * sum
}
