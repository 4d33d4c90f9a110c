/** The job that is shown: what its crew orders, why, and how fast it is played. Worked out beside the page. */
import { createStore } from 'zustand/vanilla'
import type { ShowAnswer, ShowQuestion, ShownJob } from '../workers/showing'
import type { JobHead } from './jobStore'

export const paces = ['slow', 'steady', 'fast'] as const
export type Pace = (typeof paces)[number]

export interface Shown {
  /** Null until it has been worked out. */
  readonly job: ShownJob | null
  /** By order, the rule that it answers first; null: none asks for it. */
  readonly reasons: readonly (string | null | undefined)[]
  readonly isPlaying: boolean
  readonly pace: Pace
  readonly failure: string | null
}

const none: Omit<Shown, 'pace'> = { job: null, reasons: [], isPlaying: false, failure: null }

export const shownStore = createStore<Shown>(() => ({ ...none, pace: 'slow' }))

const set = shownStore.setState

let worker: Worker | null = null

/** @param onJob as soon as the orders are known */
export function workOut(head: JobHead, onJob: (job: ShownJob) => void): void {
  forgetShown()
  worker = new Worker(new URL('../workers/showWorker.ts', import.meta.url), { type: 'module' })
  worker.onmessage = ({ data }: MessageEvent<ShowAnswer>) => take(data, onJob)
  worker.onerror = (event) => fail(event.message)
  worker.postMessage({ head } satisfies ShowQuestion)
}

function take(answer: ShowAnswer, onJob: (job: ShownJob) => void): void {
  if (answer.tell === 'failed') return fail(answer.reason)
  if (answer.tell === 'job') {
    set({ job: answer.job })
    return onJob(answer.job)
  }
  const { job, reasons } = shownStore.getState()
  const next = [...reasons.slice(0, answer.from), ...answer.rules]
  set({ reasons: next })
  if (next.length === job?.orders.length) rest()
}

function fail(reason: string): void {
  rest()
  set({ failure: reason, isPlaying: false })
}

/** Everything is told: the worker goes, what it said stays. */
function rest(): void {
  worker?.terminate()
  worker = null
}

export function forgetShown(): void {
  rest()
  set(none)
}

export const setPace = (pace: Pace): void => set({ pace })
