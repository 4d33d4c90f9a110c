/**
 * What the soil does at one instant, as data with units in its names: electrodes with their currents and safe distances,
 * the matrix between them, where a pace is more than the public tolerates, whether the barrier encloses it, what a hand
 * feels, the potential along a line or over a rectangle of the surface. Rms magnitudes and angles to remote earth; a
 * current is positive into the soil. People's feet are left out: they change nothing that is drawn here.
 */
import { angle, magnitude, PI } from '../../engine'
import type { Complex, GroundHazard, GroundPoint, StampedInstant } from '../../engine'

export interface GroundReport {
  readonly format: 'earths-on/ground'
  readonly version: 1
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
    /** From its surface: as far as a pace is more than tolerable for its sake; 0 where none is. */
    readonly safeDistanceM: number
    /** Where that pace begins. */
    readonly safeDistanceAt: Place | null
  }[]
  /** Potential of one electrode per ampere of another, in the order of `electrodes`. */
  readonly mutualOhm: readonly (readonly number[])[]
  /** For the public: 50 kg, no shoes, the longest shot; above 5 s the 5 s values, beyond the formula's range. */
  readonly tolerable: {
    readonly stepV: number
    readonly touchV: number
    readonly durationS: number | 'uncleared'
    readonly isBeyondRange: boolean
  }
  /** Outlines of where a pace is more than tolerable; those that run clockwise are holes. */
  readonly tolerableContour: readonly (readonly Place[])[]
  readonly barrier: {
    readonly isEnclosing: boolean
    readonly sticksOut: readonly Place[]
    /** The worst pace outwards from the barrier; null where none stands. */
    readonly worstPace: { readonly from: Place; readonly to: Place; readonly voltageV: number } | null
  }
  /** The worst on each thing within reach: its own voltage less that of the soil under the feet. */
  readonly touches: readonly {
    readonly id: string
    readonly voltageV: number
    readonly touchV: number
    readonly feet: Place
    readonly isTolerable: boolean
  }[]
  readonly surface: readonly SurfacePoint[]
}

export interface Place {
  readonly xM: number
  readonly yM: number
}

export interface SurfacePoint extends Place {
  readonly voltageV: number
  readonly angleDeg: number
}

export function groundReport(
  instant: StampedInstant,
  hazard: GroundHazard,
  places: readonly GroundPoint[],
): GroundReport {
  const { livening, corner, from, to, ground } = instant
  return {
    format: 'earths-on/ground',
    version: 1,
    livening,
    corner,
    fromS: from,
    toS: to,
    electrodes: ground.electrodes.map(({ node, at, radius, voltage, current }, i) => ({
      id: node,
      xM: at.x,
      yM: at.y,
      radiusM: radius,
      voltageV: magnitude(voltage),
      voltageAngleDeg: degrees(voltage),
      currentA: magnitude(current),
      currentAngleDeg: degrees(current),
      safeDistanceM: hazard.safeDistances[i]!.distance,
      safeDistanceAt: placeOrNull(hazard.safeDistances[i]!.at),
    })),
    mutualOhm: ground.resistance,
    ...hazardOf(hazard),
    surface: places.map((at) => {
      const voltage = ground.potentialAt(at)
      return { xM: at.x, yM: at.y, voltageV: magnitude(voltage), angleDeg: degrees(voltage) }
    }),
  }
}

function hazardOf(hazard: GroundHazard): Pick<GroundReport, 'tolerable' | 'tolerableContour' | 'barrier' | 'touches'> {
  const { duration, cleared, beyondRange, tolerableStep, tolerableTouch, contour, barrier, touches } = hazard
  const worst = barrier.worstAlong
  return {
    tolerable: {
      stepV: tolerableStep,
      touchV: tolerableTouch,
      durationS: cleared ? duration : 'uncleared',
      isBeyondRange: beyondRange,
    },
    tolerableContour: contour.map((ring) => ring.map(place)),
    barrier: {
      isEnclosing: barrier.isEnclosing,
      sticksOut: barrier.sticksOut.map(place),
      worstPace: worst && { from: place(worst.at), to: place(worst.far), voltageV: worst.voltage },
    },
    touches: touches.map(({ node, thingVoltage, voltage, feet }) => ({
      id: node,
      voltageV: thingVoltage,
      touchV: voltage,
      feet: place(feet),
      isTolerable: voltage < tolerableTouch,
    })),
  }
}

function place({ x, y }: GroundPoint): Place {
  return { xM: x, yM: y }
}

function placeOrNull(at: GroundPoint | null): Place | null {
  return at && place(at)
}

function degrees(value: Complex): number {
  return (angle(value) * 180) / PI
}

/** The surface as comma-separated values, one place a line. */
export function surfaceCsv({ surface }: GroundReport): string {
  const lines = surface.map((it) => [it.xM, it.yM, it.voltageV, it.angleDeg].join(','))
  return `${['xM,yM,voltageV,angleDeg', ...lines].join('\n')}\n`
}
