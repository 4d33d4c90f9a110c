/** Whether this machine keeps the app for days without a network. Only a built app is kept. */
import { createStore } from 'zustand/vanilla'

/** `none`: this browser does not keep it, or could not. */
export const offlineStore = createStore<{ readonly state: 'none' | 'fetching' | 'ready' }>(() => ({ state: 'none' }))

/** After the page has loaded, so that the first view waits for nothing of it. */
export function keepAppOffline(): void {
  if (!('serviceWorker' in navigator)) return
  const begin = () => {
    offlineStore.setState({ state: 'fetching' })
    navigator.serviceWorker
      .register('/offline.js', { type: 'module' })
      .then(() => navigator.serviceWorker.ready)
      .then(
        () => offlineStore.setState({ state: 'ready' }),
        () => offlineStore.setState({ state: 'none' }),
      )
  }
  if (document.readyState === 'complete') begin()
  else window.addEventListener('load', begin, { once: true })
}
