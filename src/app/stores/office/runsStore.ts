/** The recorded runs, graded anew under what is on the board: before and now, run by run, as the worker tells it. */
import { createStore } from 'zustand/vanilla'
import { shippedTexts } from '../../storage/library'
import { recordedRuns } from '../../storage/recordedRuns'
import type { RegradeAnswer, RegradedRun, RegradeQuestion } from '../../workers/regrade'
import type { Draft } from './draft'
import { type Origin, officeStore } from './officeStore'

export interface Runs {
  /** Whose runs; a scenario on the board has its own, a pack is tried on this one. */
  readonly scenario: string
  readonly runs: readonly RegradedRun[]
  readonly progress: { readonly done: number; readonly total: number } | null
  /** What is shown was graded of it. */
  readonly of: Draft | null
  readonly failure: string | null
}

const none: Omit<Runs, 'scenario'> = { runs: [], progress: null, of: null, failure: null }

export const runsStore = createStore<Runs>(() => ({ ...none, scenario: '' }))

const set = runsStore.setState

let worker: Worker | null = null
let asked = 0

function start(): Worker {
  const fresh = new Worker(new URL('../../workers/regradeWorker.ts', import.meta.url), { type: 'module' })
  fresh.onmessage = ({ data }: MessageEvent<RegradeAnswer & { readonly number: number }>) => {
    if (data.number === asked) take(data)
  }
  fresh.onerror = (event) => {
    dismissRuns()
    set({ failure: event.message })
  }
  return fresh
}

function take(answer: RegradeAnswer): void {
  if (answer.tell === 'progress') set({ progress: answer })
  else if (answer.tell === 'done') set({ progress: null })
  else if (answer.tell === 'failed') set({ progress: null, failure: answer.reason })
  else {
    const { runs } = runsStore.getState()
    const { run } = answer
    const isKnown = runs.some((it) => it.name === run.name)
    set({ runs: isKnown ? runs.map((it) => (it.name === run.name ? run : it)) : [...runs, run] })
  }
}

/** The edition that "before" is: what it was made from; a pack of an id that the shelf does not have, each run's own. */
function questionOf(draft: Draft, origin: Origin | null, scenario: string): Pick<RegradeQuestion, 'before' | 'now'> {
  const file = JSON.stringify(draft.file)
  if (draft.kind === 'scenario')
    return { before: { scenario: shippedTexts('scenario', scenario)[0] }, now: { scenario: file } }
  const place = shippedTexts('scenario', scenario)[0]
  return {
    before: { scenario: place, ...(origin && { pack: shippedTexts('pack', origin.id)[0] }) },
    now: { scenario: place, pack: file },
  }
}

/** Grades all of them; a question that was still being worked on is dropped. */
export function regradeRuns(): void {
  const { draft, origin } = officeStore.getState()
  const { scenario } = runsStore.getState()
  if (!draft || scenario === '') return
  const number = ++asked
  set({ progress: { done: 0, total: 1 }, of: draft, failure: null })
  try {
    const runs = recordedRuns(scenario)
    if (Object.keys(runs).length === 0) return set({ progress: null })
    worker ??= start()
    worker.postMessage({ number, runs, ...questionOf(draft, origin, scenario) } satisfies RegradeQuestion)
  } catch (error) {
    set({ progress: null, failure: error instanceof Error ? error.message : String(error) })
  }
}

/** What has been told so far stays. */
export function stopRuns(): void {
  const number = ++asked
  worker?.postMessage({ number, runs: {}, before: { scenario: '' }, now: { scenario: '' } } satisfies RegradeQuestion)
  set({ progress: null })
}

export function chooseRunsOf(scenario: string): void {
  stopRuns()
  set({ ...none, scenario })
}

export function dismissRuns(): void {
  worker?.terminate()
  worker = null
  asked++
  set({ ...none })
}
