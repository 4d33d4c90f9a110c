/**
 * The site at one instant: everything that is really so, and everything the crew has perceived. Immutable; actions
 * return a new one. Views never read this type: they read Belief (belief.ts), which is made from it.
 */
import type { GroundPoint, Place } from './place'
import type { JumpersOut } from './sectionJumpers'
import type { TruckState } from './truckState'
import type { ItemId, PersonId, Phase, Scenario, ThingId } from './scenario'

export interface Person {
  readonly id: PersonId
  readonly place: Place
  /** In the hands, oldest first; the catalogue says how many hands each takes. */
  readonly holds: readonly ItemId[]
  readonly wears: readonly ItemId[]
  /** Pole strap round the pole and clipped. */
  readonly strapped: boolean
  readonly onMat: boolean
  readonly signedOn: boolean
  /** Was present at the briefing. */
  readonly briefed: boolean
  readonly mustered: boolean
}

export type Verdict = 'pass' | 'quarantine'

export interface Item {
  readonly id: ItemId
  readonly type: string
  readonly label: Readonly<Record<string, string | number>>
  /** Hidden truth. */
  readonly defects: readonly string[]
  /** Carried fault current; hidden until the crew knows of the livening. */
  readonly faulted: boolean
  /** Insulation that failed under voltage: stays failed. Hidden. */
  readonly failed: boolean
  readonly where:
    | { readonly kind: 'truck' }
    | { readonly kind: 'tarp' }
    | { readonly kind: 'person'; readonly person: PersonId }
    | { readonly kind: 'fitted' }
    | { readonly kind: 'handline' }
    /** Hangs at the top of the worked pole, or of the next one. */
    | { readonly kind: 'aloft'; readonly at?: 'next' }
    | { readonly kind: 'quarantine' }
    /** Put down at a switch. */
    | { readonly kind: 'left'; readonly at: ThingId }
  readonly bookedOut: boolean
  readonly bookedIn: boolean
  readonly verdict: Verdict | null
}

/** One clamp of a lead or bond on something. */
export interface Clamp {
  readonly lead: ItemId
  /** `earth`, `1`, `2`, `3` of a lead; `metal`, `line` of a bond. */
  readonly end: string
  readonly on: ThingId
  /** Turns of the eye screw; the catalogue says how many seat it. */
  readonly turns: number
  /** The seat was brushed before the clamp went on. */
  readonly brushed: boolean
  readonly tugged: boolean
  /** Hidden: somebody turned it loose; until it is tightened. */
  readonly loosened?: boolean
}

export interface FittedRod {
  readonly item: ItemId
  readonly at: GroundPoint
  readonly depth: number
}
export interface FittedCover {
  readonly item: ItemId
  readonly from: number
  readonly to: number
  readonly checked: boolean
  /** Round the next pole. */
  readonly pole?: 'next'
}
export interface LaidPlatform {
  readonly item: ItemId
  readonly at: GroundPoint
}
export interface FittedGuard {
  readonly item: ItemId
  readonly on: ThingId
}

export interface SwitchState {
  readonly handle: 'open' | 'closed'
  /** True blade positions; hidden until each is looked at. */
  readonly blades: Readonly<Record<Phase, 'open' | 'closed'>>
  readonly control: 'local' | 'remote'
  readonly lock: ItemId | null
  readonly tag: ItemId | null
  readonly lockedBy: PersonId | null
  /** Supply of its motor drive, where it has one; on when not said. */
  readonly motorSupply?: 'on' | 'off'
  /** Earths fitted at the isolation point: item, ohm. */
  readonly earth: { readonly item: ItemId; readonly resistance: number } | null
}

/** Fuse carriers of a transformer: in their cut-outs, hanging open in them, or taken away and bagged. */
export type Carriers = 'in' | 'hung' | 'out'

/** A main switch on low voltage: of a transformer, of somebody's own source, of the street lamps. */
export interface MainSwitch {
  readonly position: 'open' | 'closed'
  readonly lock: ItemId | null
  readonly lockedBy: PersonId | null
  readonly tag?: ItemId | null
}

