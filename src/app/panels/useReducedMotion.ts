/** Whoever asked their machine for less motion: steps instead of a run. */
import { useSyncExternalStore } from 'react'

const still = '(prefers-reduced-motion: reduce)'

function subscribe(changed: () => void): () => void {
  const query = matchMedia(still)
  query.addEventListener('change', changed)
  return () => query.removeEventListener('change', changed)
}

export const useReducedMotion = (): boolean => useSyncExternalStore(subscribe, () => matchMedia(still).matches)
