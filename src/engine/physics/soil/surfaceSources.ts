/**
 * What raises the surface, axis by axis: the field of an upright electrode or of a disc is the same all round it, and a
 * wire is a row of points below the surface, as close to each other as they are deep. So every surface potential is a sum
 * of functions of one distance.
 */
import type { RadialField } from './radialField'
import { discField, radialField, scaledField } from './radialField'
import type { Segment } from './segments'
import type { LayeredSoil } from './soil'

export interface SurfaceSource {
  readonly x: number
  readonly y: number
  /** Inside this distance the surface is at one potential: the radius of a disc that lies on it. */
  readonly rim: number
  readonly field: RadialField
}

/** So many points stand for one piece of wire at most, where it comes up to the surface. */
const MOST_POINTS = 16

/** @param share[j][s] ampere of segments[s] per ampere of electrode j; @param electrode whose sources are wanted */
export function sourcesOf(
  soil: LayeredSoil,
  segments: readonly Segment[],
  share: readonly Float64Array[],
  electrode: number,
): readonly SurfaceSource[] {
  const own = segments.flatMap((segment, s) => (segment.electrode === electrode ? [s] : []))
  const shareOf = (places: readonly number[]) => share.map((currents) => Float64Array.from(places, (s) => currents[s]!))
  const discs = own.filter((s) => segments[s]!.isDisc)
  const uprights = axes(segments, own)
  const wires = own.filter((s) => segments[s]!.along !== undefined)
  return [
    ...discSources(soil, segments, discs, share),
    ...uprights.map((places): SurfaceSource => {
      const pieces = places.map((s) => segments[s]!)
      return { x: pieces[0]!.x, y: pieces[0]!.y, rim: 0, field: radialField(soil, pieces, shareOf(places)) }
    }),
    ...wireSources(soil, segments, wires, share),
  ]
}

function discSources(
  soil: LayeredSoil,
  segments: readonly Segment[],
  discs: readonly number[],
  share: readonly Float64Array[],
): readonly SurfaceSource[] {
  const bySize = new Map<string, RadialField>()
  return discs.map((s) => {
    const disc = segments[s]!
    const size = `${disc.radius} ${disc.depth}`
    const unit = bySize.get(size) ?? discField(soil, disc)
    bySize.set(size, unit)
    const weights = Float64Array.from(share, (currents) => currents[s]!)
    return { x: disc.x, y: disc.y, rim: disc.depth > 0 ? 0 : disc.radius, field: scaledField(unit, weights) }
  })
}

/** Segments of uprights by the axis that they are on, in the order in which they were cut. */
function axes(segments: readonly Segment[], own: readonly number[]): readonly (readonly number[])[] {
  const byAxis = new Map<string, number[]>()
  for (const s of own) {
    const { x, y, isDisc, along } = segments[s]!
    if (isDisc || along !== undefined) continue
    const axis = `${x} ${y}`
    const places = byAxis.get(axis) ?? []
    places.push(s)
    byAxis.set(axis, places)
  }
  return [...byAxis.values()]
}

function wireSources(
  soil: LayeredSoil,
  segments: readonly Segment[],
  wires: readonly number[],
  share: readonly Float64Array[],
): readonly SurfaceSource[] {
  const byDepth = new Map<string, RadialField>()
  const fieldAt = (depth: number, { radius, isLower }: Segment): RadialField => {
    const key = `${depth} ${radius} ${isLower}`
    const known = byDepth.get(key)
    if (known !== undefined) return known
    const point = { electrode: 0, x: 0, y: 0, radius, depth, length: 0, isLower, isDisc: false }
    const made = radialField(soil, [point], [Float64Array.of(1)])
    byDepth.set(key, made)
    return made
  }
  return wires.flatMap((s) => {
    const segment = segments[s]!
    const { along, length, radius } = segment
    const rise = along?.z ?? 0
    const highest = Math.max(radius, segment.depth - 0.5 * length * Math.abs(rise))
    const count = Math.min(MOST_POINTS, Math.max(1, Math.ceil(length / highest)))
    return Array.from({ length: count }, (_, k): SurfaceSource => {
      const at = ((k + 0.5) / count - 0.5) * length
      const depth = Math.max(radius, segment.depth + at * rise)
      const weights = Float64Array.from(share, (currents) => currents[s]! / count)
      return {
        x: segment.x + at * (along?.x ?? 0),
        y: segment.y + at * (along?.y ?? 0),
        rim: 0,
        field: scaledField(fieldAt(depth, segment), weights),
      }
    })
  })
}
