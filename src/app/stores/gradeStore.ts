/** What the grader has said of the open job, and what it is busy with. Shown in the debrief only. */
import { createStore } from 'zustand/vanilla'
import type { Exposure, Feelers } from '../../engine'
import type { CircuitAnswer, CircuitChoice } from '../workers/circuitOf'
import type {
  Answer,
  DrawnLivening,
  Graded,
  Numbered,
  Question,
  StretchPicture,
  Supposed,
  Supposition,
} from '../workers/grading'
import type { ShownCase } from '../workers/shownCase'
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
  /** Of the second that was looked at last. */
  readonly soFar: { readonly second: number; readonly exposures: readonly Exposure[] } | null
  /** Of the drawn livening, by stretch. */
  readonly pictures: ReadonlyMap<number, StretchPicture>
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
  soFar: null,
  pictures: new Map(),
  circuit: null,
  failure: null,
}

export const gradeStore = createStore<Grade>(() => noGrade)

let worker: Worker | null = null
let asked = 0

/** Small questions about what is drawn: one of each kind at a time, beside each other. */
const beside: readonly Question['ask'][] = ['feel', 'second']

/** Numbers of the questions whose answers are still wanted, by what was asked. */
const wanted = new Map<Question['ask'], number>()

/** A new question ends what was still being worked on. The worker keeps what it has solved. */
function ask(question: Question): void {
  worker ??= start()
  if (!beside.includes(question.ask)) wanted.clear()
  wanted.set(question.ask, ++asked)
  worker.postMessage({ ...question, number: asked } satisfies Numbered<Question>)
}

function start(): Worker {
  const fresh = new Worker(new URL('../workers/grader.ts', import.meta.url), { type: 'module' })
  fresh.onmessage = ({ data }: MessageEvent<Numbered<Answer>>) => {
    if ([...wanted.values()].includes(data.number)) take(data)
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
  else if (answer.tell === 'graded') set({ graded: answer.graded, progress: null, ...drawnOf(answer.graded.drawn) })
  else if (answer.tell === 'drawn') set({ progress: null, ...drawnOf(answer.drawn) })
  else if (answer.tell === 'second') takeSecond(answer)
  else if (answer.tell === 'supposed') set({ supposed: answer.supposed, progress: null })
  else if (answer.tell === 'circuit') set({ circuit: answer.circuit, progress: null })
  else if (answer.tell === 'felt') set({ felt: { kind: answer.feelers.kind, exposure: answer.exposure } })
  else set({ progress: null, failure: answer.reason })
}

/** The picture of its start comes with it. */
const drawnOf = (drawn: DrawnLivening | null): Partial<Grade> => ({
  drawn,
  soFar: null,
  pictures: drawn ? new Map([[0, drawn]]) : new Map<number, StretchPicture>(),
})

function takeSecond({ second, index, soFar, picture }: Extract<Answer, { tell: 'second' }>): void {
  const { pictures } = gradeStore.getState()
  gradeStore.setState({
    soFar: { second, exposures: soFar },
    ...(picture ? { pictures: new Map([...pictures, [index, picture]]) } : {}),
  })
}

const caseOf = ({ at, livening, corner, joint }: DrawnLivening): ShownCase => ({ at, livening, corner, joint })

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
  ask({ ask: 'suppose', head, orders: orders(), of: caseOf(drawn), supposition })
}

/** @param index of the stretch that it lies in; below 0 after the end, which has no picture */
export function askSecond(second: number, index: number): void {
  const { head } = jobStore.getState()
  const { drawn, pictures } = gradeStore.getState()
  if (!head || !drawn) return
  const hasPicture = index < 0 || pictures.has(index)
  ask({ ask: 'second', head, orders: orders(), of: caseOf(drawn), second, index, hasPicture })
}

export function feelAt(feelers: Feelers): void {
  const { head } = jobStore.getState()
  const { drawn } = gradeStore.getState()
  if (!head || !drawn) return
  ask({ ask: 'feel', head, orders: orders(), of: caseOf(drawn), feelers })
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
