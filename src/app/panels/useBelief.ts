/** What the crew knows of the open job, for sheets that are only shown when one is open. */
import { useStore } from 'zustand'
import type { Belief } from '../../engine'
import { jobStore } from '../stores/jobStore'

export function useBelief(): Belief {
  const belief = useStore(jobStore, (job) => job.belief)
  if (!belief) throw new Error('expected an open job, got none')
  return belief
}
