/**
 * All electrodes of a site in one soil: their mutual resistances, and the potential that their currents leave anywhere
 * on the surface. Feet are no electrodes here: where people stand changes nothing in the solved system.
 * Currents are positive into the soil.
 */
import type { Complex } from '../../math/complex'
import { ZERO } from '../../math/complex'
import { invariant } from '../../units/invariant'
import type { Electrode } from './electrode'
import { checkElectrodes, isVertical } from './electrode'
import { solveLeakage } from './leakage'
import type { RadialField } from './radialField'
import { discField, radialField } from './radialField'
import { segmentsOf } from './segments'
import type { GroundPoint, Soil } from './soil'
import { layered } from './soil'

export interface ElectrodeSystem {
  /** Ohm: potential of electrode i per ampere of electrode j, the others present and floating. */
  readonly resistance: readonly (readonly number[])[]
  /** Volt at a surface point. */
  potentialAt(point: GroundPoint, currents: readonly Complex[]): Complex
  /** Volt per metre at a surface point, along x and y. */
  slopeAt(point: GroundPoint, currents: readonly Complex[]): { readonly x: Complex; readonly y: Complex }
  /** Ohm between a surface point and each electrode: the potential there per ampere of each. */
  mutualTo(point: GroundPoint): readonly number[]
  /** Ohm over distance around one vertical electrode carrying its own current alone. */
  radialTable(electrodeIndex: number): { readonly radii: readonly number[]; readonly ohm: readonly number[] }
}

/** Throws on soil or geometry that cannot be: both are checked where they come in. */
export function solveElectrodes(soil: Soil, electrodes: readonly Electrode[]): ElectrodeSystem {
  checkElectrodes(electrodes)
  const ground = layered(soil)
  const segments = segmentsOf(ground, electrodes)
  const { soilResistance, resistance, share } = solveLeakage(ground, electrodes, segments)
  const fields = once(() =>
    electrodes.map((electrode, i): RadialField => {
      const places = segments.flatMap((segment, s) => (segment.electrode === i ? [s] : []))
      const own = places.map((s) => segments[s]!)
      const ownShare = share.map((currents) => Float64Array.from(places, (s) => currents[s]!))
      return isVertical(electrode) ? radialField(ground, own, ownShare) : discField(ground, electrode.radius, ownShare)
    }),
  )
  const distanceTo = (point: GroundPoint, electrode: Electrode): number => {
    const dx = point.x - electrode.at.x
    const dy = point.y - electrode.at.y
    return Math.sqrt(dx * dx + dy * dy)
  }
  const mutualTo = (point: GroundPoint): number[] => {
    const ohm = new Float64Array(electrodes.length)
    fields().forEach((field, i) => field.addPotential(distanceTo(point, electrodes[i]!), ohm))
    // no place is higher than the electrode that drives it; the moments hold that only on average over each segment
    return [...ohm].map((value, j) => Math.min(value, soilResistance[j]![j]!))
  }
  return {
    resistance,
    mutualTo,
    potentialAt: (point, currents) => weighted(mutualTo(point), currents),
    slopeAt: (point, currents) => {
      const alongX = new Float64Array(electrodes.length)
      const alongY = new Float64Array(electrodes.length)
      fields().forEach((field, i) => {
        const { at } = electrodes[i]!
        const apart = distanceTo(point, electrodes[i]!)
        if (apart === 0) return
        const outwards = new Float64Array(electrodes.length)
        field.addSlope(apart, outwards)
        outwards.forEach((slope, j) => {
          alongX[j] = alongX[j]! + (slope * (point.x - at.x)) / apart
          alongY[j] = alongY[j]! + (slope * (point.y - at.y)) / apart
        })
      })
      return { x: weighted([...alongX], currents), y: weighted([...alongY], currents) }
    },
    radialTable: (electrodeIndex) => {
      const electrode = electrodes[electrodeIndex]
      invariant(electrode !== undefined && isVertical(electrode), 'a vertical electrode', electrodeIndex)
      const field = fields()[electrodeIndex]!
      return { radii: [...field.radii], ohm: [...field.ohm[electrodeIndex]!] }
    },
  }
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
