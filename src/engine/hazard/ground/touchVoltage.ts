/**
 * A hand on a thing, both feet on the ground beside it: the voltage of the thing less that of the soil at the feet, with
 * nobody there. Whether the thing is an electrode itself, hangs on one, or carries its voltage here from somewhere else
 * (a stay, a vehicle on its outriggers, a fence that begins beside the rod), makes no difference: only its node counts.
 */
import { magnitude, subtract, type Complex } from '../../math/complex'
import { wayRound, type Electrode, type GroundPoint } from '../../physics/soil'
import type { Surface } from './pace'

/** Something that can be touched from the ground: how it stands in plan, and its voltage to remote earth. */
export interface TouchedThing {
  readonly shape: Electrode
  readonly voltage: Complex
}

export interface Touch {
  readonly feet: GroundPoint
  /** Volt, rms. */
  readonly voltage: number
}

/** Metre: at arm's length, half of it, close to. IEEE Std 80 takes one metre for the reach. */
const AWAY = [1, 0.5, 0.1] as const

/** Metre between two places along the way round it. */
const STEP = 0.25

/** Where somebody who touches it has most between hand and feet. */
export function worstTouch(surface: Surface, { shape, voltage }: TouchedThing): Touch {
  let worst: Touch | undefined
  for (const away of AWAY) {
    for (const feet of wayRound(shape, away, STEP)) {
      const between = magnitude(subtract(voltage, surface.potentialAt(feet)))
      if (worst === undefined || between > worst.voltage) worst = { feet, voltage: between }
    }
  }
  return worst ?? { feet: { x: 0, y: 0 }, voltage: 0 }
}
