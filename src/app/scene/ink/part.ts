/** Pieces that builders hand over and batches bake: geometry in scene metres, what it is made of, what one picks by it. */
import type { BufferGeometry, Vector3 } from 'three'
import type { Slot } from './palette'

/** A solid piece. */
export interface Part {
  readonly geometry: BufferGeometry
  readonly slot: Slot
  /** Thing, item or person picked by it; empty for scenery. */
  readonly id: string
  /** Metres between neighbouring edges: where that is a few pixels the ink fades out, so that far things stay clean. */
  readonly detail: number
  /** Edges sharper than this many degrees are drawn. */
  readonly crease: number
}

/** A round wire, rope or lead: never thinner than minPx on the screen. */
export interface Wire {
  readonly points: readonly Vector3[]
  readonly radius: number
  readonly slot: Slot
  readonly id: string
  readonly minPx: number
  readonly sides: number
}

/** A current path: dashes move from the first point to the last. */
export interface Flow {
  readonly points: readonly Vector3[]
  readonly radius: number
  readonly amperes: number
}

/** What is aimed at: thick segments in scene metres. */
export interface Hit {
  readonly id: string
  readonly segments: readonly (readonly [Vector3, Vector3])[]
  readonly radius: number
}

/** What a view of one thing gives: solids, wires, what to aim at, and where its plate is joined. */
export interface Built {
  readonly parts: readonly Part[]
  readonly wires: readonly Wire[]
  readonly hits: readonly Hit[]
}

export const part = (geometry: BufferGeometry, slot: Slot, id = '', detail = 0.12, crease = 38): Part => ({
  geometry,
  slot,
  id,
  detail,
  crease,
})

export const wire = (
  points: readonly Vector3[],
  radius: number,
  slot: Slot,
  id = '',
  minPx = 1.2,
  sides = 6,
): Wire => ({
  points,
  radius,
  slot,
  id,
  minPx,
  sides,
})

export const join = (...pieces: readonly Built[]): Built => ({
  parts: pieces.flatMap((piece) => piece.parts),
  wires: pieces.flatMap((piece) => piece.wires),
  hits: pieces.flatMap((piece) => piece.hits),
})

export const built = (parts: readonly Part[], wires: readonly Wire[] = [], hits: readonly Hit[] = []): Built => ({
  parts,
  wires,
  hits,
})

/** A hit along a line of points. */
export function hitAlong(id: string, points: readonly Vector3[], radius: number, every = 4): Hit {
  const segments: [Vector3, Vector3][] = []
  for (let i = 0; i < points.length - 1; i += every)
    segments.push([points[i]!, points[Math.min(i + every, points.length - 1)]!])
  return { id, segments, radius }
}
