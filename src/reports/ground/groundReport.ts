/**
 * What the soil does at one instant, as data with units in its names: electrodes with their currents, the matrix between
 * them, the potential along a line or over a rectangle of the surface. Rms magnitudes and angles to remote earth; a
 * current is positive into the soil. People's feet are left out: they change nothing that is drawn here.
 */
import { angle, magnitude, PI, type Complex, type GroundPoint, type StampedInstant } from '../../engine'

export interface GroundReport {
  readonly livening: string
  readonly corner: string
  readonly fromS: number
  readonly toS: number
  readonly electrodes: readonly {
    readonly id: string
    readonly xM: number
    readonly yM: number
    readonly radiusM: number
    readonly voltageV: number
    readonly voltageAngleDeg: number
    readonly currentA: number
    readonly currentAngleDeg: number
  }[]
  /** Potential of one electrode per ampere of another, in the order of `electrodes`. */
  readonly mutualOhm: readonly (readonly number[])[]
  readonly surface: readonly SurfacePoint[]
}

export interface SurfacePoint {
  readonly xM: number
  readonly yM: number
  readonly voltageV: number
  readonly angleDeg: number
}

export function groundReport(instant: StampedInstant, places: readonly GroundPoint[]): GroundReport {
  const { livening, corner, from, to, ground } = instant
  return {
    livening,
    corner,
    fromS: from,
    toS: to,
    electrodes: ground.electrodes.map(({ node, at, radius, voltage, current }) => ({
      id: node,
      xM: at.x,
      yM: at.y,
      radiusM: radius,
      voltageV: magnitude(voltage),
      voltageAngleDeg: degrees(voltage),
      currentA: magnitude(current),
      currentAngleDeg: degrees(current),
    })),
    mutualOhm: ground.resistance,
    surface: places.map((at) => {
      const voltage = ground.potentialAt(at)
      return { xM: at.x, yM: at.y, voltageV: magnitude(voltage), angleDeg: degrees(voltage) }
    }),
  }
}

function degrees(value: Complex): number {
  return (angle(value) * 180) / PI
}

/** The surface as comma-separated values, one place a line. */
export function surfaceCsv({ surface }: GroundReport): string {
  const lines = surface.map((it) => [it.xM, it.yM, it.voltageV, it.angleDeg].join(','))
  return `${['xM,yM,voltageV,angleDeg', ...lines].join('\n')}\n`
}
