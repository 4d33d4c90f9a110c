// Recorded runs graded anew under another edition: what is the same stays the same to the bit, what is not is told.

import { readFileSync } from 'node:fs'
import { afterAll, beforeAll, expect, test, vi } from 'vitest'
import { recordedRuns } from '../../../src/app/storage/recordedRuns'
import type { RegradeAnswer, RegradedRun, Regraded, RegradeQuestion } from '../../../src/app/workers/regrade'

type Numbered = RegradeAnswer & { readonly number: number }

const answers: Numbered[] = []
const worker: { onmessage?: (event: { readonly data: RegradeQuestion }) => void; postMessage: (it: Numbered) => void } =
  {
    postMessage: (it) => void answers.push(it),
  }

beforeAll(async () => {
  vi.stubGlobal('self', worker)
  await import('../../../src/app/workers/regradeWorker')
})
afterAll(() => vi.unstubAllGlobals())

const scenario = readFileSync('scenarios/marrow-bend/scenario.json', 'utf8')
const pack = readFileSync('scenarios/packs/concrete-rod/pack.json', 'utf8')

const ask = (question: RegradeQuestion): void => worker.onmessage!({ data: question })

async function done(number: number): Promise<ReadonlyMap<string, RegradedRun>> {
  await vi.waitFor(
    () => {
      const last = answers.findLast((it) => it.number === number)
      if (last?.tell === 'failed') throw new Error(last.reason)
      if (last?.tell !== 'done') throw new Error('not yet')
    },
    { timeout: 150_000, interval: 50 },
  )
  const runs = answers.flatMap((it) => (it.number === number && it.tell === 'run' ? [it.run] : []))
  return new Map(runs.map((it) => [it.name, it]))
}

function some(...names: readonly string[]): RegradeQuestion['runs'] {
  const runs = recordedRuns('marrow-bend')
  return Object.fromEntries(names.map((name) => [name, runs[name]!]))
}

const graded = (answer: RegradedRun['now'] | undefined): Regraded => {
  if (!answer || 'issues' in answer) throw new Error(JSON.stringify(answer))
  return answer
}

test('the recorded runs come as they were recorded', () => {
  const runs = recordedRuns('marrow-bend')
  const file = JSON.parse(readFileSync('scenarios/marrow-bend/runs/clean.json', 'utf8')) as { expect?: unknown }
  delete file.expect
  expect(JSON.parse(runs.clean!)).toEqual(file)
  expect(recordedRuns('no-such-place')).toEqual({})
})

test('a rule that weighs less: that run passes, the others stay, and no exposure changes', {
  timeout: 200_000,
}, async () => {
  const { rules, ...rest } = JSON.parse(pack) as { rules: { id: string; severity: string }[] }
  const eased = rules.map((it) => (it.id === 'nobody-on-lead' ? { ...it, severity: 'major' } : it))
  const runs = some('overlap-hand-on-lead', 'overlap-apart')
  const now = JSON.stringify({ ...rest, rules: eased })
  ask({ number: 1, runs, before: { scenario, pack }, now: { scenario, pack: now } })
  const told = await done(1)
  const hand = told.get('overlap-hand-on-lead')
  expect([graded(hand?.before).outcome, graded(hand?.now).outcome]).toEqual(['fail', 'pass'])
  expect(graded(hand?.now).rules).toEqual(graded(hand?.before).rules)
  const apart = told.get('overlap-apart')
  expect(apart?.now).toEqual(apart?.before)
  expect(graded(hand?.now).worst).toEqual(graded(hand?.before).worst)
})

test('wetter soil: fewer volts on a pace beside the barrier, and the same findings', { timeout: 200_000 }, async () => {
  const file = JSON.parse(scenario) as { soil: object }
  const wet = JSON.stringify({ ...file, soil: { layers: [{ resistivityOhmM: 40 }] } })
  ask({ number: 2, runs: some('overlap-apart'), before: { scenario }, now: { scenario: wet } })
  const run = (await done(2)).get('overlap-apart')
  const [before, now] = [graded(run?.before), graded(run?.now)]
  expect(now.rules).toEqual(before.rules)
  expect(before.isSwept && now.isSwept).toBe(true)
  // A rod in soil of 40 Ω m passes more current at a lower voltage than in 100 over 300 Ω m (Dwight's formula: R follows ρ).
  expect(now.worst!.exposure.prospectiveVoltage).toBeLessThan(before.worst!.exposure.prospectiveVoltage)
})

test('a run that cannot be played on the draft says why; an own id of the draft is no reason', {
  timeout: 100_000,
}, async () => {
  const file = JSON.parse(scenario) as { items: { id: string }[] }
  const without = JSON.stringify({ ...file, id: 'own-bend', items: file.items.filter((it) => it.id !== 'E-07') })
  ask({ number: 3, runs: some('overlap-apart'), before: { scenario }, now: { scenario: without } })
  const first = await vi.waitFor(() => {
    const found = answers.find((it) => it.number === 3 && it.tell === 'run')
    if (found?.tell !== 'run') throw new Error('not yet')
    return found.run
  }, 20_000)
  // Told before anything is swept.
  expect(graded(first.before).isSwept).toBe(false)
  const { issues } = first.now as { issues: readonly { path: string; found: string }[] }
  expect(issues.map((it) => it.found)).toContain('"E-07"')
  expect(issues.map((it) => it.path)).not.toContain('$.scenario')
  ask({ number: 4, runs: {}, before: { scenario: '' }, now: { scenario: '' } })
  const count = answers.filter((it) => it.number === 3).length
  await new Promise((resume) => setTimeout(resume, 400))
  expect(answers.filter((it) => it.number >= 3)).toHaveLength(count)
})

test('asked quickly it says what happened, and tries nothing that could have', { timeout: 200_000 }, async () => {
  const edition = { scenario, pack }
  ask({ number: 40, runs: some('clean', 'lead-left-aloft'), before: edition, now: edition, isQuick: true })
  const runs = await done(40)
  expect([...runs.values()].map(({ now }) => graded(now).isSwept)).toEqual([false, false])
})
