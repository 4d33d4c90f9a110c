/** Metal on and around the place of work that current can reach: on the pole, on the ground, the truck. SI units. */
import type { GroundPoint } from './place'
import type { ThingId } from './ids'

/** On the pole, beside arm and stay. A pole band is one too: what a bond near the feet is clamped on. */
export interface Metalwork {
  readonly id: ThingId
  readonly kind: 'band' | 'bolt' | 'brace' | 'cable-sheath' | 'lamp-bracket' | 'tank'
  readonly height: number
  /** What it is fixed to: the pole at that height, `arm`, or another thing of the place by id. */
  readonly on: 'pole' | 'arm' | ThingId
  /** Ohm from it to that. */
  readonly fixing: number
  /** A way of its own to earth far from the site: a cable's sheath. Ohm. */
  readonly earth?: number
}

/** What touches what: a stay wire against a fence, a bracket on the neutral. */
export interface Joint {
  readonly to: ThingId
  readonly resistance: number
}

export type GroundThing =
  /** Conducting from end to end, in the soil by its posts. */
  | {
      readonly id: ThingId
      readonly kind: 'fence'
      readonly posts: readonly GroundPoint[]
      readonly postDepth: number
      readonly postRadius: number
      readonly joins?: Joint
    }
  /** Comes from elsewhere with an earth of its own; can be touched at the points. */
  | {
      readonly id: ThingId
      readonly kind: 'pipe'
      readonly resistance: number
      readonly points: readonly GroundPoint[]
      readonly joins?: Joint
    }
  /** An earth of somebody else, or a spot where a conductor can come down: known by its resistance alone. */
  | { readonly id: ThingId; readonly kind: 'earth'; readonly at: GroundPoint; readonly resistance: number }

/** Everything of it is one piece of metal but for the boom. It stands where the crew parked it. */
export interface Truck {
  /** Ohm of all tyres together; counts while no outrigger is down. */
  readonly tyres: number
  /** From where it stands. */
  readonly outriggers: readonly { readonly x: number; readonly y: number; readonly radius: number }[]
  /** An insulated boom with a bucket: ohm along the boom, and through the liner. */
  readonly boom?: { readonly leakage: number; readonly liner: number }
}
