/**
 * Heights of the stations up a pole, metres, from where its wires hang: below the low voltage with the shoulders 0.4 m under
 * its wires, at the top with the shoulders 0.1 m under the arm, never above the last step bolt where it has them (common practice, no source).
 */
import type { PoleStation } from './place'
import { hasSteps, type Pole } from './pole'

export type StationAloft = Exclude<PoleStation, 'foot'>

/** Feet under the low-voltage wires, feet under the arm, thigh over the feet. */
const body = { underLv: 1.8, underArm: 1.5, thigh: 0.9 } as const

/** What of a pole the stations hang on. */
export type Climbable = Pick<Pole, 'armHeight' | 'lvHeight' | 'stepBoltsTo' | 'steps'>

export function feetAt(pole: Climbable, station: PoleStation): number {
  if (station === 'foot') return 0
  const under = pole.armHeight - body.underArm
  const top = hasSteps(pole) ? Math.min(under, pole.stepBoltsTo) : under
  return centimetre(station === 'above-lv' ? top : Math.min(pole.lvHeight - body.underLv, top))
}

/** Where a thigh leans on the pole. */
export function thighAt(pole: Climbable, station: StationAloft): number {
  return centimetre(feetAt(pole, station) + body.thigh)
}

function centimetre(metres: number): number {
  return Math.round(metres * 100) / 100
}
