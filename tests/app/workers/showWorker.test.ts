// What the worker says of a job: the demonstration's orders, where the parts begin, and a rule of the pack for its acts.

import { afterAll, beforeAll, expect, test, vi } from 'vitest'
import { requirePack } from '../../../src/app/storage/library'
import { headFor } from '../../../src/app/stores/headFor'
import type { ShowAnswer, ShowQuestion } from '../../../src/app/workers/showing'
import { demonstrate } from '../../../src/engine'
import { beginJob } from '../../../src/app/storage/replayJob'

const answers: ShowAnswer[] = []
const worker: { onmessage?: (event: { readonly data: ShowQuestion }) => void; postMessage: (it: ShowAnswer) => void } =
  {
    postMessage: (it) => void answers.push(it),
  }

beforeAll(async () => {
  vi.stubGlobal('self', worker)
  await import('../../../src/app/workers/showWorker')
})
afterAll(() => vi.unstubAllGlobals())

test('orders, parts in their order, and for nearly every act a rule that is in the pack', { timeout: 60_000 }, () => {
  const head = headFor('kestrel-flat', 3, 'practise', { pack: 'concrete-rod', startsAt: 'isolated' })
  worker.onmessage!({ data: { head } })
  const [first, ...rest] = answers
  if (first?.tell !== 'job') throw new Error(JSON.stringify(first))
  const { scenario } = beginJob({ ...head, startsAt: 'beginning' })
  const pack = requirePack('concrete-rod')
  expect(first.job.orders).toEqual(demonstrate(scenario, pack).orders)
  const starts = first.job.openings.map((it) => it.orders)
  expect(starts).toEqual([...starts].sort((a, b) => a - b))
  expect(first.job.openings.map((it) => it.part)).toEqual([
    'beginning',
    'gear',
    'isolated',
    'below-lv',
    'earths-on',
    'work-done',
  ])
  const rules = rest.flatMap((it) => (it.tell === 'reasons' ? it.rules : []))
  expect(rules).toHaveLength(first.job.orders.length)
  const known = new Set(pack.rules.map(({ id }) => id))
  const named = rules.filter((it) => it !== null)
  expect(named.filter((it) => !known.has(it))).toEqual([])
  // Walking from place to place is what no rule asks for by itself.
  expect(named.length / rules.length).toBeGreaterThan(0.9)
})

test('what cannot be opened is said, not thrown', () => {
  answers.length = 0
  const head = { ...headFor('kestrel-flat', 1, 'practise', { pack: 'concrete-rod' }), scenario: 'no-such-place' }
  worker.onmessage!({ data: { head } })
  expect(answers.map((it) => it.tell)).toEqual(['failed'])
})
