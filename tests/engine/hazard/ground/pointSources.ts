/** Ground whose answers can be worked out by hand: currents that enter even soil in points, V = Σ ρI/2πr. */
import { complex } from '../../../../src/engine/math/complex'
import type { Surface } from '../../../../src/engine/hazard/ground/pace'
import type { Electrode, GroundPoint } from '../../../../src/engine/physics/soil'

export interface PointSource extends GroundPoint {
  /** ρI/2π, volt metre. */
  readonly strength: number
}

export function pointSurface(sources: readonly PointSource[]): Surface {
  return {
    potentialAt: ({ x, y }) =>
      complex(sources.reduce((sum, it) => sum + it.strength / Math.hypot(x - it.x, y - it.y), 0)),
    slopeAt: ({ x, y }) => {
      const along = (of: 'x' | 'y') =>
        sources.reduce((sum, it) => {
          const away = { x: x - it.x, y: y - it.y }
          return sum - (it.strength * away[of]) / Math.hypot(away.x, away.y) ** 3
        }, 0)
      return { x: complex(along('x')), y: complex(along('y')) }
    },
  }
}

/** s/r - s/(r + 1) = t: as far as a pace outward from a point source is more than t. */
export function handRadius(strength: number, tolerable: number): number {
  return (-1 + Math.sqrt(1 + (4 * strength) / tolerable)) / 2
}

export function discAt(id: string, { x, y }: GroundPoint, radius = 0.01): Electrode {
  return { id, kind: 'disc', at: { x, y }, radius }
}
