/** Does the barrier enclose every place where a pace is more than tolerable, and if not, what sticks out. */
import type { GroundPoint } from '../../physics/soil'
import { isInside } from '../../site/place'
import { outlinePoints } from '../outline'
import { paceFrom, type Pace, type Surface } from './pace'

export interface BarrierCheck {
  readonly isEnclosing: boolean
  /** Places outside the barrier, or on it, where a pace is more than tolerable: on the rim of the zone, and the barrier's own. */
  readonly sticksOut: readonly GroundPoint[]
  /** The worst pace outwards from the barrier itself; null without a barrier. */
  readonly worstAlong: Pace | null
}

/** Metre between two places along the barrier. */
const STEP = 0.25

/** @param contour outlines of the zone; @param barrier corners in order, null where none stands */
export function barrierCheck(
  surface: Surface,
  tolerable: number,
  contour: readonly (readonly GroundPoint[])[],
  barrier: readonly GroundPoint[] | null,
): BarrierCheck {
  const rim = contour.flat().filter((at) => barrier === null || !isInside(barrier, at))
  const paces = barrier === null ? [] : outlinePoints(barrier, STEP).map((at) => paceFrom(surface, at))
  const along = paces.filter(({ voltage }) => voltage >= tolerable).map(({ at }) => at)
  const sticksOut = [...rim, ...along]
  return { isEnclosing: sticksOut.length === 0, sticksOut, worstAlong: worstOf(paces) }
}

function worstOf(paces: readonly Pace[]): Pace | null {
  return paces.reduce<Pace | null>((worst, pace) => (worst && worst.voltage >= pace.voltage ? worst : pace), null)
}
