/**
 * All electrodes of a site in one soil: their mutual resistances, and the potential that their currents leave anywhere
 * on the surface. Feet are no electrodes here: where people stand changes nothing in the solved system.
 * Currents are positive into the soil.
 */
import type { Complex } from '../../math/complex'
import { ZERO } from '../../math/complex'
import { invariant } from '../../units/invariant'
import { checkElectrodes } from './checkElectrodes'
import { driveSurface, type DrivenSurface } from './drivenSurface'
import type { Electrode } from './electrode'
import { solveLeakage } from './leakage'
import { segmentsOf } from './segments'
import type { GroundPoint, Soil } from './soil'
import { layered } from './soil'
import { sourcesOf } from './surfaceSources'

export interface ElectrodeSystem {
  /** Ohm: potential of electrode i per ampere of electrode j, the others present and floating. */
  readonly resistance: readonly (readonly number[])[]
  /** Volt at a surface point. */
  potentialAt(point: GroundPoint, currents: readonly Complex[]): Complex
  /** Volt per metre at a surface point, along x and y. */
  slopeAt(point: GroundPoint, currents: readonly Complex[]): { readonly x: Complex; readonly y: Complex }
  /** Ohm between a surface point and each electrode: the potential there per ampere of each. */
  mutualTo(point: GroundPoint): readonly number[]
  /** The surface under one set of currents, quick for many places within `reach` metres of every electrode. */
  drivenBy(currents: readonly Complex[], reach: number): DrivenSurface
  /** Around one electrode carrying its own ampere alone: what to add up, one table for each of its axes. */
  radialTables(electrodeIndex: number): readonly RadialTable[]
}

/** Ohm over distance from an axis. */
export interface RadialTable {
  readonly at: GroundPoint
  readonly radii: readonly number[]
  readonly ohm: readonly number[]
}

/**
 * Throws on soil or geometry that cannot be: both are checked where they come in.
 * @param perRod pieces of a rod, to see how the answer moves with them (segments.ts); not given in use
 */
export function solveElectrodes(soil: Soil, electrodes: readonly Electrode[], perRod?: number): ElectrodeSystem {
  checkElectrodes(electrodes)
  const ground = layered(soil)
  const segments = segmentsOf(ground, electrodes, perRod)
  const { soilResistance, resistance, share } = solveLeakage(ground, electrodes, segments)
  const count = electrodes.length
  const sourcesBy = once(() => electrodes.map((_, i) => sourcesOf(ground, segments, share, i)))
  const sources = once(() => sourcesBy().flat())
  const mutualTo = (point: GroundPoint): number[] => {
    const ohm = new Float64Array(count)
    for (const { x, y, field } of sources()) field.addPotential(apartOf(point, x, y), ohm)
    // no place is higher than the electrode that drives it; the moments hold that only on average over each segment
    return [...ohm].map((value, j) => Math.min(value, soilResistance[j]![j]!))
  }
  return {
    resistance,
    mutualTo,
    potentialAt: (point, currents) => weighted(mutualTo(point), currents),
    slopeAt: (point, currents) => {
      const alongX = new Float64Array(count)
      const alongY = new Float64Array(count)
      const outwards = new Float64Array(count)
      for (const { x, y, field } of sources()) {
        const apart = apartOf(point, x, y)
        if (apart === 0) continue
        outwards.fill(0)
        field.addSlope(apart, outwards)
        outwards.forEach((slope, j) => {
          alongX[j] = alongX[j]! + (slope * (point.x - x)) / apart
          alongY[j] = alongY[j]! + (slope * (point.y - y)) / apart
        })
      }
      return { x: weighted([...alongX], currents), y: weighted([...alongY], currents) }
    },
    drivenBy: (currents, reach) => {
      invariant(currents.length === count, `${count} electrode currents`, currents.length)
      return driveSurface(sources(), currents, reach)
    },
    radialTables: (electrodeIndex) => {
      const own = sourcesBy()[electrodeIndex]
      invariant(own !== undefined, 'an electrode of the system', electrodeIndex)
      return own.map(({ x, y, field }) => {
        return { at: { x, y }, radii: [...field.radii], ohm: [...field.ohm[electrodeIndex]!] }
      })
    },
  }
}

function apartOf(point: GroundPoint, x: number, y: number): number {
  const dx = point.x - x
  const dy = point.y - y
  return Math.sqrt(dx * dx + dy * dy)
}

function weighted(ohm: readonly number[], currents: readonly Complex[]): Complex {
  invariant(currents.length === ohm.length, `${ohm.length} electrode currents`, currents.length)
  let { re, im } = ZERO
  for (let j = 0; j < ohm.length; j++) {
    re += ohm[j]! * currents[j]!.re
    im += ohm[j]! * currents[j]!.im
  }
  return { re, im }
}

/** The tables wait for the first question about the surface: a circuit alone needs none. */
function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined
  return () => (made ??= { value: make() }).value
}
