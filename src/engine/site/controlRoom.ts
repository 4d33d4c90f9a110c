/** What the control room answers, and what of it comes over the line as something else. */

export interface ControlRoom {
  readonly takesCrossingOut: boolean
  readonly blocksReclose: boolean
  /** Gives the permit for the next pole too when it is asked. */
  readonly widensPermit?: boolean
  /** It can send people who put a guard between section and crossing. */
  readonly guardsCrossing?: boolean
  /** It can send people who take out the jumpers of another pole of the section. */
  readonly takesJumpersOut?: boolean
  /** What comes over the line as something else, the first time that it is said. */
  readonly misheard?: readonly Misheard[]
  /** Its permits carry a number and end at a time of day, seconds after midnight; they do not when not said. */
  readonly permit?: { readonly number: string; readonly until: number }
}

export interface Misheard {
  /** A number that control says: of a switch, of the pole, of the permit. */
  readonly message: string
  readonly saidAs: string
  /** Control notices that it is read back wrong; unsaid: it does. */
  readonly corrects?: boolean
}
