/**
 * Where the scene comes in: panels know no scene, so main.tsx puts the component here. Null: there is none, and the
 * drawings stand alone.
 */
import { type ComponentType, type ReactNode, createContext } from 'react'
import type { Spot } from '../../stores/aimStore'
import type { DrawnLivening } from '../../workers/grading'

export interface StageProps {
  /** A second pick on what is chosen. */
  readonly onAct?: (id: string) => void
  /** A long press. */
  readonly onLook?: (id: string) => void
  /** Given while an order asks for a point of the ground. */
  readonly onGroundPoint?: (at: Spot, how: 'move' | 'press') => void
  /** What is being placed, in pencil. */
  readonly draft?: { readonly rod: Spot | null; readonly outline: readonly Spot[] }
  /** Pixels at the right that the slip covers. */
  readonly coveredRight?: number
  /** How high its bar is, pixels: it wraps. */
  readonly onBar?: (height: number) => void
  /** A livening that is drawn instead of the job as it is now. */
  readonly drawn?: DrawnLivening
  /** Of a livening: the voltage of each part is written at it. */
  readonly hasFigures?: boolean
  /** Of a livening: a pair of feet, or of hands, that is set in it; and what has happened by its second. */
  readonly feelers?: {
    readonly kind: 'pace' | 'touch' | 'hands'
    readonly at: Spot | null
    readonly hands: readonly string[]
    readonly reads: string | null
  } | null
  readonly told?: {
    readonly last: string
    readonly gone: readonly { readonly of: string; readonly person: string | null; readonly words: string }[]
  } | null
  /** Of a livening: given while a pick asks for a thing. */
  readonly onPick?: (id: string) => void
  /** It stands still; else the currents move. */
  readonly isFrozen?: boolean
  /** What is written at what is pointed at or chosen. */
  readonly nameOf?: (id: string) => string
  /** After the buttons that choose where one looks from. */
  readonly extra: ReactNode
  readonly onLost: (how: 'none' | 'lost') => void
  readonly onRestored: () => void
}

export const StageSlot = createContext<ComponentType<StageProps> | null>(null)
