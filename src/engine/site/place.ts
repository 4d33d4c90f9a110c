/**
 * Where things and people are. Ground plane: x east, y north, metres, the worked pole at the origin; heights in metres
 * above ground.
 */
import type { GroundPoint } from '../physics/soil'

export type { GroundPoint }

/** Stations on the pole, from the ground up. `below-lv` is within reach of the low-voltage wires, not of the HV. */
export type PoleStation = 'foot' | 'below-lv' | 'above-lv'

export type Place =
  | { readonly kind: 'ground'; readonly at: GroundPoint }
  | { readonly kind: 'pole'; readonly station: PoleStation; readonly pole?: 'next' }
  | { readonly kind: 'switch'; readonly id: string }
  /** In the bucket of the truck's boom, beside the pole's top. */
  | { readonly kind: 'bucket' }

/** Distance over the ground, metres. */
export function distance(a: GroundPoint, b: GroundPoint): number {
  const x = a.x - b.x
  const y = a.y - b.y
  return Math.sqrt(x * x + y * y)
}

/** The point lies inside the closed outline (even-odd rule). */
export function isInside(outline: readonly GroundPoint[], at: GroundPoint): boolean {
  let inside = false
  outline.forEach((corner, index) => {
    const next = outline[(index + 1) % outline.length] ?? corner
    const straddles = corner.y > at.y !== next.y > at.y
    if (!straddles) return
    const crossing = corner.x + ((at.y - corner.y) / (next.y - corner.y)) * (next.x - corner.x)
    if (at.x < crossing) inside = !inside
  })
  return inside
}
