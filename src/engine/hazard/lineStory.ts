/** What the circuit alone does in a livening, from its start to its end, nobody in it. Seconds, volts, amperes. */
import type { ItemId, ThingId } from '../site/scenario'
import type { PhaseView } from './circuit/phaseView'
import type { Happening } from './happening'
import type { Operated } from './protection/device'

/** A stretch of time in which the circuit stays as it is. */
export interface LinePhase {
  readonly from: number
  readonly to: number
  /** Some source is on the section. */
  readonly isLive: boolean
  /** Counts the shots: phases of one shot follow each other without a dead time. */
  readonly shot: number
  readonly view: PhaseView
}

/** From the closing of a source to its opening: a shock of its own. */
export interface Shot {
  readonly from: number
  readonly to: number
  /** At its start: the largest current of the links that make the section live. */
  readonly current: number
}

/** What ended it, or that nothing did. */
export type ClearedBy = Operated | 'nothing' | 'not-live'

export interface LineStory {
  readonly kind: 'line'
  /** Short name of everything that it depends on. */
  readonly key: string
  readonly phases: readonly LinePhase[]
  readonly shots: readonly Shot[]
  /** The longest shot. */
  readonly duration: number
  /** When the last of it was over. */
  readonly end: number
  /** Every source was off, or cut off, for good before the horizon. */
  readonly cleared: boolean
  readonly clearedBy: ClearedBy
  /** At its start: the highest rod that a lead is clamped to, or the pole's reinforcement where there is none. */
  readonly siteRise: number
  /** At its start: the largest current of the links that make it live. */
  readonly liveCurrent: number
  readonly feeders: readonly ThingId[]
  /** Leads, and the rods that they stand on, that carried the fault. */
  readonly carriers: readonly ItemId[]
  /** Pieces of lead that melted and clamps that burnt off or let go, by element id. */
  readonly gone: readonly string[]
  /** In time; none of it in whoever touches it. */
  readonly happenings: readonly Happening[]
}

/** The stretch that holds the second; the last one when all is over. */
export function phaseAt({ phases }: LineStory, second: number): LinePhase {
  return phases.find((it) => second < it.to) ?? phases[phases.length - 1]!
}
