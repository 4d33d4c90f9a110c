/**
 * Whatever can end a current, as the story of a livening sees it: a breaker with its relays, fuses, a generator that
 * stalls, an inverter that limits and stops. The story knows no kinds. A source with no device at all is ended by nothing.
 */
import type { Complex } from '../../math/complex'
import type { ThingId } from '../../site/scenario'

export type Operated = 'earth-fault' | 'overcurrent' | 'sensitive-earth-fault' | 'fuse' | 'stall' | 'source-stop'

/** Ampere through an element of the circuit as it is solved now; undefined for one that is not in it. */
export type CurrentOf = (element: string) => Complex | undefined

/** The most that a source gives in any phase, ampere, by the elements that carry it and those that are its EMFs. */
export interface CurrentLimit {
  readonly emfs: readonly string[]
  readonly measures: readonly string[]
  readonly most: number
}

export interface Device {
  /** The sources that it stands in front of: with one of its devices off, a source is not in the circuit. */
  readonly sources: readonly ThingId[]
  readonly isOff: boolean
  /** It comes on again by itself. */
  readonly willClose: boolean
  /** Elements that it has opened, though the source is still there: a blown fuse's phase. */
  readonly opened: readonly string[]
  /** Ends of a feeder that are dead for that: a link from one of them feeds nothing, but for what the other phases couple. */
  readonly dead: readonly string[]
  readonly limits: readonly CurrentLimit[]
  /** What ended it, or opened a part of it, last. */
  readonly operated: Operated | null
  /** Second at which the next thing happens to it if the currents stay; Infinity when nothing will. */
  next(now: number, currentOf: CurrentOf): number
  /** It as it is at `next`, the currents having stayed since `now`. */
  advance(now: number, next: number, currentOf: CurrentOf): Device
}

/** Every event of a story falls on a whole one. */
export const microsecond = 1e-6
