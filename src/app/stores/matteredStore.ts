/** How much each thing mattered to what came alive in the graded run, or to the worst that could have, and the chance of it; worked out beside the grader. */
import { createStore } from 'zustand/vanilla'
import type { Chance, Shares, Unsolvable } from '../../engine'
import type { MatteredAnswer, MatteredQuestion, Weighed, WeighedInstant } from '../workers/mattered'
import { requireHeld } from './held'
import { jobStore } from './jobStore'

export interface Mattered {
  /** Null where nothing reached anybody; undefined before that is known. */
  readonly worst: WeighedInstant | null | undefined
  readonly shares: Shares | Unsolvable | null
  readonly progress: { readonly done: number; readonly total: number } | null
  readonly chance: Chance | Unsolvable | null
  readonly failure: string | null
}

const none: Mattered = { worst: undefined, shares: null, progress: null, chance: null, failure: null }

export const matteredStore = createStore<Mattered>(() => none)

let worker: Worker | null = null
let weighed: Weighed | null = null

/** Nothing when these have been weighed. @param these of the graded run */
export function weighThings(these: Weighed): void {
  const { head } = jobStore.getState()
  if (!head || weighed === these) return
  stopWeighing()
  weighed = these
  matteredStore.setState(none)
  worker = new Worker(new URL('../workers/matteredWorker.ts', import.meta.url), { type: 'module' })
  worker.onmessage = ({ data }: MessageEvent<MatteredAnswer>) => take(data)
  worker.onerror = (event) => fail(event.message)
  const orders = requireHeld().timeline.entries.map((entry) => entry.order)
  worker.postMessage({ head, orders, ...these } satisfies MatteredQuestion)
}

/** What was not finished is weighed again when it is next asked for. */
export function stopWeighing(): void {
  if (worker === null) return
  worker.terminate()
  worker = null
  weighed = null
}

function take(answer: MatteredAnswer): void {
  const set = matteredStore.setState
  if (answer.tell === 'worst') set({ worst: answer.worst })
  else if (answer.tell === 'shares') set({ shares: answer.shares })
  else if (answer.tell === 'progress') set({ progress: { done: answer.done, total: answer.total } })
  else if (answer.tell === 'chance') set({ chance: answer.chance, progress: null })
  else fail(answer.reason)
  if (answer.tell === 'chance' || (answer.tell === 'worst' && answer.worst === null)) rest()
}

function fail(reason: string): void {
  rest()
  matteredStore.setState({ failure: reason, progress: null })
}

/** Done: the worker goes, what it said stays. */
function rest(): void {
  worker?.terminate()
  worker = null
}
