/** A label bound to a point of the site. It is DOM: real type, themed by the sheet. */
import type { Vector3 } from 'three'
import type { WireState } from '../site/sitePicture'

export type LabelKind =
  | 'letter'
  | 'person'
  | 'hazard'
  | 'wire'
  | 'callout'
  | 'contour'
  | 'limit'
  | 'verdict'
  | 'dimension'
  | 'tape'
  | 'name'

export interface Label {
  readonly key: string
  /** One point, or candidates that are tried in order until one is free. */
  readonly at: Vector3 | readonly Vector3[]
  readonly text: string
  readonly kind: LabelKind
  /** State of a wire, drawn as a shape round its letter. */
  readonly state?: WireState
  /** The chosen one: blue. */
  readonly isChosen?: boolean
  /** Pixels from the point; a leader is drawn. */
  readonly away?: readonly [number, number]
  /** Who wins when two would overlap: the higher. */
  readonly rank: number
}
