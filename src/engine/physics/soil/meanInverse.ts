/** Means of 1/distance over vertical lines and over discs: every soil formula here is a sum of them. Answers in 1/m. */
import { asin, asinh, ln } from '../../math/portable'

/** Beyond this many lengths the expansion to second order is better than 1e-4. */
const FAR = 6

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

/**
 * Adds to `into[0]` the mean of 1/distance from a point to a vertical line, times `strength`, and to `into[1]` its
 * derivative outwards, 1/m²: together, because they share their roots and a map needs hundreds of thousands.
 */
export function addLine(into: Float64Array, strength: number, apart: number, offset: number, length: number): void {
  const square = apart * apart + offset * offset
  const lengthSquare = length * length
  if (square > FAR * FAR * lengthSquare) {
    const inverse = 1 / Math.sqrt(square)
    const bend = lengthSquare / (24 * square * square)
    const upright = offset * offset
    const flat = apart * apart
    into[0] = into[0]! + strength * inverse * (1 + bend * (2 * upright - flat))
    into[1] = into[1]! - ((strength * apart * inverse) / square) * (1 + bend * (12 * upright - 3 * flat))
    return
  }
  const half = 0.5 * length
  const middle = Math.abs(offset)
  const low = middle - half
  const high = middle + half
  const lowRoot = Math.sqrt(apart * apart + low * low)
  const highRoot = Math.sqrt(apart * apart + high * high)
  const perLength = strength / length
  if (low >= 0) {
    into[0] = into[0]! + perLength * ln((high + highRoot) / (low + lowRoot))
    // high/highRoot - low/lowRoot without cancellation
    const difference =
      (apart * apart * (high - low) * (high + low)) / ((high * lowRoot + low * highRoot) * highRoot * lowRoot)
    into[1] = into[1]! - (perLength * difference) / apart
    return
  }
  into[0] = into[0]! + perLength * ln(((high + highRoot) * (lowRoot - low)) / (apart * apart))
  into[1] = into[1]! - (perLength * (high / highRoot - low / lowRoot)) / apart
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
