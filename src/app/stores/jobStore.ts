/**
 * The open job as the crew knows it. Views read this store; the truth behind it is in held.ts. Orders go in through
 * orders.ts. Types only from the engine: the Depot reads this before the engine is fetched.
 */
import { createStore } from 'zustand/vanilla'
import type { Belief } from '../../engine'
import type { OwnEdition } from '../storage/library'

export type Purpose = 'practise' | 'assess'

export interface JobHead {
  readonly scenario: string
  readonly title: string
  readonly seed: number
  readonly purpose: Purpose
  readonly pack: string
  readonly packName: string
  readonly startsAt: string
  /** Name of who works, as they gave it. */
  readonly person: string
  /** From the drawing office: practised on in place of the shelf's. */
  readonly own?: OwnEdition
  /** So many of the first orders were shown, not the trainee's own: then nothing is scored. */
  readonly shown?: number
  /** Is being shown: nobody else orders. */
  readonly isShowing?: boolean
}

/** One act that somebody is busy with, or has done. Nothing of its outcome. */
export interface Doing {
  readonly index: number
  readonly who: string
  readonly act: string
  readonly thing: string | null
  readonly item: string | null
  readonly start: number
  readonly end: number
}

export interface Notice {
  readonly who: string
  readonly code: string
  readonly values: Readonly<Record<string, string | number>>
}

export interface Job {
  readonly head: JobHead | null
  readonly belief: Belief | null
  /** Job second; the clock on the wall is `belief.sheet.startsAt` later. */
  readonly now: number
  readonly busy: readonly Doing[]
  /** Just ordered: may be withdrawn until the second is over. */
  readonly pencil: Doing | null
  /** Why the last order could not be. */
  readonly notices: readonly Notice[]
  /** Orders given so far, withdrawn ones included. */
  readonly ordered: number
  readonly withdrawn: number
  /** Ordered so far, where a way back was marked. */
  readonly checkpoints: readonly { readonly label: string; readonly at: number; readonly ordered: number }[]
  /** Something came alive and the crew has not been given its orders for it yet. */
  readonly event: { readonly at: number; readonly answered: readonly string[] } | null
  readonly isOver: boolean
  readonly reloads: number
  readonly isKept: boolean
}

export const noJob: Job = {
  head: null,
  belief: null,
  now: 0,
  busy: [],
  pencil: null,
  notices: [],
  ordered: 0,
  withdrawn: 0,
  checkpoints: [],
  event: null,
  isOver: false,
  reloads: 0,
  isKept: true,
}

export const jobStore = createStore<Job>(() => noJob)
