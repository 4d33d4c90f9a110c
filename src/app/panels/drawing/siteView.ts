/**
 * What the plan and the elevation draw: the crew's picture of the site, reduced to lengths and states. Made from belief
 * by viewOfSite.ts. x east along the line, y north across it, metres.
 */
import type { Belief } from '../../../engine'
import type { WireState } from './Marks'
import type { PostureName } from './Figure'

export type Surrounding = Required<Belief['sheet']['hazards'][number]>

export interface WireView {
  readonly id: string
  readonly letter: string
  /** North of the pole axis. */
  readonly across: number
  readonly height: number
  readonly state: WireState
}

export interface PersonView {
  readonly id: string
  readonly letters: string
  readonly at: { readonly x: number; readonly y: number }
  /** Height of the feet; 0 on the ground. */
  readonly height: number
  readonly posture: PostureName
  readonly hasBoots: boolean
  readonly isFar: boolean
}

export interface LeadView {
  readonly id: string
  /** `rod` or the conductors, arm, wires it is clamped on, in order of its ends. */
  readonly on: readonly string[]
  /** Names of those ends, in the same order. */
  readonly ends: readonly string[]
  readonly isBond: boolean
  readonly isHanging: boolean
}

export interface SiteView {
  readonly wires: readonly WireView[]
  readonly lv: readonly {
    readonly id: string
    readonly across: number
    readonly height: number
    readonly isGuarded: boolean
  }[]
  /** The conductor that is worked on. */
  readonly work: string
  readonly arm: 'wood' | 'steel'
  readonly pole: {
    readonly kind: Belief['sheet']['pole']['kind']
    readonly number: string
    readonly height: number
    readonly butt: number
    readonly arm: number
    readonly lv: number
    readonly boltsTo: number
    /** Axis of the other leg of a double pole. */
    readonly secondLeg: { readonly x: number; readonly y: number } | null
  }
  readonly stay: { readonly x: number; readonly y: number } | undefined
  /** Where a circuit crosses, metres along the line; null: none does. */
  readonly crossingAlong: number | null
  /** What stands about that has a place on paper: along the line, or at a point. */
  readonly surroundings: readonly Surrounding[]
  /** The place on the section that lies next to the pole in the west: a switch. */
  readonly west: string
  readonly rods: readonly {
    readonly id: string
    readonly x: number
    readonly y: number
    readonly depth: number
    readonly hasLead: boolean
  }[]
  readonly leads: readonly LeadView[]
  readonly cover: { readonly from: number; readonly to: number } | null
  readonly barrier: readonly { readonly x: number; readonly y: number }[] | null
  readonly truck: { readonly x: number; readonly y: number } | null
  readonly hasRope: boolean
  readonly people: readonly PersonView[]
  readonly isInsulatorNew: boolean
}
