/** Where the picture is looked from besides its fixed places: somebody's eyes, up at what is overhead, close at a thing. */
import { createStore } from 'zustand/vanilla'

/** Each asking is an object of its own: asked again it is looked at again. */
export type Gaze =
  | { readonly kind: 'eyes'; readonly person: string }
  | { readonly kind: 'up' }
  | { readonly kind: 'near'; readonly id: string }

export const lookStore = createStore<{ readonly gaze: Gaze | null }>(() => ({ gaze: null }))

export const gazeAt = (gaze: Gaze): void => lookStore.setState({ gaze })
export const gazeAway = (): void => lookStore.setState({ gaze: null })
