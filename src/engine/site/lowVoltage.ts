/** The low-voltage circuit under the line: its wires, its neutral, who feeds it. SI units. */
import type { ItemId, Phase, ThingId } from './ids'
import type { GroundPoint } from './place'

export interface LowVoltage {
  /** Phase to neutral, volts. */
  readonly voltage: number
  readonly sourceImpedance: { readonly re: number; readonly im: number }
  /** None: there is no low voltage on the pole, and nothing else said here counts. */
  readonly wires: readonly {
    readonly id: ThingId
    readonly phase: Phase | 'N'
    readonly x: number
    readonly height: number
    /**
     * A switch wire of street lamps: ohm of all its lamps to the neutral, and where the cabinet with its switch is. It is
     * switched on when it gets dark.
     */
    readonly lamps?: {
      readonly resistance: number
      readonly cabinet: GroundPoint
      readonly key?: ItemId
      /** Fed from the next street, whatever feeds the wires beside it. */
      readonly ownSupply?: boolean
    }
    /** A feed that can be cut off by itself, a telecom supply, a pilot: where its switch is, whose key opens the cabinet. */
    readonly isolator?: { readonly at: GroundPoint; readonly key?: ItemId }
  }[]
  /** Of the star point. */
  readonly neutralEarth: { readonly resistance: number; readonly at: GroundPoint }
  /** A transformer of the section that feeds it; another circuit's when not said. */
  readonly fedBy?: ThingId
  /**
   * Where the neutral is earthed again: metres of wire from the worked pole, ohm, ohm per metre of neutral up to there,
   * and where it is when it is near enough to share the soil.
   */
  readonly houseEarths?: readonly {
    readonly distance: number
    readonly resistance: number
    readonly wire: { readonly re: number; readonly im: number }
    readonly at?: GroundPoint
  }[]
  readonly insulatorLeakage: number
}
