/**
 * What only an open job needs (engine, readers, words, sheets) is fetched when a job is first asked for, so that the Depot
 * is there at once. A browser remembers that a script could not be fetched: to try again is to load the page again.
 */
import { createStore } from 'zustand/vanilla'
import type { jobFolder } from './jobFolder'

export type Folder = typeof jobFolder

type Act = (folder: Folder) => void | Promise<void>

interface Load {
  readonly folder: Folder | null
  readonly isFetching: boolean
  /** The page was opened for a job, not for the Depot. */
  readonly isStarting: boolean
  readonly failure: string | null
}

export const folderStore = createStore<Load>(() => ({
  folder: null,
  isFetching: false,
  isStarting: false,
  failure: null,
}))

const set = folderStore.setState

/** What was asked for last; one thing at a time. */
let next: Act | null = null

export function fetchFolder(): void {
  if (folderStore.getState().folder || folderStore.getState().isFetching) return
  set({ isFetching: true, failure: null })
  import('./jobFolder').then(
    ({ jobFolder: folder }) => {
      const act = next
      next = null
      set({ folder, isFetching: false, isStarting: false })
      void act?.(folder)
    },
    (error: unknown) =>
      set({ isFetching: false, isStarting: false, failure: error instanceof Error ? error.message : String(error) }),
  )
}

/** Does it now, or as soon as the folder is here. */
export function withFolder(act: Act): void {
  const { folder } = folderStore.getState()
  if (folder) void act(folder)
  else {
    next = act
    fetchFolder()
  }
}

/** The same, for what the page was opened for. */
export function startWithFolder(act: Act): void {
  set({ isStarting: true })
  withFolder(act)
}
