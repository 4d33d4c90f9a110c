/** Published figures tried in this browser: how far it is, and what came out. Kept until the page is closed. */
import { createStore } from 'zustand/vanilla'
import type { CaseResult } from '../../reports/qualification'
import { scenarioFiles } from '../storage/library'
import type { FiguresAnswer, FiguresQuestion } from '../workers/figures'

export interface Figures {
  readonly results: readonly CaseResult[]
  /** How many are tried here, of how many there are; null before that is known. */
  readonly count: { readonly total: number; readonly all: number } | null
  readonly isRunning: boolean
  readonly failure: string | null
}

const none: Figures = { results: [], count: null, isRunning: false, failure: null }

export const figuresStore = createStore<Figures>(() => none)

let worker: Worker | null = null

export function tryFigures(): void {
  stopFigures()
  figuresStore.setState({ ...none, isRunning: true })
  worker = new Worker(new URL('../workers/figuresWorker.ts', import.meta.url), { type: 'module' })
  worker.onmessage = ({ data }: MessageEvent<FiguresAnswer>) => take(data)
  worker.onerror = (event) => fail(event.message)
  worker.postMessage({ scenarios: scenarioFiles() } satisfies FiguresQuestion)
}

export function stopFigures(): void {
  worker?.terminate()
  worker = null
  figuresStore.setState({ isRunning: false })
}

function take(answer: FiguresAnswer): void {
  if (answer.tell === 'count') figuresStore.setState({ count: { total: answer.total, all: answer.all } })
  else if (answer.tell === 'case') figuresStore.setState(({ results }) => ({ results: [...results, answer.result] }))
  else if (answer.tell === 'done') stopFigures()
  else fail(answer.reason)
}

function fail(reason: string): void {
  stopFigures()
  figuresStore.setState({ failure: reason })
}
