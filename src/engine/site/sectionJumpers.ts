/**
 * Poles of the section, away from the worked one, whose jumpers another crew can take out when the control room is asked.
 * What lies beyond them is then a section of its own: nothing comes from there any more, and no earth there protects here.
 * Tails that nobody tied back hang beside the line and can swing onto it again.
 */
import type { ThingId } from './ids'

export interface SectionJumpers {
  readonly id: ThingId
  /** Of the pole that they are on. */
  readonly number: string
  /** Metres along the section from the worked pole; positive towards the crossing. */
  readonly along: number
}

export interface JumpersOut {
  readonly at: ThingId
  readonly tails: 'tied-back' | 'hanging'
}
