/**
 * Mean of 1/distance between two segments, one of them as its image: the only thing that the kernel sums. Uprights and
 * discs need only the difference of their depths; wires lie in space, and their images lean the other way.
 */
import { asinh } from '../../math/portable'
import { GAUSS } from './gauss'
import { meanBetweenLines, meanToDisc } from './meanInverse'
import type { Segment } from './segments'

/** Second segment at depth z becomes `shift` + z, or `shift` - z when mirrored. Answers in 1/m. */
export type Mean = (mirrored: boolean, shift: number) => number

export function meanBetween(a: Segment, b: Segment): Mean {
  if (a.along !== undefined || b.along !== undefined) return inSpace(a, b)
  const overOffset = coaxialOrApart(a, b)
  return (mirrored, shift) => overOffset(mirrored ? a.depth + b.depth - shift : a.depth - b.depth - shift)
}

/** For two uprights or discs: over the difference in depth, even in it. */
function coaxialOrApart(a: Segment, b: Segment): (offset: number) => number {
  const dx = a.x - b.x
  const dy = a.y - b.y
  const isOneAxis = a.electrode === b.electrode && dx === 0 && dy === 0
  const apart = isOneAxis ? a.radius : Math.sqrt(dx * dx + dy * dy)
  if (a.isDisc && b.isDisc) return isOneAxis ? discToItself(a.radius) : discToDisc(a, b, apart)
  if (a.isDisc) return lineToDisc(a.radius, isOneAxis ? 0 : apart, b.length)
  if (b.isDisc) return lineToDisc(b.radius, isOneAxis ? 0 : apart, a.length)
  return (offset) => meanBetweenLines(apart, offset, a.length, b.length)
}

function lineToDisc(radius: number, apart: number, length: number): (offset: number) => number {
  const far = FAR * Math.max(length, 2 * radius)
  return (offset) => {
    const square = apart * apart + offset * offset
    if (square > far * far) return fromFar(square, offset, length * length - 4 * radius * radius)
    return GAUSS.reduce(
      (sum, [at, weight]) => sum + weight * meanToDisc(radius, apart, offset + (at - 0.5) * length),
      0,
    )
  }
}

/**
 * To second order from far away: an upright line of length L bends 1/R by L²(3 cos² - 1)/24R², a disc's current of
 * radius b by -4b² of the same (on its axis atan(b/z)/b = 1/z - b²/3z³).
 */
function fromFar(square: number, offset: number, size: number): number {
  return (1 + (((3 * offset * offset) / square - 1) * size) / (24 * square)) / Math.sqrt(square)
}

/**
 * The field of one disc averaged over the current of another, right to second order in size over distance: the field of
 * a single disc of radius √(a² + b²).
 */
function discToDisc(a: Segment, b: Segment, apart: number): (offset: number) => number {
  const radius = Math.sqrt(a.radius * a.radius + b.radius * b.radius)
  return toDisc(radius, apart)
}

function toDisc(radius: number, apart: number): (offset: number) => number {
  const far = 2 * FAR * radius
  return (offset) => {
    const square = apart * apart + offset * offset
    return square > far * far ? fromFar(square, offset, -4 * radius * radius) : meanToDisc(radius, apart, offset)
  }
}

/** A disc against its own image: with r = b√(1-t²) the disc's current is even in t. */
function discToItself(radius: number): (offset: number) => number {
  const far = 2 * FAR * radius
  return (offset) => {
    if (Math.abs(offset) > far) return fromFar(offset * offset, offset, -8 * radius * radius)
    return GAUSS.reduce(
      (sum, [t, weight]) => sum + weight * meanToDisc(radius, radius * Math.sqrt(1 - t * t), offset),
      0,
    )
  }
}

/** Beyond this many lengths the expansion to second order is better than 1e-4. */
const FAR = 6

/** A piece of line in space: middle, unit direction, length. */
interface Line {
  readonly x: number
  readonly y: number
  readonly z: number
  readonly ux: number
  readonly uy: number
  readonly uz: number
  readonly length: number
}

