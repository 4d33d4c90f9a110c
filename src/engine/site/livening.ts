/**
 * How the dead line comes alive, as a scenario says it: one member a kind. What each does to the circuit is one file in
 * hazard/circuit/livening; what the place knows of it is one entry of liveningTraits.ts.
 */
import type { Phase, ThingId } from './ids'

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
  /** One carrier of a switch that has fuses is put back in. */
  | { readonly id: string; readonly kind: 'fuse-carrier'; readonly switch: ThingId; readonly phase: Phase }
  /** A parallel circuit has an earth fault elsewhere: its current induces along the section. */
  | { readonly id: string; readonly kind: 'induction'; readonly parallel: ThingId; readonly phase: Phase }
  /**
   * The neutral of an unearthed or coil-earthed parallel circuit is displaced by an earth fault elsewhere in one phase:
   * its other phases rise, their sum is no longer nothing, and the section picks it up by capacitance.
   */
  | { readonly id: string; readonly kind: 'pick-up'; readonly parallel: ThingId; readonly phase: Phase }
  /** A phase of a feeder falls onto the neutral wire where its line meets the section: the whole neutral rises. */
  | {
      readonly id: string
      readonly kind: 'neutral-raised'
      readonly feeder: ThingId
      readonly phase: Phase
      readonly impedance: number
    }
  /** One phase of a coil-earthed network comes by one blade of a switch: what the coil leaves, for as long as it lasts. */
  | { readonly id: string; readonly kind: 'coil-fed'; readonly switch: ThingId; readonly phase: Phase }
  /** Somebody's own source comes on behind a transformer of the section: a generator, an inverter, the next network. */
  | { readonly id: string; readonly kind: 'back-feed'; readonly source: ThingId }
  /**
   * The same where that transformer feeds the low voltage under the line: its wires come alive, whether or not the way up
   * to the line is open.
   */
  | { readonly id: string; readonly kind: 'low-voltage-fed'; readonly source: ThingId }
  /** The street lamps' switch closes: their wire, dead by day, comes alive. */
  | { readonly id: string; readonly kind: 'street-lamps-on'; readonly wire: ThingId }
  /** A lead that is not clear of the low voltage touches this wire of it; ohm of the touch. */
  | { readonly id: string; readonly kind: 'lead-on-low-voltage'; readonly wire: ThingId; readonly impedance: number }
  /** One open blade falls shut. */
  | { readonly id: string; readonly kind: 'blade-shut'; readonly switch: ThingId; readonly phase: Phase }
  /** A switch that can be worked from afar is closed from there. */
  | { readonly id: string; readonly kind: 'remote-close'; readonly switch: ThingId }
  /** Another crew closes a switch by hand. */
  | { readonly id: string; readonly kind: 'other-crew-closes'; readonly switch: ThingId }
  /** A phase of the feeder breaks and falls onto a conductor of the section. */
  | {
      readonly id: string
      readonly kind: 'conductor-falls'
      readonly feeder: ThingId
      readonly phase: Phase
      readonly onto: ThingId
      readonly at: 'crossing' | 'pole'
      readonly impedance: number
    }
  /**
   * A jumper from the feeder's end swings back onto the same phase at the worked pole. With `at`, one of `sectionJumpers`:
   * the feeder's conductor lies on the piece that these cut off, and a tail that hangs there swings back onto the line.
   */
  | {
      readonly id: string
      readonly kind: 'jumper-back'
      readonly feeder: ThingId
      readonly phase: Phase
      readonly impedance: number
      readonly at?: ThingId
    }
  /** The live end of a broken conductor lies on an earth of `grounds`. */
  | {
      readonly id: string
      readonly kind: 'conductor-down'
      readonly feeder: ThingId
      readonly phase: Phase
      readonly thing: ThingId
      readonly impedance: number
    }
  /** An adjacent circuit flashes over to the earth of its pole, one of `grounds`. */
  | {
      readonly id: string
      readonly kind: 'neighbour-fault'
      readonly feeder: ThingId
      readonly phase: Phase
      readonly thing: ThingId
      readonly impedance: number
    }
  /** The truck touches a live phase of the feeder. */
  | {
      readonly id: string
      readonly kind: 'boom-touches'
      readonly feeder: ThingId
      readonly phase: Phase
      readonly impedance: number
    }
  /** A phase of a switch's feeder comes onto its handle. */
  | {
      readonly id: string
      readonly kind: 'handle-live'
      readonly switch: ThingId
      readonly phase: Phase
      readonly impedance: number
    }
  /** A stroke of lightning somewhere along the line. */
  | { readonly id: string; readonly kind: 'lightning' }
  /** A capacitor bank on the section: farad a phase, phase to phase volts, ohm a phase of its discharge resistor. */
  | {
      readonly id: string
      readonly kind: 'stored-charge'
      readonly capacitance: number
      readonly voltage: number
      readonly phases: readonly Phase[]
      readonly discharge?: number
    }

export type LiveningKind = Livening['kind']
export type LiveningOf<Kind extends LiveningKind> = Extract<Livening, { kind: Kind }>
