/** A handle in the picture: what it holds, how the pointer carries it, and what is written when it is let go. */
import type { Vector3 } from 'three'
import type { GroundPoint } from '../../../engine'
import type { Entries } from '../../stores/entries'

/** Where the pointer has carried it: one of these, by what it follows. */
export interface Carried {
  readonly point: GroundPoint
  /** Metres above the ground, on the upright through where it was taken up. */
  readonly height: number
  /** Turns clockwise since it was taken up. */
  readonly turned: number
  /** Pixels of the picture. */
  readonly pixel: { readonly x: number; readonly y: number }
}

export interface Grip {
  readonly key: string
  readonly at: Vector3
  /** The figure that it sets, beside it. */
  readonly text: string
  /** A mark is only read: the pointer goes through it. */
  readonly shape: 'corner' | 'new-corner' | 'up-down' | 'dial' | 'end' | 'mark'
  /** On a dial: how far it has been turned. */
  readonly turns?: number
  /** What the fields become while it is carried; null: nothing yet. */
  readonly carry: (to: Carried) => Entries | null
  /** Pressed twice. */
  readonly remove?: () => Entries
  /** Let go where it was carried to; a press that carried it nowhere is none. */
  readonly letGo?: (to: Carried) => void
}
