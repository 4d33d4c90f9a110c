/** The recorded runs, graded anew under what is on the board: before and now, run by run, as the worker tells it. */
import { createStore } from 'zustand/vanilla'
import { scenarioIds, shippedTexts } from '../../storage/library'
import { recordedRuns } from '../../storage/recordedRuns'
import type { RegradeAnswer, RegradedRun, RegradeQuestion } from '../../workers/regrade'
import type { Draft } from './draft'
import { type Origin, officeStore } from './officeStore'

/** In place of a scenario: the runs of all of them, by what happened. */
export const everywhere = 'everywhere'

export interface Runs {
  /** Whose runs; a scenario on the board has its own, a pack is tried on this one, or everywhere. */
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
  else if (answer.tell === 'done') askNext()
  else if (answer.tell === 'failed') set({ progress: null, failure: answer.reason })
  else {
    const { runs } = runsStore.getState()
    const { progress } = runsStore.getState()
    const run = { ...answer.run, name: nameOf(answer.run.name) }
    if (asking.isQuick && progress) set({ progress: { ...progress, done: progress.done + 1 } })
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

/** What is being asked: of which scenario, and which come after it. */
let asking: { readonly scenario: string; readonly left: readonly string[]; readonly isQuick: boolean } = {
  scenario: '',
  left: [],
  isQuick: false,
}

/** Two scenarios may have runs of one name. */
const nameOf = (run: string): string => (asking.isQuick ? `${asking.scenario}: ${run}` : run)

/** Grades all of them; a question that was still being worked on is dropped. */
export function regradeRuns(): void {
  const { draft } = officeStore.getState()
  const { scenario } = runsStore.getState()
  if (!draft || scenario === '') return
  const isQuick = scenario === everywhere
  const left = isQuick ? scenarioIds : [scenario]
  asking = { scenario: '', left, isQuick }
  const total = left.reduce((sum, id) => sum + Object.keys(recordedRuns(id)).length, 0)
  set({ ...(isQuick && { runs: [] }), progress: { done: 0, total: isQuick ? total : 1 }, of: draft, failure: null })
  askNext()
}

function askNext(): void {
  const { draft, origin } = officeStore.getState()
  const [scenario, ...left] = asking.left
  if (!draft || scenario === undefined) return set({ progress: null })
  asking = { ...asking, scenario, left }
  const number = ++asked
  try {
    const runs = recordedRuns(scenario)
    if (Object.keys(runs).length === 0) return askNext()
    worker ??= start()
    const question = { number, runs, ...questionOf(draft, origin, scenario), isQuick: asking.isQuick }
    worker.postMessage(question satisfies RegradeQuestion)
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

/** The scenario that a pack is tried on. */
export function placeToTry(): string {
  const { scenario } = runsStore.getState()
  return scenario === everywhere ? (scenarioIds[0] ?? '') : scenario
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
