/** Conductors above ground: x across, y up, metre. */
import { invariant } from '../../units/invariant'

export interface LinePlace {
  readonly x: number
  /** Height above ground. */
  readonly y: number
}

export function distanceBetween(a: LinePlace, b: LinePlace): number {
  const dx = a.x - b.x
  const dy = a.y - b.y
  return Math.sqrt(dx * dx + dy * dy)
}

/** Distance to the other conductor's mirror image in the ground. */
export function imageDistance(a: LinePlace, b: LinePlace): number {
  return distanceBetween(a, { x: b.x, y: -b.y })
}

/** Throws on conductors in the ground or inside each other. */
export function checkPlaces(conductors: readonly (LinePlace & { readonly size: number })[]): void {
  conductors.forEach((a, i) => {
    invariant(a.size > 0 && a.y > a.size && Number.isFinite(a.x) && Number.isFinite(a.y), 'a conductor above ground', i)
    for (const b of conductors.slice(0, i)) {
      invariant(distanceBetween(a, b) > Math.max(a.size, b.size), 'conductors apart from each other', i)
    }
  })
}