/** Something perceived: what a person saw, read, heard or measured; `says` is a key of src/text with its values. */
export interface Evidence {
  readonly at: number
  readonly who: PersonId
  readonly of: ThingId | ItemId
  readonly by: 'look' | 'label' | 'test' | 'read' | 'hear' | 'feel' | 'do'
  readonly says: string
  readonly values: Readonly<Record<string, string | number>>
}

/** Messages, permits, records: who holds what paper, in order. */
export interface Paper {
  /** Switching step read from the control room and not yet carried out. */
  readonly step: { readonly switch: ThingId; readonly to: 'open' | 'closed'; readonly readBack: string } | null
  /** A step that the control room has said and nobody has said back yet: for which switch, as it was heard. */
  readonly heard?: { readonly switch: ThingId; readonly to: 'open' | 'closed'; readonly as: string } | null
  readonly recloseBlocked: Readonly<Record<ThingId, boolean>>
  readonly permit: 'none' | 'held' | 'returned'
  readonly safeToWork: boolean
  /** To whom the job was handed over; not said before that. */
  readonly inCharge?: PersonId
  readonly earthsReported: boolean
  readonly workDone: boolean
  readonly stopped: boolean
  readonly closed: boolean
}

/** A visible livening that has struck. */
export interface LiveningRecord {
  readonly id: string
  readonly at: number
  /** Protection took it off again by itself. */
  readonly cleared: boolean
  /** Came by a switch that is shut since: the feeder behind these blades is locked out until the permit is back. */
  readonly lockedOut?: { readonly switch: ThingId; readonly phases: readonly Phase[] }
  /** The control room has proved the source off since. */
  readonly provedOff: boolean
}

export interface Site {
  readonly scenario: Scenario
  /** Job second. */
  readonly time: number
  readonly persons: Readonly<Record<PersonId, Person>>
  readonly items: Readonly<Record<ItemId, Item>>
  /** Where the truck stands; the tarp lies beside it. */
  readonly truck: GroundPoint
  readonly truckState?: TruckState
  readonly clamps: readonly Clamp[]
  readonly rods: readonly FittedRod[]
  readonly cover: FittedCover | null
  readonly guards: readonly FittedGuard[]
  /** Insulating platforms on the ground; none when not said. */
  readonly platforms?: readonly LaidPlatform[]
  /** Closed outline, corners in order; null when none stands. */
  readonly barrier: readonly GroundPoint[] | null
  /** Leads that hang from the pole top and can be clamped there. */
  readonly hauled: readonly ItemId[]
  readonly switches: Readonly<Record<ThingId, SwitchState>>
  /** By transformer. */
  readonly carriers: Readonly<Record<ThingId, Carriers>>
  /** A bag with a lock over the cut-outs or the carriers of a transformer, and whose key it is. */
  readonly carrierBags?: Readonly<Record<ThingId, { readonly item: ItemId; readonly by: PersonId }>>
  /** By transformer, by source of somebody's own, by switch wire. */
  readonly mains: Readonly<Record<ThingId, MainSwitch>>
  /** Conductors opened at the pole: each has two ends there. */
  readonly opened?: readonly ThingId[]
  /** Struck so that the heart may stop: they lie, or hang in the strap, and do nothing. In order of id. */
  readonly hurt?: readonly PersonId[]
  /** People who have left the place for a break. */
  readonly away?: readonly PersonId[]
  /** Seats brushed and not yet used, by conductor. */
  readonly brushed: readonly ThingId[]
  readonly insulator: 'cracked' | 'replaced'
  /** Crossing circuits that a guard keeps apart from the section. */
  readonly guardedFrom?: readonly ThingId[]
  /** Jumpers of other poles of the section that another crew has taken out. */
  readonly jumpersOut?: readonly JumpersOut[]
  /** A hazard removed: feeders taken out of service. */
  readonly feedersOut: readonly ThingId[]
  readonly paper: Paper
  /** The trainee's own plan, marks and answers, as written. */
  readonly written: Readonly<Record<string, string | readonly string[]>>
  readonly evidence: readonly Evidence[]
  readonly livening: LiveningRecord | null
  /** Free facts that actions set once (`pole-matched`, `rescue-staged` …), with the second. */
  readonly marks: Readonly<Record<string, number>>
}
