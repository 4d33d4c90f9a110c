/**
 * The surface under one set of currents, for maps and searches: what all driven electrodes make of one axis is added up
 * once into a table over the square of the distance, straight lines between its points. A point then costs a product and
 * a sum per axis, and no root or logarithm: the bits of the square say which line it is on (the same on every machine;
 * 32 lines to each doubling keep the error below 1e-4 of the axis's own potential).
 */
import type { Complex } from '../../math/complex'
import type { GroundPoint } from './soil'
import type { SurfaceSource } from './surfaceSources'

/** A rectangle of places: `columns` along x, `rows` along y, `step` metres apart, from `from`. */
export interface GroundGrid {
  readonly from: GroundPoint
  readonly step: number
  readonly columns: number
  readonly rows: number
}

export interface DrivenSurface {
  /** Volt to remote earth. */
  potentialAt(at: GroundPoint): Complex
  /** Volt per metre along x and y: for directions, within some per cent. */
  slopeAt(at: GroundPoint): { readonly x: Complex; readonly y: Complex }
  /** Volt at each place, row by row. */
  map(grid: GroundGrid): { readonly re: Float64Array; readonly im: Float64Array }
}

interface Axis {
  readonly x: number
  readonly y: number
  readonly rimSquare: number
  /** Squares below count as this one. */
  readonly least: number
  readonly most: number
  /** Bits of the first line. */
  readonly first: number
  readonly re: Lines
  readonly im: Lines
}

/** V(u) = start + rise u on each line. */
interface Lines {
  readonly start: Float64Array
  readonly rise: Float64Array
}

/** 2⁵ lines to each doubling: the exponent and five more bits of a single-precision number. */
const SHIFT = 18

const single = new Float32Array(1)
const bits = new Int32Array(single.buffer)

/** Of a disc's square: so near to its rim the surface counts as the disc. */
const RIM = 1e-6

/** Of a metre: nothing on a site is told apart closer than this. */
const NEAREST = 1e-3

/** @param reach metre: further from an axis its potential falls as 1/distance */
export function driveSurface(
  sources: readonly SurfaceSource[],
  currents: readonly Complex[],
  reach: number,
): DrivenSurface {
  const drawn = sources.map((source) => drawAxis(source, currents, reach))
  return {
    potentialAt: (at) => {
      let re = 0
      let im = 0
      for (const axis of drawn) {
        const u = squareFrom(axis, at)
        const counted = Math.min(Math.max(u, axis.least), axis.most)
        const k = lineOf(counted) - axis.first
        const far = u > axis.most ? Math.sqrt(axis.most / u) : 1
        re += far * (axis.re.start[k]! + axis.re.rise[k]! * counted)
        im += far * (axis.im.start[k]! + axis.im.rise[k]! * counted)
      }
      return { re, im }
    },
    slopeAt: (at) => slopeOf(drawn, at),
    map: (grid) => mapOf(drawn, grid),
  }
}

function lineOf(square: number): number {
  single[0] = square
  return bits[0]! >> SHIFT
}

function squareAtLine(line: number): number {
  bits[0] = line << SHIFT
  return single[0]!
}

function squareFrom(axis: Axis, { x, y }: GroundPoint): number {
  const dx = x - axis.x
  const dy = y - axis.y
  return dx * dx + dy * dy - axis.rimSquare
}

function drawAxis({ x, y, rim, field }: SurfaceSource, currents: readonly Complex[], reach: number): Axis {
  const rimSquare = rim * rim
  const nearest = Math.max(NEAREST, field.radii[0]! * (rim > 0 ? 0 : 1))
  const least = rim > 0 ? RIM * rimSquare : nearest * nearest
  const first = lineOf(least)
  const count = lineOf(Math.max(reach * reach, 4 * least)) - first + 1
  const re = new Float64Array(count + 1)
  const im = new Float64Array(count + 1)
  const square = Float64Array.from({ length: count + 1 }, (_, k) => squareAtLine(first + k))
  const ohm = new Float64Array(currents.length)
  for (let k = 0; k <= count; k++) {
    ohm.fill(0)
    field.addPotential(Math.sqrt(square[k]! + rimSquare), ohm)
    for (let j = 0; j < ohm.length; j++) {
      re[k] = re[k]! + ohm[j]! * currents[j]!.re
      im[k] = im[k]! + ohm[j]! * currents[j]!.im
    }
  }
  return {
    x,
    y,
    rimSquare,
    least: square[0]!,
    most: square[count]! * (1 - 1e-6),
    first,
    re: linesThrough(square, re),
    im: linesThrough(square, im),
  }
}

function linesThrough(square: Float64Array, volt: Float64Array): Lines {
  const count = volt.length - 1
  const start = new Float64Array(count)
  const rise = new Float64Array(count)
  for (let k = 0; k < count; k++) {
    rise[k] = (volt[k + 1]! - volt[k]!) / (square[k + 1]! - square[k]!)
    start[k] = volt[k]! - rise[k]! * square[k]!
  }
  return { start, rise }
}

function slopeOf(axes: readonly Axis[], at: GroundPoint): { readonly x: Complex; readonly y: Complex } {
  const x = { re: 0, im: 0 }
  const y = { re: 0, im: 0 }
  for (const axis of axes) {
    const u = squareFrom(axis, at)
    if (u < axis.least) continue
    const k = lineOf(Math.min(u, axis.most)) - axis.first
    // d/dx of V(u) with u = dx² + dy²; past the table V falls as u^-½
    const far = u > axis.most ? Math.sqrt(axis.most / u) * (axis.most / u) : 1
    const twiceX = 2 * far * (at.x - axis.x)
    const twiceY = 2 * far * (at.y - axis.y)
    x.re += axis.re.rise[k]! * twiceX
    x.im += axis.im.rise[k]! * twiceX
    y.re += axis.re.rise[k]! * twiceY
    y.im += axis.im.rise[k]! * twiceY
  }
  return { x, y }
}

function mapOf(axes: readonly Axis[], grid: GroundGrid): { re: Float64Array; im: Float64Array } {
  const { columns, rows } = grid
  const re = new Float64Array(columns * rows)
  const im = new Float64Array(columns * rows)
  for (const axis of axes) addAxis(axis, grid, re, im)
  return { re, im }
}

function addAxis(axis: Axis, { from, step, columns, rows }: GroundGrid, re: Float64Array, im: Float64Array): void {
  const { least, most, first, rimSquare } = axis
  const { start: startRe, rise: riseRe } = axis.re
  const { start: startIm, rise: riseIm } = axis.im
  const left = from.x - axis.x
  let place = 0
  for (let row = 0; row < rows; row++) {
    const dy = from.y + row * step - axis.y
    const upright = dy * dy - rimSquare
    for (let column = 0; column < columns; column++, place++) {
      const dx = left + column * step
      let u = upright + dx * dx
      if (u < least) u = least
      else if (u > most) u = most
      single[0] = u
      const k = (bits[0]! >> SHIFT) - first
      re[place] = re[place]! + startRe[k]! + riseRe[k]! * u
      im[place] = im[place]! + startIm[k]! + riseIm[k]! * u
    }
  }
}
