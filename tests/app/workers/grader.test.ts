// The grader as the app talks to it, in this thread: a later question ends the one before, and what was solved is kept.

import { readFileSync } from 'node:fs'
import { afterAll, beforeAll, expect, test, vi } from 'vitest'
import { actions, type Order } from '../../../src/engine'
import { readRun } from '../../../src/files/run/read'
import type { Answer, Numbered, Question } from '../../../src/app/workers/grading'

const answers: Numbered<Answer>[] = []
const post = (answer: Numbered<Answer>): void => void answers.push(answer)
const worker: { onmessage?: (event: { readonly data: Numbered<Question> }) => void; postMessage: typeof post } = {
  postMessage: post,
}

beforeAll(async () => {
  vi.stubGlobal('self', worker)
  await import('../../../src/app/workers/grader')
})

afterAll(() => vi.unstubAllGlobals())

const run = readRun(readFileSync('scenarios/marrow-bend/runs/clean.json', 'utf8'), actions)
if (!run.ok) throw new Error('the recorded run cannot be read')
const { orders, seed } = run.value

/** The clean run until the lead's first clamp is on: some dozen states. */
const short = orders.slice(0, orders.findIndex((order) => order.do === 'clamp') + 1)

const head = {
  scenario: 'marrow-bend',
  title: '',
  seed,
  purpose: 'practise',
  pack: 'concrete-rod',
  packName: '',
  startsAt: 'beginning',
  person: '',
} as const

const ask = (number: number, question: Question): void => worker.onmessage!({ data: { ...question, number } })
const grade = (number: number, given: readonly Order[]): void => ask(number, { ask: 'grade', head, orders: given })

async function graded(number: number): Promise<string> {
  return vi.waitFor(
    () => {
      const answer = answers.find((it) => it.number === number && it.tell !== 'progress')
      if (answer?.tell !== 'graded') throw new Error(answer?.tell ?? 'no answer yet')
      return JSON.stringify(answer.graded.result)
    },
    { timeout: 60_000, interval: 20 },
  )
}

const progressOf = (number: number): readonly number[] =>
  answers.flatMap((it) => (it.number === number && it.tell === 'progress' ? [it.done] : []))

test('a later question ends the one before, which is never answered', { timeout: 120_000 }, async () => {
  grade(1, orders)
  grade(2, short)
  await graded(2)
  expect(answers.filter((it) => it.number === 1 && it.tell !== 'progress')).toEqual([])
  const far = progressOf(1).length
  expect(far).toBeGreaterThan(0)
  // nothing goes on behind one's back
  await new Promise((resume) => setTimeout(resume, 300))
  expect(progressOf(1).length).toBe(far)
})

test('told step by step to the end, and the same bytes as from a grader that was never interrupted', {
  timeout: 120_000,
}, async () => {
  grade(3, short)
  const again = await graded(3)
  expect(progressOf(3)).toEqual(progressOf(3).map((_, i) => i + 1))
  const { createSweepCache, judgeRun } = await import('../../../src/engine')
  const { replayJob } = await import('../../../src/app/storage/replayJob')
  const { requirePack } = await import('../../../src/app/storage/library')
  const alone = judgeRun(replayJob(head, short), requirePack(head.pack), { sweep: true, cache: createSweepCache() })
  expect(again).toBe(JSON.stringify(alone))
})

test('where nothing came alive, the worst that is named is the one that is drawn', { timeout: 120_000 }, async () => {
  grade(6, short)
  await graded(6)
  const answer = answers.find((it) => it.number === 6 && it.tell === 'graded')
  if (answer?.tell !== 'graded') throw new Error('not graded')
  const { worst, drawn, result } = answer.graded
  expect(result.visible).toBeNull()
  expect(drawn).toMatchObject(worst!.of)
  expect(drawn!.instant.corner).toBe(worst!.of.corner)
  const { person, path, judged, limit } = worst!.exposure
  const there = drawn!.exposures.find((it) => it.person === person && it.path === path)
  expect(there?.judged).toBe(judged)
  // the sweep solved every corner by itself: nothing in it is worse, and that corner gave the same
  const ratios = result.sweep.flatMap((it) => Object.values(it.ratios))
  expect(judged / limit).toBe(Math.max(...ratios))
})

test('stop ends it as well', { timeout: 120_000 }, async () => {
  grade(7, orders)
  ask(8, { ask: 'stop' })
  await new Promise((resume) => setTimeout(resume, 1000))
  const far = progressOf(7).length
  await new Promise((resume) => setTimeout(resume, 300))
  expect(progressOf(7).length).toBe(far)
  expect(answers.filter((it) => it.number >= 7 && it.tell !== 'progress')).toEqual([])
})
