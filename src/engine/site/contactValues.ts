/** What bodies touch with and through: areas, sheets of insulation, sticks, rope. SI units. */

/** A sheet of insulation; its leakage is that of one contact, not of a whole soaked item. */
export interface SheetValues {
  readonly thickness: number
  readonly permittivity: number
  readonly leakage: number
  /** Leakage in the rain; as dry when not said. */
  readonly wetLeakage?: number
}

/** Areas and thicknesses of what touches, square metres and metres; leakages in ohm. */
export interface ContactValues {
  readonly area: { readonly thigh: number; readonly hand: number; readonly sole: number; readonly bootOnBolt: number }
  readonly footRadius: number
  readonly sole: SheetValues
  readonly cover: SheetValues
  readonly glove: SheetValues
  readonly guard: SheetValues
  /** Insulating stick from head to hand, ohm. */
  readonly stickLeakage: number
  /** The same in the rain; as dry when not said. */
  readonly wetStickLeakage?: number
  /** Layer without insulation (leather, wet), ohm. */
  readonly leather: number
  readonly clampGood: number
  /** Ohm a metre of the handline, dry and wet; a perfect insulator when not said. */
  readonly rope?: { readonly dry: number; readonly wet: number }
}
