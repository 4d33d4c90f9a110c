/** What the grader has said of the open job, and what it is busy with. Shown in the debrief only. */
import { createStore } from 'zustand/vanilla'
import type { Exposure, Feelers } from '../../engine'
import type { CircuitAnswer, CircuitChoice } from '../workers/circuitOf'
import type { Answer, DrawnLivening, Graded, Numbered, Question, Supposed, Supposition } from '../workers/grading'
import { requireHeld } from './held'
import { jobStore } from './jobStore'

/** What the feelers said last. */
export interface Felt {
  readonly kind: Feelers['kind']
  readonly exposure: Exposure | null
}

export interface Grade {
  readonly graded: Graded | null
  /** How many orders the result is of. */
  readonly of: number
  readonly progress: { readonly done: number; readonly total: number } | null
  readonly drawn: DrawnLivening | null
  readonly supposed: Supposed | null
  readonly felt: Felt | null
  readonly circuit: CircuitAnswer | null
  readonly failure: string | null
}

const noGrade: Grade = {
  graded: null,
  of: -1,
  progress: null,
  drawn: null,
  supposed: null,
  felt: null,
  circuit: null,
  failure: null,
}

export const gradeStore = createStore<Grade>(() => noGrade)

let worker: Worker | null = null
let asked = 0

/** One question at a time: a new one ends what was still being worked on. The worker keeps what it has solved. */
function ask(question: Question): void {
  worker ??= start()
  worker.postMessage({ ...question, number: ++asked } satisfies Numbered<Question>)
}

function start(): Worker {
  const fresh = new Worker(new URL('../workers/grader.ts', import.meta.url), { type: 'module' })
  fresh.onmessage = ({ data }: MessageEvent<Numbered<Answer>>) => {
    if (data.number === asked) take(data)
  }
  fresh.onerror = (event) => {
    dismiss()
    gradeStore.setState({ progress: null, failure: event.message })
  }
  return fresh
}

function dismiss(): void {
  worker?.terminate()
  worker = null
}

function take(answer: Answer): void {
  const set = gradeStore.setState
  if (answer.tell === 'progress') set({ progress: { done: answer.done, total: answer.total } })
  else if (answer.tell === 'graded') set({ graded: answer.graded, drawn: answer.graded.drawn, progress: null })
  else if (answer.tell === 'drawn') set({ drawn: answer.drawn, progress: null })
  else if (answer.tell === 'supposed') set({ supposed: answer.supposed, progress: null })
  else if (answer.tell === 'circuit') set({ circuit: answer.circuit, progress: null })
  else if (answer.tell === 'felt') set({ felt: { kind: answer.feelers.kind, exposure: answer.exposure } })
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

export function feelAt(feelers: Feelers): void {
  const { head } = jobStore.getState()
  const { drawn } = gradeStore.getState()
  if (!head || !drawn) return
  ask({ ask: 'feel', head, orders: orders(), at: drawn.at, livening: drawn.livening, feelers })
}

export function askCircuit(choice: CircuitChoice): void {
  const { head } = jobStore.getState()
  if (head) ask({ ask: 'circuit', head, orders: orders(), choice })
}

export function stopGrading(): void {
  if (worker) ask({ ask: 'stop' })
  gradeStore.setState({ progress: null, of: -1 })
}

export function forgetGrade(): void {
  dismiss()
  gradeStore.setState(noGrade)
}
