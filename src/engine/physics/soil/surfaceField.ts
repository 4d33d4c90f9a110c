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
 * segment of a vertical electrode.
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

/** Ohm at distance `apart` from the axis of an equipotential disc. */
export function discOhm(soil: LayeredSoil, radius: number, apart: number): number {
  const { shift, strength } = soil.images
  let sum = meanToDisc(radius, apart, 0)
  for (let k = 0; k < shift.length; k++) sum += 2 * strength[k]! * meanToDisc(radius, apart, shift[k]!)
  return (soil.upper / (2 * PI)) * sum
}

/** Ohm per metre outwards of a disc, outside its rim. */
export function discSlope(soil: LayeredSoil, radius: number, apart: number): number {
  const { shift, strength } = soil.images
  let sum = slopeToDisc(radius, apart, 0)
  for (let k = 0; k < shift.length; k++) sum += 2 * strength[k]! * slopeToDisc(radius, apart, shift[k]!)
  return (soil.upper / (2 * PI)) * sum
}
