/**
 * Potential of every segment per ampere of every other. Pieces of one rod are alike, so between two rods everything is a
 * function of one difference in depth; its far images change slowly with that, and are summed at a few Chebyshev points
 * for the whole pair instead of for each of the 144 pieces. The near images stand as they are (layeredKernel.ts).
 */
import { cos, PI } from '../../math/portable'
import { mutualOhm } from './layeredKernel'
import { meanBetweenLines } from './meanInverse'
import type { Segment } from './segments'
import type { LayeredSoil } from './soil'

/** Row by row, symmetric. */
export function potentialMatrix(soil: LayeredSoil, segments: readonly Segment[]): Float64Array {
  const size = segments.length
  const matrix = new Float64Array(size * size)
  const put = (i: number, j: number, ohm: number): void => {
    matrix[i * size + j] = ohm
    matrix[j * size + i] = ohm
  }
  const runs = runsOf(segments)
  runs.forEach((a, n) => {
    for (const b of runs.slice(0, n + 1)) {
      const between = ohmBetween(soil, a, b)
      a.pieces.forEach((piece, i) => {
        const last = a === b ? i : b.pieces.length - 1
        for (let j = 0; j <= last; j++) put(a.first + i, b.first + j, between(piece, b.pieces[j]!))
      })
    }
  })
  return matrix
}

/** Pieces of equal length below each other in one layer; everything else alone. */
interface Run {
  readonly first: number
  readonly pieces: Segment[]
}

function runsOf(segments: readonly Segment[]): readonly Run[] {
  const runs: Run[] = []
  segments.forEach((segment, s) => {
    const before = runs[runs.length - 1]
    if (before && isAlike(before.pieces[0]!, segment)) before.pieces.push(segment)
    else runs.push({ first: s, pieces: [segment] })
  })
  return runs
}

/** Below each other: not so are two pieces of a slanted wire, nor two discs, which lie apart. */
function isAlike(a: Segment, b: Segment): boolean {
  const isOneAxis = a.electrode === b.electrode && a.x === b.x && a.y === b.y
  return isOneAxis && a.isLower === b.isLower && a.length === b.length
}

type Ohm = (a: Segment, b: Segment) => number

/** So few pieces are not worth a Chebyshev sum. */
const FEW = 8

function ohmBetween(soil: LayeredSoil, a: Run, b: Run): Ohm {
  const isWorthIt = a.pieces.length * b.pieces.length > FEW && soil.reflection !== 0
  return isWorthIt ? ohmBetweenRods(soil, a.pieces, b.pieces) : (one, other) => mutualOhm(soil, one, other)
}

function ohmBetweenRods(soil: LayeredSoil, a: readonly Segment[], b: readonly Segment[]): Ohm {
  const [upperA, upperB] = [!a[0]!.isLower, !b[0]!.isLower]
  const mean = meanOver(a[0]!, b[0]!)
  const depths = [...a, ...b].map(({ depth }) => depth)
  const lowest = Math.max(...a.map(({ depth }) => depth)) + Math.max(...b.map(({ depth }) => depth))
  const { upper, lower, boundary, reflection } = soil
  if (upperA && upperB) {
    const images = imagesOf(soil, (far, offset) => mean(far + offset) + mean(far - offset), 0, lowest)
    const over = (offset: number) => mean(offset) + images(Math.abs(offset))
    return (one, other) => (upper / (4 * PI)) * (over(one.depth - other.depth) + over(one.depth + other.depth))
  }
  const least = upperA === upperB ? 2 * Math.min(...depths) : 0
  const images = imagesOf(soil, (far, offset) => mean(far + offset), least, lowest)
  const over = (offset: number) => mean(offset) + images(offset)
  if (upperA !== upperB) {
    return (one, other) => {
      const ahead = Math.abs(one.depth - other.depth)
      return ((upper * (1 + reflection)) / (4 * PI)) * (over(ahead) + over(one.depth + other.depth))
    }
  }
  return (one, other) => {
    const sum = one.depth + other.depth
    const direct = mean(one.depth - other.depth) - reflection * mean(sum - 2 * boundary)
    return (lower / (4 * PI)) * (direct + (1 - reflection * reflection) * over(sum))
  }
}

function meanOver(a: Segment, b: Segment): (offset: number) => number {
  const dx = a.x - b.x
  const dy = a.y - b.y
  const isOneAxis = a.electrode === b.electrode && dx === 0 && dy === 0
  const apart = isOneAxis ? a.radius : Math.sqrt(dx * dx + dy * dy)
  return (offset) => meanBetweenLines(apart, offset, a.length, b.length)
}

/** Points of a Chebyshev sum: with the images at least this share of the range away its error is below 1e-6. */
const POINTS = 10
const AWAY = 0.75

/** Σ strength · term over all images, as a function of the offset in [least, most]. */
function imagesOf(
  soil: LayeredSoil,
  term: (far: number, offset: number) => number,
  least: number,
  most: number,
): (offset: number) => number {
  const { shift, strength } = soil.images
  const middle = 0.5 * (most + least)
  const half = 0.5 * (most - least)
  let near = 0
  while (near < shift.length && shift[near]! < most + 2 * AWAY * half) near++
  const at = Array.from({ length: POINTS }, (_, p) => cos((PI * (p + 0.5)) / POINTS))
  const values = at.map((t) => {
    let sum = 0
    for (let k = near; k < shift.length; k++) sum += strength[k]! * term(shift[k]!, middle + half * t)
    return sum
  })
  const coefficients = Float64Array.from({ length: POINTS }, (_, order) => {
    const sum = values.reduce((total, value, p) => total + value * cos((PI * order * (p + 0.5)) / POINTS), 0)
    return (sum * (order === 0 ? 1 : 2)) / POINTS
  })
  return (offset) => {
    let sum = clenshaw(coefficients, (offset - middle) / half)
    for (let k = 0; k < near; k++) sum += strength[k]! * term(shift[k]!, offset)
    return sum
  }
}

function clenshaw(coefficients: Float64Array, t: number): number {
  let ahead = 0
  let next = 0
  for (let order = coefficients.length - 1; order > 0; order--) {
    const here = 2 * t * next - ahead + coefficients[order]!
    ahead = next
    next = here
  }
  return t * next - ahead + coefficients[0]!
}
