/**
 * The surface under one set of currents, for maps and searches: what all driven electrodes make of one axis is added up
 * once into a table over the square of the distance, straight lines between its points. A point then costs a product and
 * a sum per axis, and no root or logarithm: the bits of the square say which line it is on (the same on every machine;
 * 32 lines to each doubling keep the error below 1e-4 of the axis's own potential).
 */
import { ONE, type Complex } from '../../math/complex'
import type { RadialField } from './radialField'
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
  /** Four numbers a line, V(u) = start + rise u: start and rise of the real part, then of the imaginary one. */
  readonly lines: Float64Array
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
  const alike = new Map<RadialField, Float64Array>()
  const drawn = sources.map((source) => drawAxis(source, currents, reach, alike))
  return {
    potentialAt: (at) => {
      let re = 0
      let im = 0
      for (const axis of drawn) {
        const u = squareFrom(axis, at)
        const counted = Math.min(Math.max(u, axis.least), axis.most)
        const k = 4 * (lineOf(counted) - axis.first)
        const far = u > axis.most ? Math.sqrt(axis.most / u) : 1
        re += far * (axis.lines[k]! + axis.lines[k + 1]! * counted)
        im += far * (axis.lines[k + 2]! + axis.lines[k + 3]! * counted)
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

/** @param alike potentials of what many axes are made of, worked out once */
function drawAxis(
  { x, y, rim, field }: SurfaceSource,
  currents: readonly Complex[],
  reach: number,
  alike: Map<RadialField, Float64Array>,
): Axis {
  const rimSquare = rim * rim
  const nearest = Math.max(NEAREST, field.radii[0]!)
  const least = rim > 0 ? RIM * rimSquare : nearest * nearest
  const first = lineOf(least)
  const count = lineOf(Math.max(reach * reach, 4 * least)) - first + 1
  const square = Float64Array.from({ length: count + 1 }, (_, k) => squareAtLine(first + k))
  const apart = square.map((u) => Math.sqrt(u + rimSquare))
  const { re, im } = field.scaled ? scaledVolts(field.scaled, apart, currents, alike) : volts(field, apart, currents)
  return {
    x,
    y,
    rimSquare,
    least: square[0]!,
    most: square[count]! * (1 - 1e-6),
    first,
    lines: through(square, re, im),
  }
}

interface Volts {
  readonly re: Float64Array
  readonly im: Float64Array
}

function volts(field: RadialField, apart: Float64Array, currents: readonly Complex[]): Volts {
  const re = new Float64Array(apart.length)
  const im = new Float64Array(apart.length)
  const ohm = new Float64Array(currents.length)
  apart.forEach((distance, k) => {
    ohm.fill(0)
    field.addPotential(distance, ohm)
    for (let j = 0; j < ohm.length; j++) {
      re[k] = re[k]! + ohm[j]! * currents[j]!.re
      im[k] = im[k]! + ohm[j]! * currents[j]!.im
    }
  })
  return { re, im }
}

function scaledVolts(
  { unit, share }: NonNullable<RadialField['scaled']>,
  apart: Float64Array,
  currents: readonly Complex[],
  alike: Map<RadialField, Float64Array>,
): Volts {
  const known = alike.get(unit) ?? volts(unit, apart, [ONE]).re
  alike.set(unit, known)
  let re = 0
  let im = 0
  currents.forEach((current, j) => {
    re += share[j]! * current.re
    im += share[j]! * current.im
  })
  return { re: known.map((volt) => volt * re), im: known.map((volt) => volt * im) }
}

function through(square: Float64Array, re: Float64Array, im: Float64Array): Float64Array {
  const lines = new Float64Array(4 * (square.length - 1))
  for (const [part, volt] of [re, im].entries()) {
    for (let k = 0; k + 1 < square.length; k++) {
      const rise = (volt[k + 1]! - volt[k]!) / (square[k + 1]! - square[k]!)
      lines[4 * k + 2 * part] = volt[k]! - rise * square[k]!
      lines[4 * k + 2 * part + 1] = rise
    }
  }
  return lines
}

function slopeOf(axes: readonly Axis[], at: GroundPoint): { readonly x: Complex; readonly y: Complex } {
  const x = { re: 0, im: 0 }
  const y = { re: 0, im: 0 }
  for (const axis of axes) {
    const u = squareFrom(axis, at)
    if (u < axis.least) continue
    const k = 4 * (lineOf(Math.min(u, axis.most)) - axis.first)
    // d/dx of V(u) with u = dx² + dy²; past the table V falls as u^-½
    const far = u > axis.most ? Math.sqrt(axis.most / u) * (axis.most / u) : 1
    const twiceX = 2 * far * (at.x - axis.x)
    const twiceY = 2 * far * (at.y - axis.y)
    x.re += axis.lines[k + 1]! * twiceX
    x.im += axis.lines[k + 3]! * twiceX
    y.re += axis.lines[k + 1]! * twiceY
    y.im += axis.lines[k + 3]! * twiceY
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
  const { least, most, first, rimSquare, lines } = axis
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
      const k = 4 * ((bits[0]! >> SHIFT) - first)
      re[place] = re[place]! + lines[k]! + lines[k + 1]! * u
      im[place] = im[place]! + lines[k + 2]! + lines[k + 3]! * u
    }
  }
}
