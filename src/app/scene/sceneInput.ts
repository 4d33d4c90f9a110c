/** What the scene is given by whoever mounts it, and what it answers. It knows no store: everything comes and goes here. */
import type { Belief, GroundPoint, Instant, ItemId, PersonId, ThingId } from '../../engine'
import type { Handling } from '../stores/handling'
import type { Gaze } from '../stores/lookStore'
import type { Measured } from '../stores/measureTape'
import type { TapeEnd } from '../stores/tapeStore'
import type { Theme } from '../stores/theme'
import type { ViewName } from './camera/presets'
import type { Box, Inset } from './labels/labelLayer'
import type { Feelers } from './people/feelers'
import type { Doing } from './site/pictureOf'

/** Thing, item or person. */
export type PickId = ThingId | ItemId | PersonId

/** Pixels in the stage where a thing's plate is joined; null when it is not in the picture. */
export type AnchorOf = (id: PickId) => { readonly x: number; readonly y: number } | null

/** Where the pointer would place something on the ground, in blue pencil. */
export interface Draft {
  readonly rod?: GroundPoint | null
  readonly outline?: readonly GroundPoint[] | null
}

export interface Told {
  readonly last: string
  /** What gave way, and whose it is: written at it. */
  readonly gone: readonly { readonly of: ItemId; readonly person: PersonId | null; readonly words: string }[]
}

export interface SceneInput {
  readonly belief: Belief
  /** Acts in progress: postures follow them. */
  readonly doing?: readonly Doing[]
  readonly selection: PickId | null
  /** Persons that the next order goes to. */
  readonly persons?: readonly PersonId[]
  /** Solved instant: only while the livening is drawn. */
  readonly instant?: Instant | null
  /** Of the instant: outlines of where a pace is too high. */
  readonly zone?: readonly (readonly GroundPoint[])[]
  /** Of the instant: the voltage of each part is written at it. */
  readonly hasFigures?: boolean
  /** The instant stands still and everything else pales. */
  readonly isFrozen?: boolean
  readonly theme: Theme
  readonly reducedMotion: boolean
  readonly view: ViewName
  /** How often a view was asked for. */
  readonly asked?: number
  /** Looked at instead of the view, each time that it is asked for. */
  readonly gaze?: Gaze | null
  /** Which switch the view `switch` shows; the first when not given. */
  readonly switchId?: ThingId | null
  /** Pixels at the top and bottom that panels cover. */
  readonly inset?: Inset
  readonly draft?: Draft | null
  /** Lengths of the place are drawn. */
  readonly hasDimensions?: boolean
  /** Of a drawn livening: a pair of feet, or of hands, and what they read. */
  readonly feelers?: Feelers | null
  /** Of a drawn livening: what has happened by the second that is looked at, the last in words. */
  readonly told?: Told | null
  /** What of an open form can be set by hand in the picture. */
  readonly handling?: Handling | null
  /** Given while the tape is out: picks hold its ends. */
  readonly onTape?: ((end: TapeEnd) => void) | undefined
  /** What the tape reads. */
  readonly measured?: Measured | undefined
  readonly onSelect: (id: PickId | null) => void
  /** A second pick on what is selected. */
  readonly onAct: (id: PickId) => void
  /** A long press. */
  readonly onLook?: (id: PickId) => void
  readonly onHover?: (id: PickId | null) => void
  /** Given while a quantity asks for a point of the ground: the pointer places, picks rest. */
  readonly onGroundPoint?: (point: GroundPoint, how: 'move' | 'press') => void
  /** Before each frame, so that a plate can stay at its thing; what it covers stays free of labels. */
  readonly onFrame?: (anchorOf: AnchorOf) => Box | null
}
