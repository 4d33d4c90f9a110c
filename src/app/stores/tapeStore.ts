/** The measuring tape: out or put away, and what its two ends are held to. It measures the site as the crew knows it. */
import { createStore } from 'zustand/vanilla'
import type { Spot } from './aimStore'

export type TapeEnd = { readonly kind: 'thing'; readonly id: string } | { readonly kind: 'ground'; readonly at: Spot }

export interface Tape {
  readonly isOut: boolean
  /** None, one or two. */
  readonly ends: readonly TapeEnd[]
}

const away: Tape = { isOut: false, ends: [] }

export const tapeStore = createStore<Tape>(() => away)

export const takeTape = (): void => tapeStore.setState({ isOut: true, ends: [] })
export const putTapeAway = (): void => tapeStore.setState(away)

/** The next end; a third one begins anew. */
export function holdTape(end: TapeEnd): void {
  const { ends } = tapeStore.getState()
  tapeStore.setState({ isOut: true, ends: ends.length < 2 ? [...ends, end] : [end] })
}
