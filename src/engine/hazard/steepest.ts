/**
 * Along which line the ground falls most at a point: feet are set along it. Slopes are phasors, so the tip of the slope
 * draws an ellipse in the ground plane within a cycle; its long axis is the line with the largest rms slope.
 */
import { atan2, cos, sin } from '../math/portable'
import type { Complex } from '../math/complex'
import type { GroundPoint } from '../physics/soil'

/** Unit vector; along x where the ground is level. Its sign means nothing. */
export function steepestDirection(slope: { readonly x: Complex; readonly y: Complex }): GroundPoint {
  const xx = slope.x.re * slope.x.re + slope.x.im * slope.x.im
  const yy = slope.y.re * slope.y.re + slope.y.im * slope.y.im
  const xy = slope.x.re * slope.y.re + slope.x.im * slope.y.im
  if (xx + yy === 0) return { x: 1, y: 0 }
  const turn = atan2(2 * xy, xx - yy) / 2
  return { x: cos(turn), y: sin(turn) }
}
