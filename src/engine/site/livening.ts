/**
 * How the dead line comes alive, as a scenario says it: one member a kind. What each does to the circuit is one file in
 * hazard/circuit/livening; what the place knows of it is one entry of liveningTraits.ts.
 */
import type { Phase, ThingId } from './scenario'

export type Livening =
  /** A live conductor of the crossing circuit falls onto one conductor of the section. */
  | {
      readonly id: string
      readonly kind: 'clash'
      readonly feeder: ThingId
      readonly phase: Phase
      readonly impedance: number
    }
  /** Two conductors of the crossing circuit fall onto two of the section. */
  | {
      readonly id: string
      readonly kind: 'clash-two'
      readonly feeder: ThingId
      readonly phases: readonly [Phase, Phase]
      readonly impedance: number
    }
  /** A switch of the section is closed, all three blades. */
  | { readonly id: string; readonly kind: 'switch-closed'; readonly switch: ThingId }

export type LiveningKind = Livening['kind']
export type LiveningOf<Kind extends LiveningKind> = Extract<Livening, { kind: Kind }>
