/** The job that this browser keeps, as it lies there: whether there is one, and what becomes of one of another version. */
import { createStore } from 'zustand/vanilla'
import { keep } from '../storage/keep'

export const keptName = 'open-job'
const asideName = 'job-aside'

export const hasKeptJob = (): boolean => keep.readText(keptName) !== null

export const forgetJob = (): void => keep.remove(keptName)

/** A kept job that this version cannot go on with, as its text. */
export const asideStore = createStore<{ readonly text: string | null }>(() => ({ text: readAside() }))

function readAside(): string | null {
  const text = keep.read(asideName)
  return typeof text === 'string' ? text : null
}

/** What cannot be gone on with is neither opened nor lost: it waits at the Depot as it lies. */
export function layAside(): boolean {
  const text = keep.readText(keptName)
  if (text === null) return false
  keep.write(asideName, text)
  keep.remove(keptName)
  asideStore.setState({ text })
  return true
}

export function forgetAside(): void {
  keep.remove(asideName)
  asideStore.setState({ text: null })
}
