/**
 * Potential at the surface, and its slope outwards, per ampere leaked by one segment: the images of layeredKernel seen
 * from depth 0, where each pair of mirror images falls together.
 */
import { PI } from '../../math/portable'
import { meanToDisc, meanToLine, slopeToDisc, slopeToLine } from './meanInverse'
import type { Segment } from './segments'
import type { LayeredSoil } from './soil'

/** Ohm at horizontal distance `apart`, metre. */
export function surfaceOhm(soil: LayeredSoil, segment: Segment, apart: number): number {
  if (segment.isDisc) return discOhm(soil, segment.radius, apart)
  return sumOfImages(soil, segment, (offset) => meanToLine(apart, offset, segment.length))
}

/** Ohm per metre outwards of a segment of a vertical electrode (negative: the potential falls). */
export function surfaceSlope(soil: LayeredSoil, segment: Segment, apart: number): number {
  return sumOfImages(soil, segment, (offset) => slopeToLine(apart, offset, segment.length))
}

/** Ohm at distance `apart` from the axis of an equipotential disc. */
export function discOhm(soil: LayeredSoil, radius: number, apart: number): number {
  const { upper, boundary, reflection, imageCount } = soil
  let sum = meanToDisc(radius, apart, 0)
  let strength = 2
  for (let n = 1; n <= imageCount; n++) {
    strength *= reflection
    sum += strength * meanToDisc(radius, apart, 2 * n * boundary)
  }
  return (upper / (2 * PI)) * sum
}

function sumOfImages(soil: LayeredSoil, segment: Segment, mean: (offset: number) => number): number {
  const { upper, boundary, reflection, imageCount } = soil
  const { depth } = segment
  let strength = 1
  let sum = mean(depth)
  for (let n = 1; n <= imageCount; n++) {
    strength *= reflection
    const shift = 2 * n * boundary
    sum += strength * (segment.isLower ? mean(depth + shift) : mean(shift + depth) + mean(shift - depth))
  }
  return ((segment.isLower ? upper * (1 + reflection) : upper) / (2 * PI)) * sum
}

/** Ohm per metre outwards of a disc, outside its rim. */
export function discSlope(soil: LayeredSoil, radius: number, apart: number): number {
  const { upper, boundary, reflection, imageCount } = soil
  let sum = slopeToDisc(radius, apart, 0)
  let strength = 2
  for (let n = 1; n <= imageCount; n++) {
    strength *= reflection
    sum += strength * slopeToDisc(radius, apart, 2 * n * boundary)
  }
  return (upper / (2 * PI)) * sum
}
