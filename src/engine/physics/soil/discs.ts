/** A foot on the ground: a disc on the surface, alone and against another. Ohm. */
import { invariant } from '../../units/invariant'
import { mutualOhm } from './layeredKernel'
import type { Segment } from './segments'
import type { GroundPoint, Soil } from './soil'
import { layered } from './soil'

/** Resistance of a disc to remote earth: ρ/4b in even soil (IEEE Std 80 clause 7.4: b = 0.08 m gives about 3ρ). */
export function discSelf(soil: Soil, radius: number): number {
  const disc = discAt({ x: 0, y: 0 }, radius, 0)
  return mutualOhm(layered(soil), disc, disc)
}

/**
 * Potential of one disc per ampere through another of the same radius. Closer than √2 radii it no longer rises: two
 * feet on one spot are one foot, and the answer stays below discSelf.
 */
export function discMutual(soil: Soil, a: GroundPoint, b: GroundPoint, radius: number): number {
  return mutualOhm(layered(soil), discAt(a, radius, 0), discAt(b, radius, 1))
}

function discAt(at: GroundPoint, radius: number, electrode: number): Segment {
  invariant(radius > 0 && Number.isFinite(radius), 'a radius above 0', radius)
  return { electrode, x: at.x, y: at.y, radius, depth: 0, length: 0, isLower: false, isDisc: true }
}
