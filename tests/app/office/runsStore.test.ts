/** A pack tried everywhere: one scenario after the other, what happened only, and no run taken for another's of its name. */
import { afterAll, afterEach, beforeAll, expect, it, vi } from 'vitest'
import { scenarioIds } from '../../../src/app/storage/library'
import { recordedRuns } from '../../../src/app/storage/recordedRuns'
import { clearBoard, openShipped } from '../../../src/app/stores/office/officeStore'
import {
  chooseRunsOf,
  dismissRuns,
  everywhere,
  placeToTry,
  regradeRuns,
  runsStore,
} from '../../../src/app/stores/office/runsStore'
import type { RegradeAnswer, Regraded, RegradeQuestion } from '../../../src/app/workers/regrade'

interface FakeWorker {
  onmessage?: (event: { readonly data: RegradeAnswer & { readonly number: number } }) => void
}

const questions: RegradeQuestion[] = []
const workers: FakeWorker[] = []

beforeAll(() => {
  vi.stubGlobal(
    'Worker',
    class implements FakeWorker {
      onmessage?: NonNullable<FakeWorker['onmessage']>
      constructor() {
        workers.push(this)
      }
      postMessage(question: RegradeQuestion) {
        questions.push(question)
      }
      terminate() {
        workers.splice(workers.indexOf(this), 1)
      }
    },
  )
})
afterAll(() => vi.unstubAllGlobals())
afterEach(() => {
  dismissRuns()
  clearBoard()
})

const tell = (answer: RegradeAnswer): void =>
  workers.at(-1)!.onmessage!({ data: { ...answer, number: questions.at(-1)!.number } })

const nothing: Regraded = { outcome: 'provisional', rules: [], isSwept: false, worst: null, refused: 0 }

it('asks of every scenario in turn, quickly, and tells the runs apart by their places', () => {
  openShipped({ kind: 'pack', id: 'concrete-rod' })
  chooseRunsOf(everywhere)
  questions.length = 0
  regradeRuns()
  for (const id of scenarioIds) {
    const question = questions.at(-1)!
    expect(question.isQuick).toBe(true)
    expect(Object.keys(question.runs)).toEqual(Object.keys(recordedRuns(id)))
    tell({ tell: 'run', run: { name: 'clean', before: nothing, now: nothing } })
    tell({ tell: 'done' })
  }
  expect(questions).toHaveLength(scenarioIds.length)
  expect(runsStore.getState().runs.map(({ name }) => name)).toEqual(scenarioIds.map((id) => `${id}: clean`))
  expect(runsStore.getState().progress).toBeNull()
  expect(placeToTry()).toBe(scenarioIds[0])
})

it('one scenario by itself is asked for wholly', () => {
  openShipped({ kind: 'pack', id: 'concrete-rod' })
  chooseRunsOf('marrow-bend')
  questions.length = 0
  regradeRuns()
  tell({ tell: 'run', run: { name: 'clean', before: nothing, now: nothing } })
  tell({ tell: 'done' })
  expect(questions).toMatchObject([{ isQuick: false }])
  expect(runsStore.getState().runs.map(({ name }) => name)).toEqual(['clean'])
  expect(placeToTry()).toBe('marrow-bend')
})
