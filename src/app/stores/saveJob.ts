/** Keeps the open job after each action, so that a reload goes on exactly there. */
import { type Order, actions, engineVersion } from '../../engine'
import { keep } from '../storage/keep'
import { requireHeld } from './held'
import { type Job, type JobHead, jobStore } from './jobStore'
import { keptName } from './keptJob'

export interface SavedJob {
  readonly engine: number
  readonly head: JobHead
  readonly orders: readonly Order[]
  readonly now: number
  readonly checkpoints: Job['checkpoints']
  readonly event: Job['event']
  readonly isOver: boolean
  readonly reloads: number
}

export function saveJob(): void {
  const { head, checkpoints, event, isOver, reloads, now } = jobStore.getState()
  if (!head) return
  const orders = requireHeld().timeline.entries.map((entry) => entry.order)
  const saved: SavedJob = { engine: engineVersion, head, orders, now, checkpoints, event, isOver, reloads }
  const isKept = keep.write(keptName, saved)
  if (isKept !== jobStore.getState().isKept) jobStore.setState({ isKept })
}

export function findSavedJob(): SavedJob | undefined {
  const saved = keep.read(keptName)
  if (typeof saved !== 'object' || saved === null) return undefined
  const job = saved as Partial<SavedJob>
  const isWhole = typeof job.head === 'object' && Array.isArray(job.orders) && typeof job.now === 'number'
  return isWhole && isOfThisEngine(job as SavedJob) ? (job as SavedJob) : undefined
}

/** Another engine answers otherwise to the same orders, and an act that it does not know would quietly be left out. */
const isOfThisEngine = ({ engine, orders }: SavedJob): boolean =>
  engine === engineVersion && orders.every((order) => order.do === 'withdraw' || actions.has(order.do))
