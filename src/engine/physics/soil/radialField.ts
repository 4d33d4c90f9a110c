/**
 * The surface potential around one electrode as a table over the logarithm of the distance, cubic Hermite between its
 * points: made once from the exact sums, then a hundred thousand points cost a logarithm and a few products each.
 * One column per driven electrode, because each changes how this one leaks.
 */
import { exp, ln } from '../../math/portable'
import type { Segment } from './segments'
import type { LayeredSoil } from './soil'
import { discOhm, discSlope, surfaceOfSegment, type DiscPlace } from './surfaceField'

export interface RadialField {
  /** Distances of the table's points, metre. */
  readonly radii: Float64Array
  /** ohm[j][k]: potential at radii[k] per ampere of electrode j. */
  readonly ohm: readonly Float64Array[]
  /** Adds to `into[j]` the potential at a distance per ampere of electrode j. */
  addPotential(apart: number, into: Float64Array): void
  /** Adds to `into[j]` the change per metre outwards. */
  addSlope(apart: number, into: Float64Array): void
  /** It is one of many alike: the field of one ampere, and what leaves here per ampere of electrode j. */
  readonly scaled?: { readonly unit: RadialField; readonly share: Float64Array }
}

/** Ratio of neighbouring distances e^STEP: the interpolation error stays below 1e-4. */
const STEP = 0.4
const FARTHEST = 2000

/** @param segments of one upright electrode; @param share[j][s] ampere of segments[s] per ampere of electrode j */
export function radialField(
  soil: LayeredSoil,
  segments: readonly Segment[],
  share: readonly Float64Array[],
): RadialField {
  const nearest = segments[0]!.radius
  const first = ln(nearest)
  const count = Math.ceil((ln(FARTHEST) - first) / STEP) + 1
  const radii = Float64Array.from({ length: count }, (_, k) => (k === 0 ? nearest : exp(first + k * STEP)))
  const ohm = share.map(() => new Float64Array(count))
  const rise = share.map(() => new Float64Array(count))
  const exact = new Float64Array(2)
  radii.forEach((apart, k) => {
    segments.forEach((segment, s) => {
      surfaceOfSegment(soil, segment, apart, exact)
      for (let j = 0; j < share.length; j++) {
        ohm[j]![k] = ohm[j]![k]! + share[j]![s]! * exact[0]!
        rise[j]![k] = rise[j]![k]! + share[j]![s]! * exact[1]! * apart * STEP
      }
    })
  })
  return { radii, ohm, ...interpolated(first, count, ohm, rise) }
}

function interpolated(
  first: number,
  count: number,
  ohm: readonly Float64Array[],
  rise: readonly Float64Array[],
): Pick<RadialField, 'addPotential' | 'addSlope'> {
  const place = (apart: number): number => Math.max(0, (ln(apart) - first) / STEP)
  return {
    addPotential: (apart, into) => {
      const at = place(Math.max(apart, 1e-9))
      const k = Math.min(Math.floor(at), count - 2)
      if (at > count - 1) return addFar(apart, ohm, count, first, into)
      const t = at - k
      const t2 = t * t
      const t3 = t2 * t
      for (let j = 0; j < into.length; j++) {
        into[j] =
          into[j]! +
          (2 * t3 - 3 * t2 + 1) * ohm[j]![k]! +
          (t3 - 2 * t2 + t) * rise[j]![k]! +
          (3 * t2 - 2 * t3) * ohm[j]![k + 1]! +
          (t3 - t2) * rise[j]![k + 1]!
      }
    },
    addSlope: (apart, into) => {
      const at = place(Math.max(apart, 1e-9))
      if (at === 0) return
      const k = Math.min(Math.floor(at), count - 2)
      const t = Math.min(at - k, 1)
      const t2 = t * t
      for (let j = 0; j < into.length; j++) {
        const change =
          6 * (t2 - t) * (ohm[j]![k]! - ohm[j]![k + 1]!) +
          (3 * t2 - 4 * t + 1) * rise[j]![k]! +
          (3 * t2 - 2 * t) * rise[j]![k + 1]!
        into[j] = into[j]! + change / (STEP * apart)
      }
    },
  }
}

/** Past the table every electrode is a point: 1/distance. */
function addFar(apart: number, ohm: readonly Float64Array[], count: number, first: number, into: Float64Array): void {
  const edge = exp(first + (count - 1) * STEP)
  for (let j = 0; j < into.length; j++) into[j] = into[j]! + (ohm[j]![count - 1]! * edge) / apart
}

/**
 * A disc's own field is a closed form with a steep rim, so only its images are summed here, point by point.
 * Inside the rim of one on the surface that has the disc's potential and no slope.
 */
export function discField(soil: LayeredSoil, disc: DiscPlace): RadialField {
  const rim = disc.depth > 0 ? 0 : disc.radius
  const first = ln(disc.radius)
  const count = Math.ceil((ln(FARTHEST) - first) / STEP) + 1
  const radii = Float64Array.from({ length: count }, (_, k) => (k === 0 ? disc.radius : exp(first + k * STEP)))
  return {
    radii,
    ohm: [radii.map((apart) => discOhm(soil, disc, apart))],
    addPotential: (apart, into) => {
      into[0] = into[0]! + discOhm(soil, disc, apart)
    },
    addSlope: (apart, into) => {
      if (apart > rim) into[0] = into[0]! + discSlope(soil, disc, apart)
    },
  }
}

/** One of many alike: `unit` is the field of one ampere, `share[j]` what leaves here per ampere of electrode j. */
export function scaledField(unit: RadialField, share: Float64Array): RadialField {
  const one = new Float64Array(1)
  const add = (into: Float64Array): void => {
    for (let j = 0; j < into.length; j++) into[j] = into[j]! + share[j]! * one[0]!
  }
  return {
    radii: unit.radii,
    scaled: { unit, share },
    ohm: [...share].map((ampere) => unit.ohm[0]!.map((ohm) => ampere * ohm)),
    addPotential: (apart, into) => {
      one[0] = 0
      unit.addPotential(apart, one)
      add(into)
    },
    addSlope: (apart, into) => {
      one[0] = 0
      unit.addSlope(apart, one)
      add(into)
    },
  }
}
