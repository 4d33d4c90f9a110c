/** How much ground a plan shows, and where the pole stands on it. */
import type { Point } from './pen'

export interface PlanFrame {
  readonly width: number
  readonly height: number
  readonly perMetre: number
  /** Pixels of the pole from the upper left corner. */
  readonly origin: Point
}
