/**
 * What the crew has perceived of the site, and nothing else: what was seen when looked at, read when the label was
 * turned, known when tested, done by themselves. Views, lists, narration and labels read this type only.
 */
import type { JobSheet } from './jobSheet'
import type { ItemId, PersonId, Phase, Role, ThingId } from './scenario'
import type {
  Clamp,
  Evidence,
  FittedCover,
  FittedGuard,
  FittedRod,
  Item,
  LaidPlatform,
  Paper,
  Person,
  SwitchState,
} from './site'
import type { GroundPoint } from './place'
import type { Weather } from './weather'
import type { TruckState } from './truckState'

export interface PersonBelief extends Person {
  readonly role: Role
  readonly bootSize: number
  readonly isHere: boolean
  /** Lies there, or hangs in the strap, and does not answer. */
  readonly isHurt: boolean
}

export interface ItemBelief extends Pick<Item, 'id' | 'type' | 'where' | 'bookedOut' | 'bookedIn' | 'verdict'> {
  /** Null until somebody has read it. */
  readonly label: Readonly<Record<string, string | number>> | null
  /** What looks and tests told, in order of time. */
  readonly evidence: readonly Evidence[]
}

/** A conductor is treated as live until it was tested and earthed. */
export interface ConductorBelief {
  readonly id: ThingId
  readonly phase: Phase
  readonly state: 'treat-as-live' | 'tested' | 'clamped'
  /** The last test that still counts: none after the conductor was unearthed or may have been made alive again. */
  readonly lastTest: Evidence | null
  readonly isBrushed: boolean
}

export interface WireBelief {
  readonly id: ThingId
  readonly lastTest: Evidence | null
  readonly guard: ItemId | null
  /** Of a wire with a switch of its own, in a cabinet. */
  readonly main: MainBelief | null
}

export interface SwitchBelief extends Pick<SwitchState, 'handle' | 'control' | 'lock' | 'tag' | 'lockedBy'> {
  readonly id: ThingId
  /** As read at the handle; null until then. */
  readonly label: string | null
  /** The last look at each blade; null: nobody has looked. */
  readonly blades: Readonly<Record<Phase, Evidence | null>>
  readonly earth: ItemId | null
}

/** A transformer, or the main switch of somebody's own source. */
export interface MainBelief {
  readonly id: ThingId
  /** The last look at it or act on it; null: nobody knows how it stands. */
  readonly last: Evidence | null
  readonly lock: ItemId | null
  readonly tag: ItemId | null
  /** A bag with its lock over a transformer's carriers. */
  readonly bag: ItemId | null
}

/** What a jumper carries past the pole, by the name of its far end. */
export interface JumperBelief {
  readonly id: ThingId
  readonly conductor: ThingId
  readonly isOpen: boolean
  readonly lastTest: Evidence | null
}

export interface Belief {
  readonly sheet: JobSheet
  /** Job second. */
  readonly time: number
  /** Where the truck stands; the tarp lies beside it. */
  readonly truck: GroundPoint
  /** Outriggers and bucket stand before everybody's eyes. */
  readonly truckState?: TruckState
  /** As it is now: nobody has to be told that it rains. */
  readonly weather: Pick<Weather, 'rain' | 'wind'>
  /** In charge of the job now. */
  readonly inCharge: PersonId | null
  readonly persons: readonly PersonBelief[]
  readonly items: readonly ItemBelief[]
  readonly conductors: readonly ConductorBelief[]
  readonly jumpers: readonly JumperBelief[]
  /** Of the next pole, by the names of its conductors there. */
  readonly nextConductors: readonly { readonly id: ThingId; readonly lastTest: Evidence | null }[]
  readonly wires: readonly WireBelief[]
  readonly switches: readonly SwitchBelief[]
  readonly mains: readonly MainBelief[]
  readonly clamps: readonly Clamp[]
  readonly rods: readonly FittedRod[]
  readonly cover: FittedCover | null
  readonly guards: readonly FittedGuard[]
  readonly platforms: readonly LaidPlatform[]
  readonly barrier: readonly GroundPoint[] | null
  readonly hauled: readonly ItemId[]
  readonly insulator: 'cracked' | 'replaced'
  /** Feeders that the control room has taken out. */
  readonly feedersOut: readonly ThingId[]
  readonly paper: Paper
  readonly written: Readonly<Record<string, string | readonly string[]>>
  readonly evidence: readonly Evidence[]
  readonly marks: Readonly<Record<string, number>>
  /** That something came alive and when, not what. */
  readonly livening: { readonly at: number; readonly provedOff: boolean } | null
}
