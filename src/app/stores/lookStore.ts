/** Where the picture is looked from besides its fixed places: somebody's eyes, up at what is overhead, close at a thing. */
import { createStore } from 'zustand/vanilla'

/** Each asking is an object of its own: asked again it is looked at again. */
export type Gaze =
  | { readonly kind: 'eyes'; readonly person: string }
  | { readonly kind: 'up' }
  | { readonly kind: 'near'; readonly id: string }

export interface Look {
  readonly gaze: Gaze | null
  /** Lengths are written into the picture. */
  readonly hasDimensions: boolean
}

export const lookStore = createStore<Look>(() => ({ gaze: null, hasDimensions: false }))

export const gazeAt = (gaze: Gaze): void => lookStore.setState({ gaze })
export const gazeAway = (): void => lookStore.setState({ gaze: null })
export const toggleDimensions = (): void =>
  lookStore.setState(({ hasDimensions }) => ({ hasDimensions: !hasDimensions }))
