/** What the grader has said of the open job, and what it is busy with. Shown in the debrief only. */
import { createStore } from 'zustand/vanilla'
import type { Answer, DrawnLivening, Graded, Question, Supposed, Supposition } from '../workers/grading'
import { requireHeld } from './held'
import { jobStore } from './jobStore'

export interface Grade {
  readonly graded: Graded | null
  /** How many orders the result is of. */
  readonly of: number
  readonly progress: { readonly done: number; readonly total: number } | null
  readonly drawn: DrawnLivening | null
  readonly supposed: Supposed | null
  readonly failure: string | null
}

const noGrade: Grade = { graded: null, of: -1, progress: null, drawn: null, supposed: null, failure: null }

export const gradeStore = createStore<Grade>(() => noGrade)

let worker: Worker | null = null

/** One question at a time: a new one stops what was still being worked on. */
function ask(question: Question): void {
  worker?.terminate()
  worker = new Worker(new URL('../workers/grader.ts', import.meta.url), { type: 'module' })
  worker.onmessage = ({ data }: MessageEvent<Answer>) => take(data)
  worker.onerror = (event) => gradeStore.setState({ progress: null, failure: event.message })
  worker.postMessage(question)
}

function take(answer: Answer): void {
  const set = gradeStore.setState
  if (answer.tell === 'progress') set({ progress: { done: answer.done, total: answer.total } })
  else if (answer.tell === 'graded') set({ graded: answer.graded, drawn: answer.graded.drawn, progress: null })
  else if (answer.tell === 'drawn') set({ drawn: answer.drawn, progress: null })
  else if (answer.tell === 'supposed') set({ supposed: answer.supposed, progress: null })
  else set({ progress: null, failure: answer.reason })
}

const orders = () => requireHeld().timeline.entries.map((entry) => entry.order)

/** Grades what has been ordered so far; nothing when that has been done. */
export function gradeJob(): void {
  const { head, ordered } = jobStore.getState()
  if (!head || gradeStore.getState().of === ordered) return
  gradeStore.setState({ ...noGrade, of: ordered, progress: { done: 0, total: 1 } })
  ask({ ask: 'grade', head, orders: orders() })
}

export function drawEvent(): void {
  const { head, now } = jobStore.getState()
  if (!head) return
  gradeStore.setState({ ...noGrade, progress: { done: 0, total: 1 } })
  ask({ ask: 'draw', head, orders: orders(), now })
}

export function suppose(supposition: Supposition): void {
  const { head } = jobStore.getState()
  const { drawn } = gradeStore.getState()
  if (!head || !drawn) return
  ask({ ask: 'suppose', head, orders: orders(), at: drawn.at, livening: drawn.livening, supposition })
}

export function stopGrading(): void {
  worker?.terminate()
  worker = null
  gradeStore.setState({ progress: null, of: -1 })
}

export function forgetGrade(): void {
  stopGrading()
  gradeStore.setState(noGrade)
}
