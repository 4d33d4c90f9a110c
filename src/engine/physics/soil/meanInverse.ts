/** Means of 1/distance over vertical lines and over discs: every soil formula here is a sum of them. Answers in 1/m. */
import { asin, asinh, ln } from '../../math/portable'

/** Beyond this many lengths the expansion to second order is better than 1e-5. */
const FAR = 4

/**
 * Mean of 1/√(r² + z²) between two parallel vertical lines: exact double integral near, expansion far away.
 * @param apart horizontal distance, metre, above 0
 * @param offset difference in depth of their middles
 */
export function meanBetweenLines(apart: number, offset: number, lengthA: number, lengthB: number): number {
  const square = apart * apart + offset * offset
  const longest = lengthA > lengthB ? lengthA : lengthB
  if (square > FAR * FAR * longest * longest) {
    const inverse = 1 / Math.sqrt(square)
    const bend = (2 * offset * offset - apart * apart) / (square * square)
    return inverse * (1 + (bend * (lengthA * lengthA + lengthB * lengthB)) / 24)
  }
  const half = 0.5 * (lengthA + lengthB)
  const skew = 0.5 * (lengthA - lengthB)
  const sum =
    twiceIntegrated(offset + half, apart) -
    twiceIntegrated(offset + skew, apart) -
    twiceIntegrated(offset - skew, apart) +
    twiceIntegrated(offset - half, apart)
  return sum / (lengthA * lengthB)
}

/** A function whose second derivative in u is 1/√(u² + r²). */
function twiceIntegrated(u: number, apart: number): number {
  return u * asinh(u / apart) - Math.sqrt(u * u + apart * apart)
}

/** Mean of 1/distance from a point to a vertical line. */
export function meanToLine(apart: number, offset: number, length: number): number {
  const square = apart * apart + offset * offset
  if (square > FAR * FAR * length * length) {
    const inverse = 1 / Math.sqrt(square)
    const bend = (2 * offset * offset - apart * apart) / (square * square)
    return inverse * (1 + (bend * length * length) / 24)
  }
  const low = offset - 0.5 * length
  const high = offset + 0.5 * length
  if (high <= 0) return lineLogarithm(apart, -high, -low) / length
  if (low >= 0) return lineLogarithm(apart, low, high) / length
  return (lineLogarithm(apart, 0, high) + lineLogarithm(apart, 0, -low)) / length
}

/** asinh(high/r) - asinh(low/r) for 0 ≤ low < high, in one logarithm and without cancellation. */
function lineLogarithm(apart: number, low: number, high: number): number {
  return ln((high + Math.sqrt(apart * apart + high * high)) / (low + Math.sqrt(apart * apart + low * low)))
}

/** Derivative of meanToLine with respect to the horizontal distance, 1/m². */
export function slopeToLine(apart: number, offset: number, length: number): number {
  const low = offset - 0.5 * length
  const high = offset + 0.5 * length
  const lowRoot = Math.sqrt(apart * apart + low * low)
  const highRoot = Math.sqrt(apart * apart + high * high)
  // -(high/highRoot - low/lowRoot)/r, rewritten where both lie on one side so that nothing cancels
  if (low * high > 0) {
    const numerator = high * lowRoot + low * highRoot
    return -((apart * (high - low) * (high + low)) / (numerator * highRoot * lowRoot)) / length
  }
  return -(high / highRoot - low / lowRoot) / (apart * length)
}

/**
 * 1/distance averaged over the current of an equipotential disc: asin(2b / (p + q)) / b with p, q the distances to its
 * near and far edge (the oblate field; π/2b at the disc itself).
 * @param apart horizontal distance from its axis
 * @param height distance from its plane
 */
export function meanToDisc(radius: number, apart: number, height: number): number {
  const near = apart - radius
  const far = apart + radius
  const edges = Math.sqrt(near * near + height * height) + Math.sqrt(far * far + height * height)
  return asin(Math.min(1, (2 * radius) / edges)) / radius
}

/** Derivative of meanToDisc with respect to the horizontal distance, 1/m²; without bound at the rim itself. */
export function slopeToDisc(radius: number, apart: number, height: number): number {
  const near = apart - radius
  const far = apart + radius
  const nearRoot = Math.sqrt(near * near + height * height)
  const farRoot = Math.sqrt(far * far + height * height)
  const edges = nearRoot + farRoot
  const steepness = Math.sqrt(edges * edges - 4 * radius * radius)
  return (-2 * (near / nearRoot + far / farRoot)) / (edges * steepness)
}
