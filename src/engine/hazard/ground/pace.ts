/**
 * A pace on the ground: one foot at a place, the other 1 m further out, down the steepest line. This one pace is what
 * the contour, the safe distance and the check of the barrier go by, and what the bystander takes.
 */
import { magnitude, subtract, type Complex } from '../../math/complex'
import type { GroundPoint } from '../../physics/soil'
import { stanceWidth } from '../bodies/feet'
import { steepestDirection } from '../steepest'

/** The surface under the currents of one instant. */
export interface Surface {
  potentialAt(at: GroundPoint): Complex
  slopeAt(at: GroundPoint): { readonly x: Complex; readonly y: Complex }
}

export interface Pace {
  readonly at: GroundPoint
  readonly far: GroundPoint
  /** Volt, rms, between the two places with nobody there. */
  readonly voltage: number
}

export function paceFrom(surface: Surface, at: GroundPoint): Pace {
  const here = surface.potentialAt(at)
  const slope = surface.slopeAt(at)
  const along = steepestDirection(slope)
  const length = fallAlong(slope, here, along) * stanceWidth.pace
  const far = { x: at.x + length * along.x, y: at.y + length * along.y }
  return { at, far, voltage: magnitude(subtract(here, surface.potentialAt(far))) }
}

/** 1 when the potential falls along the direction, -1 when it rises. */
export function fallAlong(slope: { x: Complex; y: Complex }, here: Complex, along: GroundPoint): 1 | -1 {
  const re = slope.x.re * along.x + slope.y.re * along.y
  const im = slope.x.im * along.x + slope.y.im * along.y
  return re * here.re + im * here.im <= 0 ? 1 : -1
}
