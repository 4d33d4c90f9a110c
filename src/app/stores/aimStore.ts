/** A point of the ground that an order asks for: the plan of the slip and the scene both set it. */
import { createStore } from 'zustand/vanilla'

export interface Spot {
  readonly x: number
  readonly y: number
}

export interface Aim {
  /** Points set so far; more than one for an outline. */
  readonly set: readonly Spot[]
  readonly onSet: (at: Spot) => void
  /** An outline that is not closed yet follows the pointer. */
  readonly isOpen: boolean
}

export interface Aiming {
  /** Null while nothing asks. */
  readonly aim: Aim | null
  /** Where the pointer is in the scene. */
  readonly at: Spot | null
}

export const aimStore = createStore<Aiming>(() => ({ aim: null, at: null }))

/** To five centimetres, as the keys move it. */
const tidy = (value: number): number => Math.round(value * 20) / 20
export const tidySpot = ({ x, y }: Spot): Spot => ({ x: tidy(x), y: tidy(y) })

export const askForSpot = (aim: Aim): void => aimStore.setState({ aim })
export const stopAsking = (): void => aimStore.setState({ aim: null, at: null })

/** The pointer moved over the ground of the scene, or pressed there. */
export function aimAt(spot: Spot, how: 'move' | 'press'): void {
  const at = tidySpot(spot)
  aimStore.setState({ at })
  if (how === 'press') aimStore.getState().aim?.onSet(at)
}
