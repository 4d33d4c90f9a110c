/** What carries current into the soil: vertical rods, concrete butts, discs on the surface. Metre, ohm metre. */
import { invariant } from '../../units/invariant'
import type { GroundPoint } from './soil'
import { distanceBetween } from './soil'

export type Electrode = Rod | Disc | Encased

export interface Rod {
  readonly id: string
  readonly kind: 'rod'
  readonly at: GroundPoint
  /** Depth of its upper end. */
  readonly top: number
  readonly length: number
  readonly radius: number
}

/** Flat on the surface, one potential over its whole area. */
export interface Disc {
  readonly id: string
  readonly kind: 'disc'
  readonly at: GroundPoint
  readonly radius: number
}

/** Reinforcement in concrete: a rod of `radius` in the soil, and the shell of concrete around the core in series. */
export interface Encased {
  readonly id: string
  readonly kind: 'encased'
  readonly at: GroundPoint
  readonly top: number
  readonly length: number
  readonly radius: number
  readonly coreRadius: number
  readonly encasementResistivity: number
}

export type Vertical = Rod | Encased

export function isVertical(electrode: Electrode): electrode is Vertical {
  return electrode.kind !== 'disc'
}

/** Throws on sizes that are not positive, on depths above the ground and on electrodes inside each other. */
export function checkElectrodes(electrodes: readonly Electrode[]): void {
  const ids = new Set<string>()
  electrodes.forEach((electrode, i) => {
    invariant(!ids.has(electrode.id), 'each electrode id once', electrode.id)
    ids.add(electrode.id)
    checkOne(electrode)
    for (const other of electrodes.slice(0, i)) {
      const gap = distanceBetween(electrode.at, other.at) - electrode.radius - other.radius
      invariant(gap > 0, `a gap between ${other.id} and ${electrode.id}`, gap)
    }
  })
}

function checkOne(electrode: Electrode): void {
  const { id, at, radius } = electrode
  invariant(Number.isFinite(at.x) && Number.isFinite(at.y), `a place for ${id}`, at.x, at.y)
  invariant(radius > 0 && Number.isFinite(radius), `a radius above 0 for ${id}`, radius)
  if (!isVertical(electrode)) return
  invariant(
    electrode.top >= 0 && Number.isFinite(electrode.top),
    `a top at or below the surface for ${id}`,
    electrode.top,
  )
  invariant(
    electrode.length >= 2 * radius && Number.isFinite(electrode.length),
    `a length of two radii or more for ${id}`,
    electrode.length,
  )
  if (electrode.kind !== 'encased') return
  const isInside = electrode.coreRadius > 0 && electrode.coreRadius < radius
  invariant(isInside, `a core inside the concrete of ${id}`, electrode.coreRadius)
  invariant(
    electrode.encasementResistivity > 0,
    `a concrete resistivity above 0 for ${id}`,
    electrode.encasementResistivity,
  )
}
