/**
 * What the scene draws: the crew's picture of the site. Made from belief by pictureOf.ts, so that no builder can reach
 * a hidden defect. Lengths in metres, x east, y north.
 */
import type { Belief, GroundPoint, ItemId, PersonId, Phase, ThingId } from '../../../engine'

type Person = Belief['persons'][number]

/** Treat as live, tested, earthed, earthed but lifted by a livening. */
export type WireState = 'live' | 'tested' | 'earthed' | 'risen'

export interface LeadEnd {
  readonly end: string
  /** What it is clamped on, `rod/…` included; null: free. */
  readonly on: ThingId | null
  readonly turns: number
}

export interface LeadPicture {
  readonly item: ItemId
  readonly isBond: boolean
  readonly ends: readonly LeadEnd[]
  /** Metres of cable from each end to the next. */
  readonly lengths: readonly number[]
  /** Its tails meet in a boss or a bar; else each end follows the one before. */
  readonly hub: string | null
  /** Its free ends hang at the pole top. */
  readonly isAloft: boolean
  /** How it was laid out and up the pole. */
  readonly route: 'clear-of-lv' | 'coiled' | 'over-lv'
}

export interface PersonPicture {
  readonly id: PersonId
  readonly role: Person['role']
  readonly place: Person['place']
  readonly holds: readonly ItemId[]
  readonly wears: readonly ItemId[]
  readonly isStrapped: boolean
  readonly isOnMat: boolean
  readonly doing: { readonly act: string; readonly on: ThingId | null; readonly with: ItemId | null } | null
}

export interface SwitchPicture {
  readonly id: ThingId
  readonly label: string
  readonly along: number
  readonly handle: 'open' | 'closed'
  readonly blades: Readonly<Record<Phase, 'open' | 'closed' | 'not-looked'>>
  readonly hasLock: boolean
  readonly hasTag: boolean
  /** Its blades are fuse carriers. */
  readonly isFuses: boolean
  /** An earth is on the section's side of it. */
  readonly hasEarth: boolean
}

export interface SitePicture {
  readonly conductors: Readonly<Record<ThingId, WireState>>
  readonly rods: readonly {
    readonly item: ItemId
    readonly at: GroundPoint
    readonly depth: number
    readonly length: number
  }[]
  readonly leads: readonly LeadPicture[]
  readonly cover: { readonly item: ItemId; readonly from: number; readonly to: number } | null
  readonly guards: readonly { readonly item: ItemId; readonly on: ThingId }[]
  readonly barrier: readonly GroundPoint[] | null
  readonly truck: GroundPoint
  /** Floor of the bucket where the boom is up; outriggers down. */
  readonly bucket: { readonly at: GroundPoint; readonly height: number } | null
  readonly isOnPads: boolean
  readonly jumpers: Belief['jumpers']
  /** Jumpers at other poles of the section, as last told or seen. */
  readonly farJumpers: Readonly<Record<ThingId, 'on' | 'hanging' | 'tied-back'>>
  /** Items that lie on the tarp, in the order of the register. */
  readonly tarp: readonly ItemId[]
  /** Items tied to the handline, still on the ground. */
  readonly tied: readonly ItemId[]
  /** Items hauled up that hang beside the climber. */
  readonly aloft: readonly ItemId[]
  readonly typeOf: Readonly<Record<ItemId, string>>
  /** What looks at an item told, by `findFinding`; only items of which something was told. */
  readonly found: Readonly<Record<ItemId, readonly string[]>>
  /** Insulating platforms on the ground. */
  readonly platforms: Belief['platforms']
  readonly hasHandline: boolean
  readonly hasSigns: boolean
  readonly insulator: 'cracked' | 'replaced'
  /** Fuse carriers of transformers, as last seen or put. */
  readonly carriers: Readonly<Record<ThingId, 'in' | 'hung' | 'out' | 'not-looked'>>
  readonly quarantined: readonly ItemId[]
  readonly isDusk: boolean
  readonly weather: Belief['sheet']['weather']
  /** Marked by the trainee at the briefing. */
  readonly hazards: readonly { readonly id: string; readonly at: GroundPoint }[]
  readonly work: ThingId
  readonly people: readonly PersonPicture[]
  readonly switches: readonly SwitchPicture[]
}
