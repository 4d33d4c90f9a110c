/** The ground below a site: one or two horizontal layers of even resistivity, ohm metre, down from a flat surface. */
import { invariant } from '../../units/invariant'
import type { ImageSeries } from './imageSeries'
import { imageSeries } from './imageSeries'

export interface Layer {
  /** Ohm metre. */
  readonly resistivity: number
  /** Metre; the last layer goes down without end and has none. */
  readonly thickness?: number
}

export interface Soil {
  /** One or two, from the top. */
  readonly layers: readonly Layer[]
}

/** Metre, in the plane of the surface. */
export interface GroundPoint {
  readonly x: number
  readonly y: number
}

/** A soil as the formulas want it. */
export interface LayeredSoil {
  readonly upper: number
  readonly lower: number
  /** Depth of the boundary, metre; Infinity in even soil. */
  readonly boundary: number
  /** Reflection factor K = (ρ2 - ρ1) / (ρ2 + ρ1). */
  readonly reflection: number
  /** Σ Kⁿ over the images n = 1 … of the surface in the boundary. */
  readonly images: ImageSeries
}

/** Throws on soil that is not one or two layers of positive resistivity with a thickness for the upper one. */
export function layered(soil: Soil): LayeredSoil {
  const [top, bottom] = soil.layers
  invariant(top !== undefined && soil.layers.length <= 2, 'one or two layers', soil.layers.length)
  for (const layer of soil.layers) {
    invariant(layer.resistivity > 0 && Number.isFinite(layer.resistivity), 'a resistivity above 0', layer.resistivity)
  }
  if (bottom === undefined || bottom.resistivity === top.resistivity) {
    return {
      upper: top.resistivity,
      lower: top.resistivity,
      boundary: Infinity,
      reflection: 0,
      images: imageSeries(0, 0),
    }
  }
  const thickness = top.thickness ?? Number.NaN
  invariant(thickness > 0 && Number.isFinite(thickness), 'an upper layer with a thickness above 0', top.thickness)
  const reflection = (bottom.resistivity - top.resistivity) / (bottom.resistivity + top.resistivity)
  return {
    upper: top.resistivity,
    lower: bottom.resistivity,
    boundary: thickness,
    reflection,
    images: imageSeries(reflection, thickness),
  }
}

export function distanceBetween(a: GroundPoint, b: GroundPoint): number {
  const dx = b.x - a.x
  const dy = b.y - a.y
  return Math.sqrt(dx * dx + dy * dy)
}