function inSpace(a: Segment, b: Segment): Mean {
  if (a.isDisc) return wireToDisc(a, b, 1)
  if (b.isDisc) return wireToDisc(b, a, -1)
  // the shorter one is averaged by points, the other one exactly; which is which must not hang on the order
  const isSwapped = isFirst(b, a)
  const points = isSwapped ? b : a
  const whole = isSwapped ? a : b
  const nearest = a.electrode === b.electrode ? Math.max(a.radius, b.radius) : 0
  const longest = Math.max(a.length, b.length)
  const dx = whole.x - points.x
  const dy = whole.y - points.y
  const flat = dx * dx + dy * dy
  const [ours, theirs] = [lineOf(points, false, 0), lineOf(whole, false, 0)]
  const flatOnOurs = dx * ours.ux + dy * ours.uy
  const flatOnTheirs = dx * theirs.ux + dy * theirs.uy
  return (mirrored, asked) => {
    const shift = isSwapped && !mirrored ? -asked : asked
    const dz = (mirrored ? shift - whole.depth : shift + whole.depth) - points.depth
    const square = flat + dz * dz
    if (square > FAR * FAR * longest * longest) {
      const onOurs = flatOnOurs + dz * ours.uz
      const onTheirs = flatOnTheirs + (mirrored ? -dz : dz) * theirs.uz
      const bendOurs = ((3 * onOurs * onOurs) / square - 1) * ours.length * ours.length
      const bendTheirs = ((3 * onTheirs * onTheirs) / square - 1) * theirs.length * theirs.length
      return (1 + (bendOurs + bendTheirs) / (24 * square)) / Math.sqrt(square)
    }
    return meanOfLines(ours, lineOf(whole, mirrored, shift), nearest)
  }
}

function isFirst(a: Segment, b: Segment): boolean {
  if (a.length !== b.length) return a.length < b.length
  if (a.depth !== b.depth) return a.depth < b.depth
  return a.x !== b.x ? a.x < b.x : a.y < b.y
}

function lineOf(segment: Segment, mirrored: boolean, shift: number): Line {
  const { x, y, depth, length, along } = segment
  const way = mirrored ? -1 : 1
  return { x, y, z: shift + way * depth, ux: along?.x ?? 0, uy: along?.y ?? 0, uz: way * (along?.z ?? 1), length }
}

function meanOfLines(a: Line, b: Line, nearest: number): number {
  const dx = b.x - a.x
  const dy = b.y - a.y
  const dz = b.z - a.z
  const square = dx * dx + dy * dy + dz * dz
  const onA = dx * a.ux + dy * a.uy + dz * a.uz
  const turn = a.ux * b.ux + a.uy * b.uy + a.uz * b.uz
  if (1 - Math.abs(turn) < 1e-12) {
    const apart = Math.sqrt(Math.max(0, square - onA * onA) + nearest * nearest)
    return meanBetweenLines(apart, onA, a.length, b.length)
  }
  const points = square > NEAR * NEAR * b.length * b.length ? GAUSS : TWO_PANELS
  let sum = 0
  for (const [at, weight] of points) sum += weight * toPoint(a, b, (at - 0.5) * a.length, nearest)
  return sum
}

/** Nearer than this many lengths of the longer line four points are not enough. */
const NEAR = 1.5

/** Gauss points on each half: lines that meet in a corner have a logarithm at that end. */
const TWO_PANELS = [0, 0.5].flatMap((start) => GAUSS.map(([at, weight]) => [start + 0.5 * at, 0.5 * weight] as const))

/** Mean of 1/distance from the point `at` along a to the whole of b. */
function toPoint(a: Line, b: Line, at: number, nearest: number): number {
  const dx = a.x + at * a.ux - b.x
  const dy = a.y + at * a.uy - b.y
  const dz = a.z + at * a.uz - b.z
  const along = dx * b.ux + dy * b.uy + dz * b.uz
  const apart = Math.sqrt(Math.max(1e-18, dx * dx + dy * dy + dz * dz - along * along) + nearest * nearest)
  const half = 0.5 * b.length
  return (asinh((along + half) / apart) - asinh((along - half) / apart)) / b.length
}

/** @param way 1 when the wire is the one that is moved, -1 when the disc is: a plain shift then goes the other way */
function wireToDisc(disc: Segment, wire: Segment, way: 1 | -1): Mean {
  const { along } = wire
  return (mirrored, shift) => {
    const middle = mirrored ? disc.depth + wire.depth - shift : disc.depth - wire.depth - way * shift
    const lean = (mirrored ? 1 : -1) * (along?.z ?? 1)
    let sum = 0
    for (const [share, weight] of GAUSS) {
      const at = (share - 0.5) * wire.length
      const dx = wire.x + at * (along?.x ?? 0) - disc.x
      const dy = wire.y + at * (along?.y ?? 0) - disc.y
      sum += weight * meanToDisc(disc.radius, Math.sqrt(dx * dx + dy * dy), middle + lean * at)
    }
    return sum
  }
}
